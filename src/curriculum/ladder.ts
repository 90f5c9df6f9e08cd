/**
 * How a rudiment is practiced, open, closed and open again (common practice): from slow to fast and back by even steps.
 */

/** Slow enough to begin with, fast enough to work toward, in beats a minute: ours, for every rudiment alike. */
export const RUDIMENT_TEMPO = { from: 60, to: 120 } as const;

/** Beats a minute from one step to the next: ours. */
export const LADDER_STEP = 10;

/** How many bars a step is held, at least: ours; the whole drawing goes round so often that it comes to that. */
const BARS_A_STEP = 4;

/**
 * The tempos of a ladder on the way up; on the way down they come in the other order, the top one once.
 *
 * @example ladderTempos({ from: 60, to: 90 }) // [60, 70, 80, 90]
 */
export function ladderTempos({ from, to }: { from: number; to: number }, step = LADDER_STEP): number[] {
  const steps = Math.ceil((to - from) / step);
  return Array.from({ length: steps + 1 }, (_, index) => Math.min(from + index * step, to));
}

/** How often a drawing of so many bars goes round on each step. */
export const roundsAStep = (bars: number): number => Math.max(1, Math.ceil(BARS_A_STEP / bars));
