import { globSync, readFileSync } from 'node:fs';
import { extname } from 'node:path';
import { parse as parseAstro } from '@astrojs/compiler-rs';
import { parse as parseSvelte } from 'svelte/compiler';
import ts from 'typescript';
import { expect, test } from 'vitest';

/**
 * What a page is made of. The core's faults belong to its contract. What the curriculum tells an author of a field stands
 * in the schema that checks the field, so that neither changes without the other.
 */
const FILES = [
  'components/**/*.{astro,svelte,ts}',
  'src/{layouts,pages}/**/*.{astro,ts}',
  'src/{bar-math,catalogue,formats,search,storage}/**/*.ts',
];

/** Where words side by side are no sentence, and what they are. */
const EXCEPTIONS: Record<string, string> = {
  'class names, a selector': 'components/scripts/{sheet-ticks,turn-pages}.ts',
  'the code a school copies into its own page': 'components/islands/links/snippet.ts',
  selectors: 'components/islands/{bar-math/PracticeOrders,puzzle/PlacedCells}.svelte',
  'ids of cells': 'src/bar-math/fillings.ts',
  'how a file of this site is told from others': 'src/storage/file.ts',
  'the values of a setting as they are written in a file': 'src/storage/fitting.ts',
  'words that a search passes over: they belong to the language that is searched': 'src/search/ranking.ts',
};

/** Attributes that are read or spoken: no word may stand in them. */
const SAID = /^(?:title|alt|placeholder|label|aria-(?:label|description|roledescription|valuetext))$/;

/** Attributes in which words are names. */
const NAMES =
  /^(?:class|style|rel|slot|allow|sizes|media|viewBox|d|points|role|aria-(?:labelledby|describedby|controls)|generics|data-.*)$/;

const WORD = /\p{L}{2}/u;

/** Two words of a language side by side; settings, tags, media queries and selectors are none. */
const inProse = (text: string): boolean =>
  /\p{L}{2,}[,;:.]?\s+\p{Ll}{2,}(?![-\w]*=)/u.test(text.replace(/<[^>]*>?|\([a-z-]+: [a-z-]+\)|^\.[\w-]+ \w+$/g, ''));

/** Errors that are thrown are for whoever builds the site. */
const isError = (callee: string): boolean => /Error$|^TooLarge$/.test(callee);

interface Node {
  type: string;
  [part: string]: unknown;
}

const isNode = (value: unknown): value is Node => typeof (value as Node | undefined)?.type === 'string';

/** The name of an element or an attribute: Svelte has it as text, Astro as a node. */
const nameOf = ({ name }: Node): string => (typeof name === 'string' ? name : String((name as Node | undefined)?.name));

/** The parts of a tree that hold no text of the page. */
const ASIDE = new Set(['comments', 'leadingComments', 'trailingComments', 'metadata', 'css', 'typeAnnotation']);

/** The sentences in the tree of a Svelte or Astro file; `inside` is the attribute or element a text is in. */
function sentencesIn(tree: unknown, inside = 'text'): string[] {
  if (Array.isArray(tree)) return tree.flatMap((node) => sentencesIn(node, inside));
  if (!isNode(tree)) return [];
  const found = ownText(tree, inside);
  if (found !== undefined) return found ? [found] : [];
  if (/^(?:Import|TS)/.test(tree.type)) return [];
  // What is compared with is not said.
  if (tree.type === 'BinaryExpression' && tree.operator !== '+') return [];
  if (tree.type === 'NewExpression' && isError(String((tree.callee as Node).name))) return [];
  const element = (tree.openingElement as Node | undefined) ?? tree;
  const name = /Element$/.test(tree.type) ? nameOf(element) : '';
  if (name === 'style') return [];
  const within = /Attribute$/.test(tree.type) ? nameOf(tree) : /^(?:code|pre)$/.test(name) ? 'code' : inside;
  return Object.entries(tree).flatMap(([part, value]) => (ASIDE.has(part) ? [] : sentencesIn(value, within)));
}

/** The text a node is, where it is a sentence; '' where it is none, undefined where the node is no text. */
function ownText({ type, data, value }: Node, inside: string): string | undefined {
  const cooked = type === 'TemplateElement' ? (value as { cooked: string }).cooked : undefined;
  const text = type === 'Text' ? data : type === 'JSXText' || type === 'Literal' ? value : cooked;
  if (text === undefined) return undefined;
  if (typeof text !== 'string' || NAMES.test(inside) || inside === 'code') return '';
  const markup = type === 'Text' || type === 'JSXText';
  const said = markup ? inside === 'text' || SAID.test(inside) : SAID.test(inside) && type === 'Literal';
  return (said && WORD.test(text)) || inProse(text) ? text.trim() : '';
}

/** The sentences in a file of plain TypeScript. */
function sentencesInScript(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isNewExpression(node) && isError(node.expression.getText())) return;
    const isText = ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    if (isText && inProse(node.text)) found.push(node.text.trim());
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('file.ts', text, ts.ScriptTarget.Latest, true));
  return found;
}

/** By the end of a file's name. */
const READERS: Record<string, (text: string) => string[]> = {
  '.astro': (text) => sentencesIn(parseAstro(text).ast),
  '.svelte': (text) => sentencesIn(parseSvelte(text, { modern: true })),
  '.ts': sentencesInScript,
};

const sentencesOf = (file: string): string[] => READERS[extname(file)](readFileSync(file, 'utf8'));

test('everything a page says comes from the words', () => {
  const excepted = new Set(globSync(Object.values(EXCEPTIONS)));
  const files = globSync(FILES).filter((file) => !excepted.has(file));
  expect(files.length).toBeGreaterThan(200);
  expect(files.flatMap((file) => sentencesOf(file).map((sentence) => `${file}: ${sentence}`))).toEqual([]);
});

test.each(Object.entries(EXCEPTIONS))('an exception is still needed: %s', (_, pattern) => {
  const files = globSync(pattern);
  expect(files).not.toEqual([]);
  for (const file of files) expect(sentencesOf(file), file).not.toEqual([]);
});

test.each([
  ['.svelte', '<p>Loading</p>', 'Loading'],
  ['.svelte', '<button aria-label="Play">{sign}</button>', 'Play'],
  ['.svelte', "<p>{fits ? 'it fits' : ''}</p>", 'it fits'],
  ['.svelte', '<script lang="ts">const says = `the bar of ${n}`;</script>', 'the bar of'],
  ['.astro', '---\nconst a = 1;\n---\n<p>Loading</p>', 'Loading'],
  ['.astro', '<img alt="Sticks" src={src} />', 'Sticks'],
  ['.astro', '---\nconst label = "next lesson";\n---\n<p>{label}</p>', 'next lesson'],
  ['.astro', '<ul>{list.map(() => <li>Empty</li>)}</ul>', 'Empty'],
  ['.ts', 'export const says = `no bar ${n}`;', 'no bar'],
  ['.ts', "read.refuse('at', 'That does not fit.');", 'That does not fit.'],
])('a sentence in %s is found: %s', (kind, text, sentence) => {
  expect(READERS[kind](text)).toEqual([sentence]);
});

test.each([
  ['.svelte', '<p class="large soft" style="color: red">{WORDS.title} · 3</p>'],
  ['.astro', '---\n// A remark on it.\nthrow new Error(`there is no ${id}`);\n---\n<pre>as it is typed</pre>'],
  ['.ts', "import { a } from './a.ts';\nelement.querySelector('.list button');"],
])('what is no sentence in %s is let through: %s', (kind, text) => {
  expect(READERS[kind](text)).toEqual([]);
});
