import { textOf, walk, type TreeNode } from './mdx-tree.ts';

/** Signs that an anchor leaves out: everything but letters, digits, joining signs, hyphens and spaces. */
const LEFT_OUT = /[^\p{L}\p{M}\p{N}\p{Pc}\- ]/gu;

/**
 * The anchors that a text's headings get on its page: in small letters, a hyphen for a space; a heading that comes again
 * gets a number.
 *
 * @example a text with `## The other hand` twice gives `['the-other-hand', 'the-other-hand-1']`
 */
export function headingAnchors(tree: TreeNode): string[] {
  const seen = new Map<string, number>();
  const anchors: string[] = [];
  walk(tree, (node) => {
    if (node.type === 'heading') anchors.push(numbered(seen, slug(textOf(node))));
  });
  return anchors;
}

const slug = (text: string) => text.toLowerCase().replace(LEFT_OUT, '').replaceAll(' ', '-');

function numbered(seen: Map<string, number>, name: string): string {
  const before = seen.get(name) ?? 0;
  seen.set(name, before + 1);
  return before === 0 ? name : `${name}-${before}`;
}
