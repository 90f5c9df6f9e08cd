import type { Grid } from '../time/units.ts';
import { checkSeed, MAX_SEED } from './address.ts';

/** How hard a puzzle is meant to be; 1 is the easiest. */
export type Level = 1 | 2 | 3 | 4 | 5;
/** All levels, the easiest first. */
export const LEVELS: readonly Level[] = [1, 2, 3, 4, 5];

/**
 * The level of a seed. Throws RangeError for what is no seed.
 * @example
 * levelOf(4182) // → 3
 */
export function levelOf(seed: number): Level {
  checkSeed(seed);
  return LEVELS[seed % LEVELS.length];
}

/**
 * A seed of a level, by a source of numbers from 0 to below 1.
 * @example
 * levelOf(seedFor(4, () => 0.5)) // → 4
 */
export function seedFor(level: Level, random: () => number): number {
  const blocks = Math.floor(MAX_SEED / LEVELS.length);
  return Math.min(blocks - 1, Math.floor(random() * blocks)) * LEVELS.length + LEVELS.length + level - 1;
}

/**
 * The level so many steps up or down, never beyond the easiest or the hardest.
 * @example
 * levelNear(5, 1) // → 5
 */
export const levelNear = (level: Level, step: number): Level =>
  LEVELS[Math.min(LEVELS.length, Math.max(1, level + step)) - 1];

/** How one puzzle went. */
export interface Outcome {
  right: boolean;
  /** Wrong answers before that. */
  misses: number;
  hints: number;
}

const easy = ({ right, misses, hints }: Outcome): boolean => right && misses === 0 && hints === 0;
const hard = ({ right, misses, hints }: Outcome): boolean => !right || misses + hints > 2;

/**
 * The level of the next puzzle: one up after two of this level that were right at once without a hint, one down after two
 * that were not solved or took more than two misses and hints, else the same. `last` has the latest at the end.
 * @example
 * nextLevel(2, [{ right: true, misses: 0, hints: 0 }, { right: true, misses: 0, hints: 0 }]) // → 3
 */
export function nextLevel(level: Level, last: readonly Outcome[]): Level {
  const two = last.slice(-2);
  if (two.length < 2) return level;
  return levelNear(level, two.every(easy) ? 1 : two.every(hard) ? -1 : 0);
}

/** How hard a puzzle is, measured on the puzzle itself. */
export interface Difficulty {
  /** Right answers there are. */
  answers: bigint;
  /** Answers that can be given at all: the other orders that fill the bar, the other slots, the other numbers. */
  choices: bigint;
  /** Rules that have to be kept besides filling the bar. */
  rules: number;
  /** How many steps an answer takes: cells to be placed, cells to be counted past, bars. */
  depth: number;
  /** All of it as one number: bits of choice, rules and half the depth, and one more for a grid that is no power of two. */
  score: number;
}

/** How many halvings lead from the choices to the answers; big numbers are exact enough as floating ones here. */
const bits = (choices: bigint, answers: bigint): number =>
  Math.max(0, Math.log2(Number(choices)) - Math.log2(Number(answers)));

/** Measures a puzzle: how much there is to choose, to keep in mind and to count. The weights are ours. */
export function difficultyOf(facts: Omit<Difficulty, 'score'>, grid: Grid): Difficulty {
  const odd = [1, 2, 4, 8].includes(grid) ? 0 : 1;
  const score = bits(facts.choices, facts.answers) + facts.rules + facts.depth / 2 + odd;
  return { ...facts, score: Math.round(score * 100) / 100 };
}
