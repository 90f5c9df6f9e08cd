/**
 * The one contract for a programmer's errors: RangeError with the name, the value and its limit.
 */

/** A value as it is told: a text in quotes, so that it is not taken for a number. */
export const shown = (value: unknown): string => (typeof value === 'string' ? `"${value}"` : String(value));

/** Refuses what does not hold. */
export function must(holds: boolean, name: string, value: unknown, limit: string): asserts holds {
  if (!holds) throw new RangeError(`${name} is ${shown(value)}; ${limit}`);
}

/** Whether this is an object that may have the keys asked for. */
export const isObject = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Refuses what is no list. */
export function list(name: string, value: unknown, of: string): void {
  must(Array.isArray(value), name, value, `a list of ${of}`);
}

/** Refuses what is no whole number between two limits. */
export function whole(name: string, value: unknown, from: number, to = Infinity): void {
  const holds = Number.isSafeInteger(value) && (value as number) >= from && (value as number) <= to;
  must(holds, name, value, to < Infinity ? `a whole number from ${from} to ${to}` : `a whole number from ${from}`);
}

/** Refuses what is no number above 0. */
export function above0(name: string, value: unknown): void {
  must(Number.isFinite(value) && (value as number) > 0, name, value, 'more than 0');
}

/** Refuses what is no number between two limits. */
export function within(name: string, value: unknown, from: number, to: number): void {
  must(typeof value === 'number' && value >= from && value <= to, name, value, `${from} to ${to}`);
}

/** Refuses what is none of the names there are. */
export function oneOf(name: string, value: unknown, names: readonly string[]): void {
  must(names.includes(value as string), name, value, `one of ${names.join(', ')}`);
}
