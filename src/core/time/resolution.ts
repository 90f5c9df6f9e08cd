import { whole } from '../check.ts';

/** After how long a cell starts on beat 1 again. */
export interface Resolution {
  bars: number;
  cells: number;
}

/**
 * The greatest common divisor of two whole numbers from 0; 0 of both is 0. Throws RangeError for anything else.
 * @example
 * gcd(12, 16) // → 4
 */
export function gcd(a: number, b: number): number {
  whole('a', a, 0);
  whole('b', b, 0);
  let [divisor, rest] = [a, b];
  while (rest > 0) [divisor, rest] = [rest, divisor % rest];
  return divisor;
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
