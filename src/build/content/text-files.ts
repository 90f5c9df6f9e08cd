import { VOCABULARY, type Word, wordOf } from '../../curriculum/index.ts';
import type { ContentFault, Position } from './content-fault.ts';
import {
  headingAnchors,
  isComment,
  isElement,
  literalOf,
  pictureByName,
  positionOfNode,
  readMarkdown,
  readTree,
  type Reference,
  referenceOf,
  textOf,
  type TreeAttribute,
  type TreeNode,
  walk,
} from './mdx-tree.ts';
import { readFrontmatter, type YamlText } from './yaml-text.ts';
import { knownHint } from './nearest.ts';
import { judge } from './schema-faults.ts';

/** A word of the vocabulary as a lesson uses it. */
export interface WordUse {
  word: Word;
  /** Its attributes, undefined where they are faulty. */
  attributes?: Record<string, unknown>;
  place: Position;
  positionOf: (attribute: string) => Position;
  /** Where the text of an attribute begins, if it stands in the file as it is. */
  textStart: (attribute: string) => Position | undefined;
}

/** A lesson file taken apart. */
export interface LessonFile {
  file: string;
  text: string;
  frontmatter?: YamlText;
  words: WordUse[];
  references: Reference[];
  /** What an address may have behind its #. */
  anchors: string[];
  /** False where the text could not be read, so that nothing can be said about what it lacks. */
  readable: boolean;
  faults: ContentFault[];
}

/** Takes a lesson apart: its front matter, the words it uses, its links; with the faults of its form. */
export function readLesson(file: string, text: string): LessonFile {
  const lesson: LessonFile = { file, text, words: [], references: [], anchors: [], readable: false, faults: [] };
  const front = readFrontmatter(text);
  if (front.ok) lesson.frontmatter = front.yaml;
  else lesson.faults.push({ file, ...front.fault });
  const read = readTree(text);
  if (!read.ok) {
    fault(
      lesson,
      read,
      `the text cannot be read: ${read.message}`,
      CURLY.test(lineAt(text, read.line)) ? CURLY_HINT : SYNTAX_HINT,
    );
    return lesson;
  }
  lesson.readable = true;
  walk(read.tree, (node, parent) => readNode(lesson, node, parent));
  lesson.anchors = headingAnchors(read.tree);
  return lesson;
}

/** Quotes as a word processor sets them. */
const CURLY = /[“”„‘’]/;
const CURLY_HINT = 'these are curly quotes; type straight ones: sticking="R L R L"';
const lineAt = (text: string, line: number): string => text.split('\n')[line - 1] ?? '';

const SYNTAX_HINT =
  'every tag is closed; { and < in the text are written \\{ and \\<, and a sticking in the text stands between `backticks`';

function fault(lesson: LessonFile, { line, column }: Position, message: string, hint?: string): void {
  lesson.faults.push({ file: lesson.file, line, column, message, hint });
}

const REFUSED: Record<string, [message: string, hint: string]> = {
  mdxjsEsm: ['a lesson imports and exports nothing', 'the words of the vocabulary are there without an import'],
  mdxFlowExpression: [
    '{…} is code; a lesson holds none',
    'a sticking in the text stands between `backticks`; a lone brace is written \\{',
  ],
  mdxTextExpression: [
    '{…} is code; a lesson holds none',
    'a sticking in the text stands between `backticks`; a lone brace is written \\{',
  ],
};

function readNode(lesson: LessonFile, node: TreeNode, parent: TreeNode): void {
  const refused = REFUSED[node.type];
  if (refused && !isComment(node)) fault(lesson, positionOfNode(node), ...refused);
  if (isElement(node)) readElement(lesson, node, parent);
  if (node.type === 'heading' && node.depth === 1)
    fault(
      lesson,
      positionOfNode(node),
      'the title of the page comes from the front matter',
      'a heading inside a lesson begins with ##',
    );
  const reference = referenceOf(node);
  if (reference) lesson.references.push(reference);
  const named = pictureByName(node);
  if (named) fault(lesson, positionOfNode(node), named);
}

function readElement(lesson: LessonFile, node: TreeNode, parent: TreeNode): void {
  const name = node.name ?? '';
  const word = wordOf(name);
  if (!word) return unknownElement(lesson, node, name);
  checkChildren(lesson, node, word);
  if (isBlock(word) && standsInText(node, parent))
    fault(
      lesson,
      positionOfNode(node),
      `<${name}> stands inside a sentence`,
      'give it a line of its own, with an empty line before and after',
    );
  lesson.words.push(readWord(lesson, node, word));
}

function unknownElement(lesson: LessonFile, node: TreeNode, name: string): void {
  fault(lesson, positionOfNode(node), `<${name}> is not a word of the vocabulary`, knownHint(name, WORD_NAMES));
}

const WORD_NAMES = VOCABULARY.map(({ name }) => name);
const isBlock = (word: Word) => word.name !== 'Term' && word.name !== 'Rudiment';

/** A paragraph of nothing but elements and spaces becomes those elements; beside text an element is part of a sentence. */
function standsInText(node: TreeNode, parent: TreeNode): boolean {
  if (node.type !== 'mdxJsxTextElement') return false;
  return !parent.children?.every((child) => isElement(child) || (child.type === 'text' && textOf(child).trim() === ''));
}

function checkChildren(lesson: LessonFile, node: TreeNode, word: Word): void {
  const filled = (node.children ?? []).some((child) => child.type !== 'text' || textOf(child).trim() !== '');
  if (word.children === 'nothing' && filled)
    fault(lesson, positionOfNode(node), `<${word.name}> holds nothing`, `close it at once: ${word.example}`);
  if (word.children !== 'nothing' && !filled)
    fault(lesson, positionOfNode(node), `<${word.name}> is empty; words stand between its tags`, word.example);
}

function readWord(lesson: LessonFile, node: TreeNode, word: Word): WordUse {
  const place = positionOfNode(node);
  const written = new Map<string, TreeAttribute>();
  for (const attribute of node.attributes ?? []) takeAttribute(lesson, attribute, written, word);
  const positionOf = (name: string) => positionOfNode(written.get(name) ?? node);
  const textStart = (name: string) => valueStart(lesson.text, written.get(name));
  const attributes = judgeAttributes(lesson, word, written, positionOf);
  return { word, attributes, place, positionOf, textStart };
}

function takeAttribute(
  lesson: LessonFile,
  attribute: TreeAttribute,
  written: Map<string, TreeAttribute>,
  word: Word,
): void {
  const place = positionOfNode(attribute);
  if (attribute.type === 'mdxJsxExpressionAttribute' || !attribute.name)
    return fault(
      lesson,
      place,
      `{…} among the attributes of <${word.name}> is code; a lesson holds none`,
      word.example,
    );
  if (written.has(attribute.name)) fault(lesson, place, `"${attribute.name}" is written twice`);
  written.set(attribute.name, attribute);
}

function judgeAttributes(
  lesson: LessonFile,
  word: Word,
  written: Map<string, TreeAttribute>,
  positionOf: (name: string) => Position,
): Record<string, unknown> | undefined {
  const values: Record<string, unknown> = {};
  for (const [name, attribute] of written) {
    const literal = literalOf(attribute);
    if (literal.ok) values[name] = literal.value;
    else {
      fault(
        lesson,
        positionOf(name),
        `"${name}" is not a plain value`,
        `write it out: ${name}="flam drag" or ${name}={4}`,
      );
      return undefined;
    }
  }
  const judged = judge(word.attributes, values, `<${word.name}>`);
  if (judged.ok) return judged.data;
  for (const said of judged.said)
    fault(lesson, positionOf(String(said.path[0])), said.message, said.hint ?? numberHint(values, said.path));
  return undefined;
}

/** A number in quotes is a text, the commonest slip of all. */
function numberHint(values: Record<string, unknown>, [name]: PropertyKey[]): string | undefined {
  const value = values[String(name)];
  return typeof value === 'string' && /^\d+$/.test(value)
    ? `write it without quotes: ${String(name)}={${value}}`
    : undefined;
}

/** Where the text of an attribute begins, behind its quote; only where it stands in the file as it is. */
function valueStart(text: string, attribute: TreeAttribute | undefined): Position | undefined {
  const start = attribute?.position?.start;
  if (!start || typeof attribute.value !== 'string') return undefined;
  const lead = (attribute.name ?? '').length + 2;
  const as = text.slice((start.offset ?? 0) + lead, (start.offset ?? 0) + lead + attribute.value.length);
  return as === attribute.value ? { line: start.line, column: start.column + lead } : undefined;
}

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
  walk(tree, (node) => readPageNode(page, node));
  page.anchors = headingAnchors(tree);
  return page;
}

function readPageNode(page: PageFile, node: TreeNode): void {
  const place = positionOfNode(node);
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
