import { isElement, literalOf, walk, type TreeNode } from './content/mdx-tree.ts';

/** What the site is built for. */
export interface LessonTreeOptions {
  /** Base path of the site. */
  base?: string;
}

/**
 * A remark plugin that tells a lesson what its words cannot see for themselves: each Question that asks a bar gets
 * `source`, the attributes of that bar; and addresses in the text get the base path. The content checker has read the
 * same tree before and refused what is not there.
 */
export function lessonTree({ base = '/' }: LessonTreeOptions = {}): (tree: unknown) => void {
  const prefix = base.replace(/\/$/, '');
  return (tree) => {
    const bars: TreeNode[] = [];
    walk(tree as TreeNode, (node) => {
      if ((node.type === 'link' || node.type === 'definition') && node.url?.startsWith('/'))
        node.url = prefix + node.url;
      if (isElement(node) && node.name === 'Bar') bars.push(node);
      if (isElement(node) && node.name === 'Question') addSource(node, bars);
    });
  };
}

function addSource(question: TreeNode, bars: readonly TreeNode[]): void {
  const { from, bar: id } = attributesOf(question);
  if (from === undefined) return;
  const bar = id === undefined ? bars.at(-1) : bars.find((one) => attributesOf(one).id === id);
  const source = bar ? { bar: attributesOf(bar) } : { exercise: id };
  setAttribute(question, 'source', JSON.stringify(source));
}

function setAttribute(node: TreeNode, name: string, value: string): void {
  (node.attributes ??= []).push({ type: 'mdxJsxAttribute', name, value });
}

/** The attributes of an element by name; what is no literal is left out. */
function attributesOf(node: TreeNode): Record<string, unknown> {
  const pairs = (node.attributes ?? []).map((attribute) => [attribute.name ?? '', literalOf(attribute)] as const);
  return Object.fromEntries(pairs.flatMap(([name, literal]) => (literal.ok ? [[name, literal.value]] : [])));
}
