/** Numbers as they are said and written, and what is counted. */
import { type SlotNames, slotNames } from '../core/time/slot-names.ts';
import type { Grid, MeterText } from '../core/time/units.ts';
import { WORDS_LANGUAGE } from './site.ts';

const SMALL =
  'nothing one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );

const TENS = 'x x twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** How numbers are spelled: in a sum up to ninety-nine, where things are counted only while they are short. */
const SPELLED = { sum: { none: 'nothing', upTo: 99 }, counted: { none: 'no', upTo: 16 } };

/**
 * A whole number as it is said, and in figures above ninety-nine; before what is counted, none is "no" and figures begin
 * above sixteen.
 *
 * @example spell(32) // 'thirty-two'
 */
export function spell(n: number, as: keyof typeof SPELLED = 'sum'): string {
  const { none, upTo } = SPELLED[as];
  if (n === 0) return none;
  if (n > upTo) return figures(n);
  if (n < 20) return SMALL[n] ?? figures(n);
  const ones = n % 10;
  return ones ? `${TENS[(n - ones) / 10]}-${SMALL[ones]}` : TENS[n / 10];
}

/**
 * A name that is a number stands in quotation marks, so that nobody counts by it.
 *
 * @example quoted('five') // '“five”'
 */
export const quoted = (name: string): string => (SMALL.indexOf(name) > 0 ? `“${name}”` : name);

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

const PLURALS = /* @__PURE__ */ new Intl.PluralRules(WORDS_LANGUAGE);

/**
 * A word by how many there are of it.
 *
 * @example many(2, 'cell') // 'cells'
 */
export const many = (n: number, one: string, more = `${one}s`): string => (PLURALS.select(n) === 'one' ? one : more);

/**
 * How often.
 *
 * @example oftenSays(5) // 'five times'
 */
export const oftenSays = (n: number): string => ['not at all', 'once', 'twice'][n] ?? `${spell(n)} times`;

/** A number with its thousands apart, and no more than `decimals` after the point. */
export const figures = (n: number | bigint, decimals = 0): string =>
  Intl.NumberFormat(WORDS_LANGUAGE, { maximumFractionDigits: decimals }).format(n);
