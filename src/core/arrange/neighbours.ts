import { ids, must, whole } from '../check.ts';

/**
 * The orders one swap of two neighbouring cells away, by the place of the swap. Each is different from all others and from
 * the order itself; whether they keep to a rule is for `arrangements(…).indexOf` to say.
 * @example
 * neighbours(['a', 'a', 'b', 'c']) // → [['a', 'b', 'a', 'c'], ['a', 'a', 'c', 'b']]
 */
export function neighbours(order: readonly string[]): string[][] {
  ids('order', order);
  const places = order.slice(1).map((_, i) => i);
  return places.filter((i) => order[i] !== order[i + 1]).map((i) => swapped(order, i));
}

/** The order with the cell at a place and the next one exchanged. */
function swapped(order: readonly string[], at: number): string[] {
  const next = [...order];
  [next[at], next[at + 1]] = [order[at + 1], order[at]];
  return next;
}

/**
 * How many swaps of neighbouring cells lead from one order to another, at least: the pairs of cells that stand the other
 * way round. Throws RangeError where they are not orders of the same cells.
 * @example
 * swapDistance(['a', 'b', 'c'], ['c', 'b', 'a']) // → 3
 */
export function swapDistance(from: readonly string[], to: readonly string[]): number {
  const places = placesIn(from, to);
  let inverted = 0;
  for (let i = 1; i < places.length; i += 1)
    for (let before = 0; before < i; before += 1) if (places[before] > places[i]) inverted += 1;
  return inverted;
}

/** Where each cell of one order stands in the other; like cells keep their order among themselves, so no way is shorter. */
function placesIn(from: readonly string[], to: readonly string[]): number[] {
  for (const order of [from, to]) ids('order', order);
  const free = new Map<string, number[]>();
  to.forEach((id, place) => free.set(id, [...(free.get(id) ?? []), place]));
  const places = from.map((id) => free.get(id)?.shift());
  const alike = from.length === to.length && !places.includes(undefined);
  must(alike, `order to ${to.join(' ')}`, from.join(' '), 'the same cells, equally often');
  return places as number[];
}

/** The most cells of an order from which a chain is made. */
const MAX_CHAINED = 256;

/**
 * A shortest chain of swaps of neighbouring cells from one order to another, both included. What stands between may break
 * rules that the two keep. Throws RangeError where they are not orders of the same cells, and for more than 256 of them.
 * @example
 * swapChain(['a', 'b', 'c'], ['c', 'a', 'b']) // → [['a', 'b', 'c'], ['a', 'c', 'b'], ['c', 'a', 'b']]
 */
export function swapChain(from: readonly string[], to: readonly string[]): string[][] {
  placesIn(from, to);
  whole('cells of an order', from.length, 0, MAX_CHAINED);
  const chain = [[...from]];
  to.forEach((id, place) => {
    const last = chain[chain.length - 1];
    for (let at = last.indexOf(id, place) - 1; at >= place; at -= 1) chain.push(swapped(chain[chain.length - 1], at));
  });
  return chain;
}
