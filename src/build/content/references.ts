import type { Place } from './content-fault.ts';
import { placeOfNode, type TreeNode } from './mdx-tree.ts';

/** A link or picture in a text. */
export interface Reference extends Place {
  kind: 'link' | 'picture';
  url: string;
  alt: string;
}

const KINDS: Record<string, Reference['kind']> = { link: 'link', definition: 'link', image: 'picture' };

/** The reference that a node is, if it is one; a definition is the address of links that name it. */
export function referenceOf(node: TreeNode): Reference | undefined {
  const kind = KINDS[node.type];
  return kind && { kind, url: node.url ?? '', alt: node.alt ?? '', ...placeOfNode(node) };
}

/** Why a picture is refused that is named here and written elsewhere, with what it shows; nothing for any other node. */
export const pictureByName = ({ type }: TreeNode): string | undefined =>
  type === 'imageReference' ? 'a picture is written with its file: ![what it shows](picture.png)' : undefined;
