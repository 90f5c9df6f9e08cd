/** After how long a cell starts on beat 1 again. */
export interface Resolution {
  bars: number;
  cells: number;
}

/** Greatest common divisor of two whole numbers, not both 0. */
export function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

function checkSlots(name: string, slots: number): void {
  if (!Number.isSafeInteger(slots) || slots < 1) throw new RangeError(`${name} is ${slots}; a whole number from 1`);
}

/**
 * After how many bars and repeats a cell laid end to end starts on beat 1 again: lcm / bar and lcm / cell.
 * Throws RangeError for what is no whole number of slots.
 * @example
 * resolution(3, 16) // → { bars: 3, cells: 16 }
 */
export function resolution(cellSlots: number, barSlots: number): Resolution {
  checkSlots('cellSlots', cellSlots);
  checkSlots('barSlots', barSlots);
  const shared = gcd(cellSlots, barSlots);
  return { bars: cellSlots / shared, cells: barSlots / shared };
}
