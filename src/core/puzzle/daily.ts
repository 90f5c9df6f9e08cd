import { whole } from '../check.ts';
import type { PuzzleKind } from './puzzles.ts';

/** A day of the calendar, as the player's own clock has it. */
export interface Day {
  year: number;
  /** From 1. */
  month: number;
  day: number;
}

/**
 * The day of a date, by the clock of whoever made it.
 * @example
 * dayOf(new Date(2026, 10, 25)) // → { year: 2026, month: 11, day: 25 }
 */
export const dayOf = (date: Date): Day => ({
  year: date.getFullYear(),
  month: date.getMonth() + 1,
  day: date.getDate(),
});

/**
 * A day as it is kept: year, month and day with hyphens (ISO 8601).
 * @example
 * printDay({ year: 2026, month: 3, day: 5 }) // → '2026-03-05'
 */
export const printDay = ({ year, month, day }: Day): string =>
  [String(year).padStart(4, '0'), ...[month, day].map((n) => String(n).padStart(2, '0'))].join('-');

/**
 * The kinds that take turns as the puzzle of the day, from a date on (2026-11-25 as 20261125). A row is never changed once its
 * date has come: a past day keeps its puzzle. A new kind takes part by a new row with a date to come.
 */
const ROTATIONS: readonly { from: number; kinds: readonly PuzzleKind[] }[] = [
  { from: 0, kinds: ['fill', 'missing', 'start', 'fix', 'ear', 'resolves', 'which'] },
];

/** How many days a month has by the Gregorian calendar. */
function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/**
 * The puzzle of a day: the same number for everyone who has that date, without any server. Throws RangeError for what is no
 * day of a month.
 * @example
 * dailyPuzzle({ year: 2026, month: 11, day: 25 }) // → { kind: 'start', seed: 20261125 }
 */
export function dailyPuzzle({ year, month, day }: Day): { kind: PuzzleKind; seed: number } {
  whole('year', year, 1, 9999);
  whole('month', month, 1, 12);
  whole('day', day, 1, daysIn(year, month));
  const date = (year * 100 + month) * 100 + day;
  const { kinds } = ROTATIONS.findLast(({ from }) => from <= date)!;
  return { kind: kinds[(month * 31 + day) % kinds.length], seed: date };
}
