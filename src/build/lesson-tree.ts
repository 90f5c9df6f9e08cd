import { sayBar } from '../words/grammar.ts';
import type { BarWord } from '../words/site.ts';
import { headingAnchors, isElement, literalOf, type TreeNode, walk } from './content/mdx-tree.ts';

/** What the site is built for. */
export interface LessonTreeOptions {
  /** Base path of the site. */
  base?: string;
  /** What the school calls a bar. */
  barWord?: BarWord;
}

/**
 * A remark plugin that tells a lesson what its words cannot see for themselves: each Question that asks a bar gets
 * `source`, the attributes of that bar; addresses in the text get the base path; and a school that says "measure" reads it
 * in the text too. The content checker has read the same tree before and refused what is not there.
 */
export function lessonTree({ base = '/', barWord = 'bar' }: LessonTreeOptions = {}): (tree: unknown) => void {
  const prefix = base.replace(/\/$/, '');
  return (tree) => {
    if (barWord !== 'bar') sayThroughout(tree as TreeNode, barWord);
    const bars: TreeNode[] = [];
    walk(tree as TreeNode, (node) => {
      if ((node.type === 'link' || node.type === 'definition') && node.url?.startsWith('/'))
        node.url = prefix + node.url;
      // One component draws headings of every depth, and is told which.
      if (node.type === 'heading')
        node.data = { ...node.data, hProperties: { ...node.data?.hProperties, as: `h${node.depth}` } };
      if (isElement(node) && node.name === 'Bar') bars.push(node);
      if (isElement(node) && node.name === 'Question') addSource(node, bars);
    });
  };
}

/** Attributes that are read, not worked with. */
const READ = ['ask', 'answer', 'choices', 'text', 'caption', 'name'];

function sayThroughout(tree: TreeNode, word: BarWord): void {
  // Addresses stay: a heading keeps the anchor that its own words make.
  const anchors = headingAnchors(tree);
  walk(tree, (node) => {
    if (node.type === 'heading') node.data = { ...node.data, hProperties: { id: anchors.shift() } };
    if (node.type === 'text' && node.value) node.value = sayBar(node.value, word);
    if (node.type === 'image' && node.alt) node.alt = sayBar(node.alt, word);
    for (const attribute of node.attributes ?? [])
      if (READ.includes(attribute.name ?? '') && typeof attribute.value === 'string')
        attribute.value = sayBar(attribute.value, word);
  });
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
