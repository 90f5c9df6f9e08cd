import { ids, list, must, whole } from '../check.ts';

/**
 * The orders one swap of two neighboring cells away, by the place of the swap. Each is different from all others and from
 * the order itself; whether they keep to a rule is for `arrangements(…).indexOf` to say.
 * @example
 * neighbors(['a', 'a', 'b', 'c']) // → [['a', 'b', 'a', 'c'], ['a', 'a', 'c', 'b']]
 */
export function neighbors(order: readonly string[]): string[][] {
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
 * How many swaps of neighboring cells lead from one order to another, at least: the pairs of cells that stand the other
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
 * A shortest chain of swaps of neighboring cells from one order to another, both included. What stands between may break
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

/** The most orders a practice path is looked for through. */
export const MAX_PATH = 500;

/**
 * The chosen orders in a sequence in which each is a small change from the last, beginning with the first one given. A
 * heuristic, not the best path there is: always on to the nearest that is left, then stretches are turned round as long as
 * that shortens the sum of swaps (2-opt). It is never longer than the sequence given, and the same each time. Throws
 * RangeError for orders that are not of the same cells, and for more than 500.
 * @example
 * practicePath([['a', 'b', 'c'], ['c', 'b', 'a'], ['b', 'a', 'c']]) // → [['a', 'b', 'c'], ['b', 'a', 'c'], ['c', 'b', 'a']]
 */
export function practicePath(orders: readonly (readonly string[])[]): string[][] {
  list('orders', orders, 'orders');
  whole('number of orders', orders.length, 0, MAX_PATH);
  const distances = orders.map((from) => orders.map((to) => swapDistance(from, to)));
  const given = orders.map((_, i) => i);
  const paths = [nearest(distances), given].map((path) => shorten(path, distances));
  const [found, kept] = paths.map((path) => lengthOf(path, distances));
  return paths[found <= kept ? 0 : 1].map((i) => [...orders[i]]);
}

type Distances = readonly (readonly number[])[];

/** From the first one always on to the nearest that is left, the first of several. */
function nearest(distances: Distances): number[] {
  const left = distances.map((_, i) => i);
  const path = left.splice(0, 1);
  while (left.length) {
    const from = distances[path[path.length - 1]];
    const next = left.reduce((best, i) => (from[i] < from[best] ? i : best));
    path.push(...left.splice(left.indexOf(next), 1));
  }
  return path;
}

const lengthOf = (path: readonly number[], distances: Distances): number =>
  path.slice(1).reduce((sum, to, i) => sum + distances[path[i]][to], 0);

/** Turns stretches round until no turn shortens the path; its first order stays the first. */
function shorten(path: readonly number[], distances: Distances): number[] {
  let best = [...path];
  for (let better = true; better;) {
    better = false;
    for (let from = 1; from < best.length - 1; from += 1)
      for (let to = from + 1; to < best.length; to += 1)
        if (gain(best, from, to, distances) > 0) {
          best = [...best.slice(0, from), ...best.slice(from, to + 1).reverse(), ...best.slice(to + 1)];
          better = true;
        }
  }
  return best;
}

/** What turning a stretch round saves: only the steps into it and out of it change. */
function gain(path: readonly number[], from: number, to: number, distances: Distances): number {
  const step = (a: number, b: number | undefined): number => (b === undefined ? 0 : distances[a][b]);
  const [before, first, last, after] = [path[from - 1], path[from], path[to], path[to + 1] as number | undefined];
  return step(before, first) + step(last, after) - step(before, last) - step(first, after);
}
