/**
 * A number held between two limits.
 *
 * @example within(30, 300, 12) // 30
 */
export function within(low: number, high: number, value: number): number {
  return Math.min(high, Math.max(low, value));
}
