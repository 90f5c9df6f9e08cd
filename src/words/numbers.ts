import { slotNames, type SlotNames } from '../core/time/slot-names.ts';
import type { Grid, MeterText } from '../core/time/units.ts';

const WORDS =
  'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(' ');

/**
 * A small number as a word, a larger one in figures.
 * @example
 * numberWord(4) // → 'four'
 */
export const numberWord = (n: number): string => WORDS[n] ?? String(n);

/**
 * A sentence from its beginning in lower case.
 *
 * @example capital('too late.') // 'Too late.'
 */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * A name that is a number stands in quotation marks, so that nobody counts by it.
 *
 * @example quoted('five') // '“five”'
 */
export const quoted = (name: string): string => (WORDS.indexOf(name) > 0 ? `“${name}”` : name);

const TUPLETS = new Set(['triplet', 'quintuplet', 'sextuplet', 'septuplet']);

/**
 * What single slots are called where they are counted. A triplet is three notes, so one slot of it is a partial.
 *
 * @example slotWords('4/4', 3).many // 'partials'
 */
export function slotWords(meter: MeterText, grid: Grid): SlotNames {
  const names = slotNames(meter, grid);
  return TUPLETS.has(names.one) ? { one: 'partial', many: 'partials' } : names;
}
