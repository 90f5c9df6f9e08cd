import { barAttributes, type BarAttributes, type WordName } from './vocabulary.ts';

/** A word of the vocabulary as it stands in a lesson's text. */
export interface WordIn {
  name: WordName;
  /** What is written: a text, a number, true where nothing stands behind the name. */
  attributes: Record<string, string | number | boolean>;
}

/** What an author writes for themselves: nothing of it reaches the page. */
const COMMENT = /\{\/\*[\s\S]*?\*\/\}/g;
const VALUE = /"[^"]*"|'[^']*'|\{(?:"[^"]*"|'[^']*'|[^{}"'])*\}/.source;
const TAG = new RegExp(`<([A-Z]\\w*)((?:\\s+[\\w-]+(?:=(?:${VALUE}))?)*)\\s*/?>`, 'g');
const ATTRIBUTE = new RegExp(`([\\w-]+)(?:=(${VALUE}))?`, 'g');

/**
 * The words of some names in a lesson's text, in order, comments left out. For who needs to know of every lesson what is
 * in it and cannot take the text apart for that; it trusts what the content checker has let through.
 *
 * @example
 * wordsIn('<Bar sticking=">R L" meter="2/4" grid={1} />', 'Bar')
 * // [{ name: 'Bar', attributes: { sticking: '>R L', meter: '2/4', grid: 1 } }]
 */
export function wordsIn<Name extends WordName>(body: string, ...names: Name[]): (WordIn & { name: Name })[] {
  const found = [...body.replace(COMMENT, '').matchAll(TAG)];
  return found.flatMap(([, written, attributes]) => {
    const name = names.find((one) => one === written);
    return name ? [{ name, attributes: attributesIn(attributes) }] : [];
  });
}

/** The bars that stand in a lesson's text; one that the vocabulary refuses is left out, for the checker has told of it. */
export function barsIn(body: string): BarAttributes[] {
  const read = wordsIn(body, 'Bar').map(({ attributes }) => barAttributes.safeParse(attributes));
  return read.flatMap(({ data }) => data ?? []);
}

function attributesIn(written: string): WordIn['attributes'] {
  const pairs = [...written.matchAll(ATTRIBUTE)];
  return Object.fromEntries(pairs.map(([, name, value]) => [name, value === undefined || valueOf(value)]));
}

/** A text without its quotes; in braces a number, or a text in quotes of its own. */
function valueOf(written: string): string | number | boolean {
  const inner = written.slice(1, -1).trim();
  if (!written.startsWith('{')) return written.slice(1, -1);
  if (/^["']/.test(inner)) return inner.slice(1, -1);
  return inner === 'true' || inner === 'false' ? inner === 'true' : Number(inner);
}
