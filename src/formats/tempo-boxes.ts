/** Steps a teacher would write, in beats a minute. */
const STEPS = [5, 10, 20, 25, 50] as const;
/** For a stretch so short that larger steps would say nothing; both in beats a minute. */
const SHORT = { stretch: 10, step: 2 } as const;

/**
 * Tempos to fill in, from the first to the goal in even steps; the goal is always the last one, so the last step may be
 * shorter. At most `most` of them.
 *
 * @example tempoBoxes({ from: 50, to: 90 }, 10) // [50, 55, 60, 65, 70, 75, 80, 85, 90]
 */
export function tempoBoxes({ from, to }: { from: number; to: number }, most = 10): number[] {
  const short = to - from <= SHORT.stretch && Math.ceil((to - from) / SHORT.step) < most;
  const usual = STEPS.find((one) => Math.ceil((to - from) / one) < most) ?? Math.ceil((to - from) / (most - 1));
  const step = short ? SHORT.step : usual;
  const count = Math.ceil((to - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => Math.min(to, from + index * step));
}
