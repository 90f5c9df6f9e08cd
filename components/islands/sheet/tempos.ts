/** Steps a teacher would write, in beats a minute. */
const STEPS = [2, 4, 5, 10, 20, 25, 50] as const;

/**
 * Tempos to fill in, from the first to the goal in even steps; the goal is always the last one, so the last step may be
 * shorter. At most `most` of them.
 *
 * @example tempoBoxes({ from: 50, to: 90 }, 10) // [50, 55, 60, 65, 70, 75, 80, 85, 90]
 */
export function tempoBoxes({ from, to }: { from: number; to: number }, most = 10): number[] {
  const step = STEPS.find((one) => Math.ceil((to - from) / one) < most) ?? Math.ceil((to - from) / (most - 1));
  const count = Math.ceil((to - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => Math.min(to, from + index * step));
}
