import { whole } from '../check.ts';

/** After how long a cell starts on beat 1 again. */
export interface Resolution {
  bars: number;
  cells: number;
}

/** Greatest common divisor of two whole numbers, not both 0. */
export function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/**
 * After how many bars and repeats a cell laid end to end starts on beat 1 again: lcm / bar and lcm / cell.
 * Throws RangeError for what is no whole number of slots.
 * @example
 * resolution(3, 16) // → { bars: 3, cells: 16 }
 */
export function resolution(cellSlots: number, barSlots: number): Resolution {
  whole('cellSlots', cellSlots, 1);
  whole('barSlots', barSlots, 1);
  const shared = gcd(cellSlots, barSlots);
  return { bars: cellSlots / shared, cells: barSlots / shared };
}
