/** Numbers as they are said and written, and what is counted. */
import { type SlotNames, slotNames } from '../core/time/slot-names.ts';
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

const SMALL =
  'nothing one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );

const TENS = 'x x twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/**
 * A whole number as it is said, up to ninety-nine; above that in figures.
 *
 * @example spell(32) // 'thirty-two'
 */
export function spell(n: number): string {
  if (n < 20) return SMALL[n] ?? figures(n);
  if (n > 99) return figures(n);
  const ones = n % 10;
  return ones ? `${TENS[(n - ones) / 10]}-${SMALL[ones]}` : TENS[n / 10];
}

/**
 * How often.
 *
 * @example oftenSays(5) // 'five times'
 */
export const oftenSays = (n: number): string => ['not at all', 'once', 'twice'][n] ?? `${spell(n)} times`;

/** A number with its thousands apart, and no more than `decimals` after the point. */
export const figures = (n: number | bigint, decimals = 0): string =>
  Intl.NumberFormat('en', { maximumFractionDigits: decimals }).format(n);
