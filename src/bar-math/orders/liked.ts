/** Which orders the hands like, by the score of core. */
import { rankArrangements, TooLarge, type Arrangements, type RankedArrangement } from '../../core/index.ts';
import { cellsSay } from '../../words/bar-math-answers.ts';
import { scoreSays, tooManyToRank } from '../../words/bar-math-orders.ts';
import { reading } from '../read.ts';
import type { Inputs, SumProps } from '../types.ts';
import { nearOf, numberOf, type OrderList, type OrderRow } from './around.ts';
import { AT_ALL, countedUpTo, namesOf, readProblem, type Problem, type Reach } from './problem.ts';

/** The orders at both ends of the ranking. */
export interface Liked {
  /** Why there are none. */
  says?: string;
  easiest: OrderRow[];
  /** The hardest first; empty where the easiest are all there are. */
  hardest: OrderRow[];
}

/** How many are told from each end, and how many make a week. */
const TOLD = 3;
export const WEEK = 5;

/** The easiest and the hardest orders, each with why. Throws TooLarge beyond a reach that is given. */
export function likedOrders(inputs: Inputs, props: SumProps, reach?: Reach): Liked {
  const problem = readProblem(inputs, reading(inputs), props);
  if (!problem) return { easiest: [], hardest: [] };
  try {
    const rank = (order: 'easiest' | 'hardest', take: number) => ranked(problem, order, take, reach ?? AT_ALL);
    const few = countedUpTo((reach ?? AT_ALL).states, problem).count <= BigInt(2 * TOLD);
    if (few) return { easiest: rank('easiest', 2 * TOLD), hardest: [] };
    return { easiest: rank('easiest', TOLD), hardest: rank('hardest', TOLD) };
  } catch (error) {
    if (!reach && error instanceof TooLarge) return { says: tooManyToRank(), easiest: [], hardest: [] };
    throw error;
  }
}

/** The easiest orders of the very cells that an order has, for a week of practice. */
export function easyFive(inputs: Inputs, props: SumProps, reach: Reach = AT_ALL): string[] {
  const problem = readProblem(inputs, reading(inputs), props);
  if (!problem) return [];
  const all = countedUpTo(reach.states, problem);
  const shown = shownIn(inputs, all);
  if (!shown) return [];
  const cells = problem.request.cells.map((cell) => ({ ...cell, times: shown.filter((id) => id === cell.id).length }));
  const same = { ...problem, request: { ...problem.request, cells } };
  return rankedIn(same, 'easiest', WEEK, reach).flatMap(({ ids }) => numberOf(all, ids) ?? []);
}

/** The orders one swap away from the one shown. Throws TooLarge beyond the reach. */
export function nearOrders(inputs: Inputs, props: SumProps, reach: Reach = AT_ALL): OrderList {
  const problem = readProblem(inputs, reading(inputs), props);
  const all = problem && countedUpTo(reach.states, problem);
  const shown = all && shownIn(inputs, all);
  return shown ? nearOf(shown, all, problem!) : { says: '', rows: [] };
}

/** The order whose number stands in its field. */
function shownIn({ order }: Inputs, all: Arrangements): string[] | undefined {
  const number = /^\d{1,400}$/.test(order.trim()) ? BigInt(order) : 0n;
  return number >= 1n && number <= all.count ? all.at(number - 1n) : undefined;
}

const rankedIn = ({ request }: Problem, order: 'easiest' | 'hardest', take: number, { ranked: mostStates }: Reach) =>
  rankArrangements({ ...request, mostStates }, { order, take });

function ranked(problem: Problem, order: 'easiest' | 'hardest', take: number, reach: Reach): OrderRow[] {
  const all = countedUpTo(reach.states, problem);
  return rankedIn(problem, order, take, reach).map((found) => rowOf(found, problem, numberOf(all, found.ids)!));
}

function rowOf({ ids, score }: RankedArrangement, problem: Problem, number: string): OrderRow {
  const { meter, grid } = problem;
  const why = scoreSays(score, meter, grid);
  return { number, key: number, says: cellsSay(namesOf(problem, ids)), why };
}
