/** Refuses what is no whole number of at least `from`, by name: RangeError with value and limit. */
export function whole(name: string, value: number, from: number, to = Number.MAX_SAFE_INTEGER): void {
  if (Number.isSafeInteger(value) && value >= from && value <= to) return;
  const limit = to === Number.MAX_SAFE_INTEGER ? `a whole number from ${from}` : `a whole number from ${from} to ${to}`;
  throw new RangeError(`${name} is ${value}; ${limit}`);
}

/** Refuses what is no number above 0, by name: RangeError with value and limit. */
export function above0(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} is ${value}; more than 0`);
}
