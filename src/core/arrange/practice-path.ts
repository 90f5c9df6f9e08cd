import { list, whole } from '../check.ts';
import { swapDistance } from './neighbours.ts';

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
