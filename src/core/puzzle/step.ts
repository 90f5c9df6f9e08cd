import { LEVELS, type Level } from './address.ts';

/** How one puzzle went. */
export interface Outcome {
  right: boolean;
  /** Answers given before that. */
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
  const step = two.every(easy) ? 1 : two.every(hard) ? -1 : 0;
  return LEVELS[Math.min(LEVELS.length, Math.max(1, level + step)) - 1];
}
