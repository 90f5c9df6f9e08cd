import type { Day } from '../../../src/core/index.ts';

/** The day by the player's own clock, in figures and as it is kept, `2026-11-25`. */
export function today(now = new Date()): Day & { text: string } {
  const [year, month, day] = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  const two = (n: number): string => String(n).padStart(2, '0');
  return { year, month, day, text: `${year}-${two(month)}-${two(day)}` };
}
