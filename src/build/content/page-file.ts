import type { ContentFault } from './content-fault.ts';
import { headingAnchors } from './anchors.ts';
import { readFrontmatter } from './frontmatter.ts';
import { placeOfNode, readMarkdown, walk, type TreeNode } from './mdx-tree.ts';
import { pictureByName, referenceOf, type Reference } from './references.ts';
import type { YamlText } from './yaml-text.ts';

/** A page of text taken apart. */
export interface PageFile {
  file: string;
  frontmatter?: YamlText;
  references: Reference[];
  /** What an address may have behind its #. */
  anchors: string[];
  faults: ContentFault[];
}

/** Takes a page of plain Markdown apart; HTML in it is refused. */
export function readPage(file: string, text: string): PageFile {
  const page: PageFile = { file, references: [], anchors: [], faults: [] };
  const read = readFrontmatter(text);
  if (read.ok) page.frontmatter = read.yaml;
  else page.faults.push({ file, ...read.fault });
  const tree = readMarkdown(text);
  walk(tree, (node) => readNode(page, node));
  page.anchors = headingAnchors(tree);
  return page;
}

function readNode(page: PageFile, node: TreeNode): void {
  const place = placeOfNode(node);
  if (node.type === 'html')
    page.faults.push({
      file: page.file,
      ...place,
      message: 'a page holds no HTML',
      hint: 'write it in plain Markdown',
    });
  const reference = referenceOf(node);
  if (reference) page.references.push(reference);
  const message = pictureByName(node);
  if (message) page.faults.push({ file: page.file, ...place, message });
}
