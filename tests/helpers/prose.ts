import { fleschKincaid } from 'flesch-kincaid';
import remarkFrontmatter from 'remark-frontmatter';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { syllable } from 'syllable';
import { unified } from 'unified';

interface Node {
  type: string;
  value?: string;
  children?: Node[];
}

const processor = unified().use(remarkParse).use(remarkFrontmatter).use(remarkMdx);
/** What stands in the text and is no sentence: bars and other words of a lesson, code, headings, tables. */
const NO_PROSE = new Set(['mdxJsxFlowElement', 'yaml', 'code', 'inlineCode', 'heading', 'table', 'mdxTextExpression']);

const textOf = (node: Node): string =>
  NO_PROSE.has(node.type) ? '' : (node.value ?? (node.children ?? []).map(textOf).join(''));

function paragraphsOf(node: Node): string[] {
  if (NO_PROSE.has(node.type)) return [];
  return node.type === 'paragraph' ? [textOf(node)] : (node.children ?? []).flatMap(paragraphsOf);
}

/** A word is read as one where it has a small letter, or is "I" or "A": no sticking, no number; the count "a" is a word too. */
const isWord = (text: string): boolean => /^(?=.*[a-z])[A-Za-z]+([’'-][A-Za-z]+)*$/.test(text) && text !== 'e';
const wordsOf = (sentence: string): string[] =>
  sentence
    .split(/[\s—–/]+/)
    .map((text) => text.replace(/^\W+|\W+$/g, ''))
    .filter((text) => isWord(text) || /^[IA]$/.test(text));

/** The sentences of a lesson's own prose as lists of words; what has no word in it is none. */
export function sentencesOf(mdx: string): string[][] {
  const sentences = paragraphsOf(processor.parse(mdx) as Node).flatMap((text) => text.split(/[.!?]+(?=\s|$)/));
  return sentences.map(wordsOf).filter((words) => words.length > 0);
}

/** How hard prose is to read. */
export interface Reading {
  /** The school grade of the United States, by the formula of Flesch and Kincaid (1975); a reader's age is 5 years more. */
  grade: number;
  words: number;
  /** Words a sentence. */
  length: number;
}

/** How hard a lesson is to read; NaN for one without prose. */
export function readingOf(mdx: string): Reading {
  const sentences = sentencesOf(mdx);
  const words = sentences.flat();
  const counts = { sentence: sentences.length, word: words.length, syllable: syllable(words.join(' ')) };
  return { grade: fleschKincaid(counts), words: words.length, length: words.length / sentences.length };
}
