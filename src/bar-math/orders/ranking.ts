/** The easiest and the hardest orders, by the score of core. */
import { rankArrangements, TooLarge, type Arrangements, type RankedArrangement } from '../../core/index.ts';
import { cellsSay } from '../../words/bar-math-answers.ts';
import { scoreSays, tooManyToRank } from '../../words/bar-math-orders.ts';
import { reading } from '../read.ts';
import type { Inputs, SumProps } from '../types.ts';
import { neighborsOf, numberOf, type OrderList, type OrderRow } from './related.ts';
import { IN_WORKER, type WorkLimits } from '../limits.ts';
import { countedUpTo, namesOf, readProblem, type Problem } from './problem.ts';

/** The orders at both ends of the ranking. */
export interface RankedOrders {
  /** Why there are none. */
  says?: string;
  easiest: OrderRow[];
  /** The hardest first; empty where the easiest are all there are. */
  hardest: OrderRow[];
}

/** How many are told from each end, and how many make a week. */
const TOLD = 3;
export const WEEK = 5;

/** The easiest and the hardest orders, each with why. Throws TooLarge beyond limits that are given. */
export function rankOrders(inputs: Inputs, props: SumProps, given?: WorkLimits): RankedOrders {
  const limits = given ?? IN_WORKER;
  const problem = readProblem(inputs, reading(inputs, limits), props);
  if (!problem) return { easiest: [], hardest: [] };
  try {
    const rank = (order: 'easiest' | 'hardest', take: number) => ranked(problem, order, take, limits);
    const few = countedUpTo(limits.states, problem).count <= BigInt(2 * TOLD);
    if (few) return { easiest: rank('easiest', 2 * TOLD), hardest: [] };
    return { easiest: rank('easiest', TOLD), hardest: rank('hardest', TOLD) };
  } catch (error) {
    if (!given && error instanceof TooLarge) return { says: tooManyToRank(), easiest: [], hardest: [] };
    throw error;
  }
}

/** The easiest orders of the very cells that an order has, for a week of practice. */
export function easiestOrders(inputs: Inputs, props: SumProps, limits: WorkLimits = IN_WORKER): string[] {
  const problem = readProblem(inputs, reading(inputs, limits), props);
  if (!problem) return [];
  const all = countedUpTo(limits.states, problem);
  const shown = shownIn(inputs, all);
  if (!shown) return [];
  const cells = problem.request.cells.map((cell) => ({ ...cell, times: shown.filter((id) => id === cell.id).length }));
  const same = { ...problem, request: { ...problem.request, cells } };
  return rankedIn(same, 'easiest', WEEK, limits).flatMap(({ ids }) => numberOf(all, ids) ?? []);
}

/** The orders one swap away from the one shown. Throws TooLarge beyond the limits. */
export function neighborOrders(inputs: Inputs, props: SumProps, limits: WorkLimits = IN_WORKER): OrderList {
  const read = reading(inputs, limits);
  const problem = readProblem(inputs, read, props);
  const all = problem && countedUpTo(limits.states, problem);
  const shown = all && shownIn(inputs, all);
  if (!shown) return { says: '', rows: [] };
  // As many orders as it has cells, each looked up cell by cell.
  read.lay(shown.length ** 2);
  return neighborsOf(shown, all, problem!);
}

/** The order whose number stands in its field. */
function shownIn({ order }: Inputs, all: Arrangements): string[] | undefined {
  const number = /^\d{1,400}$/.test(order.trim()) ? BigInt(order) : 0n;
  return number >= 1n && number <= all.count ? all.at(number - 1n) : undefined;
}

const rankedIn = (
  { request }: Problem,
  order: 'easiest' | 'hardest',
  take: number,
  { ranked: mostStates }: WorkLimits,
) => rankArrangements({ ...request, mostStates }, { order, take });

function ranked(problem: Problem, order: 'easiest' | 'hardest', take: number, limits: WorkLimits): OrderRow[] {
  const all = countedUpTo(limits.states, problem);
  return rankedIn(problem, order, take, limits).map((found) => rowOf(found, problem, numberOf(all, found.ids)!));
}

function rowOf({ ids, score }: RankedArrangement, problem: Problem, number: string): OrderRow {
  const { meter, grid } = problem;
  const why = scoreSays(score, meter, grid);
  return { number, key: number, says: cellsSay(namesOf(problem, ids)), why };
}
