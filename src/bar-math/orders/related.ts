/** From one order to others: those one swap away, a way through a few that are kept, and loops begun elsewhere. */
import {
  loopArrangements,
  neighbors,
  practicePath,
  swapChain,
  swapDistance,
  type Arrangements,
} from '../../core/index.ts';
import { cellsSay } from '../../words/bar-math-answers.ts';
import {
  keptFault,
  keptSays,
  loopsSay,
  nearSays,
  noLoopsSay,
  stepSays,
  swapSays,
} from '../../words/bar-math-orders.ts';
import type { Reading } from '../read.ts';
import type { Inputs } from '../types.ts';
import { namesOf, type Problem } from './problem.ts';

/** One of a list of orders. */
export interface OrderRow {
  /** Its number among all that were counted, from 1; it goes into the address. */
  number: string;
  /** Tells the row from the others of its list, and stays where the row does. */
  key: string;
  says: string;
  why: string;
  /** The orders of a way that leads to it swap by swap, where it is more than one swap away. */
  between?: string[];
}

/** A sentence and some orders. */
export interface OrderList {
  says: string;
  rows: OrderRow[];
}

/** The number of an order; undefined where it breaks a rule. */
export function numberOf(all: Arrangements, ids: readonly string[]): string | undefined {
  const index = all.indexOf(ids);
  return index < 0n ? undefined : String(index + 1n);
}

/** More rows than this nobody reads. */
const MOST_NEAR = 16;
const MOST_LOOPS = 12;
/** As many as a student can keep apart in a month. */
export const MOST_KEPT = 12;

/** Where two neighbors differ first. */
const placeOf = (a: readonly string[], b: readonly string[]): number => a.findIndex((id, i) => id !== b[i]);

/** The orders one swap of neighboring cells away that keep to the rules. */
export function neighborsOf(ids: readonly string[], all: Arrangements, problem: Problem): OrderList {
  const near = neighbors(ids);
  const rows = near.flatMap((order): OrderRow[] => {
    const [number, place] = [numberOf(all, order), placeOf(ids, order)];
    if (number === undefined) return [];
    const [before, after] = namesOf(problem, order.slice(place, place + 2));
    return [{ number, key: String(place), says: swapSays(place, before, after), why: '' }];
  });
  return { says: nearSays(near.length, rows.length, MOST_NEAR), rows: rows.slice(0, MOST_NEAR) };
}

/** The numbers of the orders that are kept; one that is none is noted. */
export function keptIn(inputs: Inputs, read: Reading, count: bigint): string[] {
  const typed = inputs.kept.split(',').map((number) => number.trim());
  const known = (number: string): boolean => /^[1-9]\d{0,399}$/.test(number) && BigInt(number) <= count;
  if (inputs.kept.trim() && !typed.every(known))
    read.refuse(
      'kept',
      keptFault(
        typed.find((n) => !known(n))!,
        count,
      ),
    );
  return [...new Set(typed.filter(known))].slice(0, MOST_KEPT);
}

/** The kept orders in a row in which each is a small change from the last; the first stays the first. */
export function pathOf(numbers: readonly string[], all: Arrangements, problem: Problem): OrderList {
  const orders = numbers.map((number) => all.at(BigInt(number) - 1n));
  const cellsIn = (order: readonly string[]): string => [...order].sort().join();
  const alike = orders.filter((order) => cellsIn(order) === cellsIn(orders[0]));
  const others = orders.filter((order) => cellsIn(order) !== cellsIn(orders[0]));
  const path = practicePath(alike);
  const rows = path.map((order, i) => ({ ...rowOf(order, all, problem), ...stepTo(path[i - 1], order, all, problem) }));
  const apart = others.map((order) => ({ ...rowOf(order, all, problem), why: stepSays(-1) }));
  return { says: keptSays(orders.length, apart.length), rows: [...rows, ...apart] };
}

function rowOf(order: readonly string[], all: Arrangements, problem: Problem): OrderRow {
  const number = numberOf(all, order)!;
  return { number, key: number, says: cellsSay(namesOf(problem, order)), why: '' };
}

/** What changes from the order before, and the orders in between that keep to the rules. */
function stepTo(before: readonly string[] | undefined, order: readonly string[], all: Arrangements, problem: Problem) {
  if (!before) return { why: stepSays(0) };
  const swaps = swapDistance(before, order);
  const place = placeOf(before, order);
  if (swaps === 1) return { why: stepSays(1, place, namesOf(problem, order.slice(place, place + 2))) };
  // More steps than can be kept are not worth working out, and orders of many cells have thousands.
  if (swaps > MOST_KEPT) return { why: stepSays(swaps) };
  const between = swapChain(before, order).slice(1, -1);
  return { why: stepSays(swaps), between: between.flatMap((one) => numberOf(all, one) ?? []) };
}

/** One of each of the orders that are the same loop begun elsewhere; undefined where nothing goes round one bar. */
export function loopsOf(all: Arrangements, problem: Problem, states: number): OrderList | undefined {
  const { request, bars } = problem;
  const { first, last, accentOn, noAccentOn, lastStrokeOn, withinBars, lead, loop } = request.rules;
  if (!loop || bars > 1) return undefined;
  const placed = first ?? last ?? accentOn ?? noAccentOn ?? lastStrokeOn ?? withinBars;
  if (placed !== undefined || lead === 'alternating') return { says: noLoopsSay(), rows: [] };
  const loops = loopArrangements({ ...request, mostStates: states });
  const some: string[][] = [];
  for (const ids of loops) {
    some.push(ids);
    if (some.length === MOST_LOOPS) break;
  }
  return { says: loopsSay(loops.count, some.length), rows: some.map((ids) => rowOf(ids, all, problem)) };
}
