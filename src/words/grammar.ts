/** How sentences are put together: lists, capitals, and the school's word for a bar. */
import { BAR_WORD, type BarWord } from './site.ts';

/**
 * A list in a sentence.
 *
 * @example inSentence(['right', 'left', 'alternating']) // 'right, left and alternating'
 */
export const inSentence = (items: readonly string[], joint?: 'or'): string =>
  // American English would put a comma before the joint, which the sentences of this site do without.
  new Intl.ListFormat('en-GB', joint && { type: 'disjunction' }).format(items);

/**
 * A sentence with the school's word for a bar: "bar" in, "bar" or "measure" out. A bar line is one in both.
 *
 * @example sayBar('A bar is a length to be filled.', 'measure') // 'A measure is a length to be filled.'
 */
/* @__NO_SIDE_EFFECTS__ */
export function sayBar(sentence: string, word: BarWord = BAR_WORD): string {
  if (word === 'bar') return sentence;
  const measure: Record<string, string> = { bar: 'measure', bars: 'measures', Bar: 'Measure', Bars: 'Measures' };
  return sentence.replace(/\b[Bb]ars?\b(?!\s+lines?\b)/g, (found) => measure[found] ?? found);
}

/**
 * Sentences in a list or by their names, however deep, all with the school's word for a bar; ids stay.
 *
 * @example sayBars({ id: 'bar', says: ['count in a bar'] }) // { id: 'bar', says: ['count in a bar'] }
 */
/* @__NO_SIDE_EFFECTS__ */
export function sayBars<T>(texts: T): T {
  if (BAR_WORD === 'bar') return texts;
  if (typeof texts === 'string') return sayBar(texts) as T;
  if (Array.isArray(texts)) return texts.map((text) => sayBars(text)) as T;
  if (typeof texts !== 'object' || texts === null) return texts;
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]) => [key, key === 'id' ? text : sayBars(text)]),
  ) as T;
}

/**
 * A sentence from its beginning in lower case.
 *
 * @example capital('too late.') // 'Too late.'
 */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * A clause, such as the message of a fault, as a sentence of its own.
 *
 * @example asSentence('a bar line stands here') // 'A bar line stands here.'
 */
export const asSentence = (clause: string): string => `${capital(clause)}.`;
