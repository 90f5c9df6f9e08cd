import { whole } from '../check.ts';
import { refuse, type Result } from '../fault.ts';
import { chanceOf, type Chance } from './random.ts';

/** The kinds of puzzle; their places here are part of what a number means, so new ones come at the end. */
export const PUZZLE_KINDS = ['fill', 'missing', 'start', 'fix', 'ear', 'resolves', 'which'] as const;

/** A kind of puzzle, as it stands in an address. */
export type PuzzleKind = (typeof PUZZLE_KINDS)[number];

/** From 1, the easiest. */
export type Level = 1 | 2 | 3 | 4 | 5;
/** All levels, the easiest first. */
export const LEVELS: readonly Level[] = [1, 2, 3, 4, 5];

/** What makes puzzles now; an address of an older version is answered by the makers of that version. */
export const PUZZLE_VERSION = 1;
/** Numbers of puzzles go from 1 to this. */
export const MAX_SEED = 999_999_999;

/**
 * The number in an address, `1-4182`: version and seed.
 * @example
 * readPuzzleAddress('1-4182').seed // → 4182
 * readPuzzleAddress('2-4182').fault.expected // → '1'
 */
export function readPuzzleAddress(text: string): Result<'seed', number> {
  const [, version, digits] = /^(\d{1,3})-(\d{1,12})$/.exec(text) ?? [];
  if (version === undefined)
    return refuse(
      0,
      text || 'nothing',
      '1-4182',
      `"${shortened(text)}" is no number of a puzzle; one looks like 1-4182`,
    );
  if (Number(version) !== PUZZLE_VERSION)
    return refuse(
      0,
      version,
      String(PUZZLE_VERSION),
      `there is no version ${version} of the puzzles, only ${PUZZLE_VERSION}`,
    );
  const seed = Number(digits);
  const at = version.length + 1;
  if (seed < 1 || seed > MAX_SEED)
    return refuse(
      at,
      digits,
      `1 to ${MAX_SEED}`,
      `puzzles are numbered from 1 to ${MAX_SEED}; ${digits} is none of them`,
    );
  return { ok: true, seed };
}

/** As much of an address as a sentence can hold. */
const shortened = (text: string): string => (text.length > 24 ? `${text.slice(0, 24)} …` : text);

/**
 * How a number stands in an address. Throws RangeError for what is no number of a puzzle.
 * @example
 * printPuzzleAddress(4182) // → '1-4182'
 */
export function printPuzzleAddress(seed: number): string {
  checkSeed(seed);
  return `${PUZZLE_VERSION}-${seed}`;
}

/** Throws RangeError for what is no number of a puzzle. */
export function checkSeed(seed: number): void {
  whole('seed', seed, 1, MAX_SEED);
}

/**
 * How hard a puzzle is meant to be stands in its number. Throws RangeError for what is no number of a puzzle.
 * @example
 * levelOf(4182) // → 3
 */
export function levelOf(seed: number): Level {
  checkSeed(seed);
  return LEVELS[seed % LEVELS.length];
}

/**
 * A number of a level, by a source of numbers from 0 to below 1.
 * @example
 * levelOf(seedFor(4, () => 0.5)) // → 4
 */
export function seedFor(level: Level, random: () => number): number {
  const blocks = Math.floor(MAX_SEED / LEVELS.length);
  return Math.min(blocks - 1, Math.floor(random() * blocks)) * LEVELS.length + LEVELS.length + level - 1;
}

/** The chance behind a puzzle: the same for the same kind and number, and no other puzzle's. */
export function puzzleChance(kind: PuzzleKind, seed: number): Chance {
  checkSeed(seed);
  return chanceOf((BigInt(PUZZLE_VERSION) << 48n) + (BigInt(PUZZLE_KINDS.indexOf(kind)) << 40n) + BigInt(seed));
}

/** A day of the calendar, as the player's own clock has it. */
export interface Day {
  year: number;
  /** From 1. */
  month: number;
  day: number;
}

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
  const kind = PUZZLE_KINDS[(month * 31 + day) % PUZZLE_KINDS.length];
  return { kind, seed: (year * 100 + month) * 100 + day };
}
