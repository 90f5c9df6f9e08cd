import remarkFrontmatter from 'remark-frontmatter';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Position } from './content-fault.ts';

/** What the checker reads of a node of a lesson's tree. */
export interface TreeNode {
  type: string;
  children?: TreeNode[];
  position?: {
    start: { line: number; column: number; offset?: number };
    end: { line: number; column: number; offset?: number };
  };
  /** Of text, front matter, expressions. */
  value?: string;
  /** Of an element; null for a fragment. */
  name?: string | null;
  attributes?: TreeAttribute[];
  /** Of headings. */
  depth?: number;
  /** Of links and images. */
  url?: string;
  alt?: string | null;
  data?: { estree?: EsTree | null; hProperties?: Record<string, unknown> };
}

/** An attribute of an element, or a spread. */
export interface TreeAttribute {
  type: 'mdxJsxAttribute' | 'mdxJsxExpressionAttribute';
  name?: string;
  value?: string | null | { value: string; data?: { estree?: EsTree | null } };
  position?: TreeNode['position'];
}

/** As much of an expression as the checker looks at. */
interface EsTree {
  body: { type: string; expression?: EsNode }[];
  comments?: unknown[];
}

interface EsNode {
  type: string;
  value?: unknown;
  operator?: string;
  argument?: EsNode;
}

const parser = unified().use(remarkParse).use(remarkFrontmatter).use(remarkMdx).freeze();

/** A lesson's tree, or why it has none. */
export function readTree(text: string): { ok: true; tree: TreeNode } | ({ ok: false; message: string } & Position) {
  try {
    return { ok: true, tree: parser.parse(text) as TreeNode };
  } catch (error) {
    return { ok: false, ...syntaxFault(error as Partial<Position> & { reason?: string; message?: string }) };
  }
}

/** Some messages hold the place only in their words: `Expected a closing tag for <Bar> (3:1-3:20)`. */
const PLACE = / \((\d+):(\d+)-\d+:\d+\)/;

/** What the parser says for programmers, said for authors. */
const PLAINER: [RegExp, string][] = [
  [/^Could not parse expression.*/, 'what stands in braces is taken for code, and is none'],
  [
    /^Unexpected character `.*` \(.*\) before attribute value.*/,
    'a number stands in braces, like grid={4}, a text in quotes',
  ],
  [/^Could not parse import.*/, 'a line that begins with import or export is taken for code'],
];

function syntaxFault(error: Partial<Position> & { reason?: string; message?: string }): Position & { message: string } {
  const reason = error.reason ?? error.message ?? String(error);
  const [, line = 1, column = 1] = PLACE.exec(reason) ?? [];
  const message = PLAINER.reduce(
    (text, [pattern, plainer]) => text.replace(pattern, plainer),
    reason.replace(PLACE, ''),
  );
  return { line: error.line ?? Number(line), column: error.column ?? Number(column), message };
}

const plain = unified().use(remarkParse).use(remarkFrontmatter).freeze();

/** The tree of plain Markdown; there is always one. */
export const readMarkdown = (text: string): TreeNode => plain.parse(text) as TreeNode;

/** Where a node begins. */
export function positionOfNode(node: { position?: TreeNode['position'] }): Position {
  const { line = 1, column = 1 } = node.position?.start ?? {};
  return { line, column };
}

/** Calls `visit` for every node below one, in the order of the text, with its parent. */
export function walk(root: TreeNode, visit: (node: TreeNode, parent: TreeNode) => void): void {
  const waiting = below(root);
  // A stack of its own: a text may be nested deeper than calls can be.
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    visit(next.node, next.parent);
    waiting.push(...below(next.node));
  }
}

/** The children of a node, the first one last. */
const below = (parent: TreeNode) => (parent.children ?? []).map((node) => ({ node, parent })).reverse();

/** Whether a node is an element of MDX. */
export const isElement = (node: TreeNode): boolean =>
  node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';

/** Whether an expression is nothing but a comment: braces with slash and star. */
export function isComment(node: TreeNode): boolean {
  const tree = node.data?.estree;
  return !!tree && tree.body.length === 0 && (tree.comments?.length ?? 0) > 0;
}

/** The text in a node and below it. */
export function textOf(node: TreeNode): string {
  return node.value ?? (node.children ?? []).map(textOf).join('');
}

/** What an attribute says, if it is a literal. `<Bar loud />` says true. */
export function literalOf(attribute: TreeAttribute): { ok: true; value: unknown } | { ok: false } {
  const { value } = attribute;
  if (value === null || value === undefined) return { ok: true, value: true };
  if (typeof value === 'string') return { ok: true, value };
  return literal(value.data?.estree?.body[0]?.expression);
}

function literal(node: EsNode | undefined): { ok: true; value: unknown } | { ok: false } {
  if (node?.type === 'Literal' && isPlain(node.value)) return { ok: true, value: node.value };
  const inner = node?.type === 'UnaryExpression' && node.operator === '-' ? literal(node.argument) : undefined;
  return inner?.ok && typeof inner.value === 'number' ? { ok: true, value: -inner.value } : { ok: false };
}

const isPlain = (value: unknown) => ['string', 'number', 'boolean'].includes(typeof value);

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

/** A link or picture in a text. */
export interface Reference extends Position {
  kind: 'link' | 'picture';
  url: string;
  alt: string;
}

const KINDS: Record<string, Reference['kind']> = { link: 'link', definition: 'link', image: 'picture' };

/** The reference that a node is, if it is one; a definition is the address of links that name it. */
export function referenceOf(node: TreeNode): Reference | undefined {
  const kind = KINDS[node.type];
  return kind && { kind, url: node.url ?? '', alt: node.alt ?? '', ...positionOfNode(node) };
}

/** Why a picture is refused that is named here and written elsewhere, with what it shows; nothing for any other node. */
export const pictureByName = ({ type }: TreeNode): string | undefined =>
  type === 'imageReference' ? 'a picture is written with its file: ![what it shows](picture.png)' : undefined;
