/**
 * The one contract for a programmer's errors: RangeError with the name, the value and its limit.
 */

const MOST_SHOWN = 80;

/** A value as it is told, shortened: a text in quotes, so that it is not taken for a number. */
export function shown(value: unknown): string {
  const text = plain(value);
  const short = text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)}…` : text;
  return typeof value === 'string' ? `"${short}"` : short;
}

/** Some objects cannot be turned into text. */
function plain(value: unknown): string {
  try {
    return String(value);
  } catch {
    return 'an object';
  }
}

/** Refuses what does not hold. */
export function must(holds: boolean, name: string, value: unknown, limit: string): asserts holds {
  if (!holds) throw new RangeError(`${name} is ${shown(value)}; ${limit}`);
}

/** Whether this is an object that may have the keys asked for. */
export const isObject = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Refuses what is no text. */
export function text(name: string, value: unknown): void {
  must(typeof value === 'string', name, value, 'a text');
}

/** Refuses what is no list of ids. */
export function ids(name: string, value: unknown): void {
  list(name, value, 'ids');
  for (const id of value as unknown[]) text('id', id);
}

/** Refuses what is no list. */
export function list(name: string, value: unknown, of: string): void {
  must(Array.isArray(value), name, value, `a list of ${of}`);
}

/** Refuses what is no tick, fractions of one included. */
export function tick(name: string, value: unknown): void {
  const holds = typeof value === 'number' && Math.abs(value) <= Number.MAX_SAFE_INTEGER;
  must(holds, name, value, 'a number of ticks');
}

/** Refuses what is no whole number between two limits. */
export function whole(name: string, value: unknown, from: number, to = Infinity): void {
  const holds = Number.isSafeInteger(value) && (value as number) >= from && (value as number) <= to;
  if (!holds)
    must(false, name, value, to < Infinity ? `a whole number from ${from} to ${to}` : `a whole number from ${from}`);
}

/** Further from 1, tempos and lengths would make times that no number holds. */
const LEAST = 1e-6;
const MOST = 1e9;

/** Refuses what is no number above 0, and what is too small or too large to be a tempo or a length of time. */
export function above0(name: string, value: unknown): void {
  must(Number.isFinite(value) && (value as number) > 0, name, value, 'more than 0');
  must((value as number) >= LEAST && (value as number) <= MOST, name, value, `${LEAST} to ${MOST}`);
}

/** Refuses what is neither left out nor true or false. */
export function optionalSwitch(name: string, value: unknown): void {
  must(value === undefined || typeof value === 'boolean', name, value, 'true or false');
}

/** Refuses options that are no object. */
export function checkOptions(name: string, value: unknown, of = 'an object of options'): void {
  must(isObject(value), `options of ${name}`, value, of);
}

/** Refuses what is no number between two limits. */
export function within(name: string, value: unknown, from: number, to: number): void {
  must(typeof value === 'number' && value >= from && value <= to, name, value, `${from} to ${to}`);
}

/** Refuses what is none of the names there are. */
export function oneOf(name: string, value: unknown, names: readonly string[]): void {
  // The sentence is only made when it is needed: every stroke of a timeline comes by here.
  if (!names.includes(value as string)) must(false, name, value, `one of ${names.join(', ')}`);
}
