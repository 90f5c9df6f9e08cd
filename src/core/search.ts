/**
 * The last index from 0 to below `count` for which something holds, by halving; -1 for none. It must hold for every index
 * before one for which it holds.
 * @example
 * lastWhere(10, (i) => i * i <= 30) // → 5
 */
export function lastWhere(count: number, holds: (index: number) => boolean): number {
  let [from, to] = [0, count];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (holds(middle)) from = middle + 1;
    else to = middle;
  }
  return from - 1;
}
