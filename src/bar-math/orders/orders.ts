import { TooLarge, type Arrangements } from '../../core/index.ts';
import { noOrderSays, orderSays, ordersSay } from '../../words/bar-math-answers.ts';
import { reasonSays, ruleFaultSays, tooManySays } from '../../words/bar-math-orders.ts';
import { wholeSays } from '../../words/bar-math.ts';
import { keptIn, loopsOf, pathOf, type OrderList } from './related.ts';
import { drawOrder } from './drawing.ts';
import { IN_WORKER, type WorkLimits } from '../limits.ts';
import { countedUpTo, namesOf, readProblem, type Problem } from './problem.ts';
import { isRuled, RULE_FIELDS } from './rules.ts';
import { reading, tooLongFaults, type Reading } from '../read.ts';
import type { Answer, Inputs, SumProps } from '../types.ts';

/** What stands in the fields before anyone types. */
export const ORDERS: Inputs = {
  cells: 'kick*1,flam-drag*3,rll*2',
  bars: '1',
  meter: '4/4',
  grid: '4',
  first: '',
  last: '',
  accents: '',
  quiet: '',
  end: '',
  run: '',
  graces: '',
  within: '',
  joins: '',
  lead: '',
  loop: '',
  order: '1',
  kept: '',
};

/** An answer, how many orders there are, and what leads from the one shown to others. */
export interface OrdersAnswer extends Answer {
  count?: bigint;
  loops?: OrderList | undefined;
  /** The orders kept for practice, in the row in which they are best practiced. */
  kept?: OrderList;
}

/**
 * How many orders of the cells fill the bars and keep to the rules, and one of them. Where limits are given, throws
 * TooLarge beyond them; else what is too much to count at all gets a sentence.
 */
export function answerOrders(inputs: Inputs, props: SumProps, given?: WorkLimits): OrdersAnswer {
  const long = tooLongFaults(inputs);
  if (long) return { says: ruleFaultIn(long), faults: long };
  const limits = given ?? IN_WORKER;
  const read = reading(inputs, limits);
  const problem = readProblem(inputs, read, props);
  if (!problem) return { says: ruleFaultIn(read.faults), faults: read.faults };
  try {
    return answered(inputs, read, problem, props, limits.states);
  } catch (error) {
    if (given || !(error instanceof TooLarge)) throw error;
    return { says: '', faults: { cells: { says: tooManySays(limits.states) } } };
  }
}

/** What is wrong with a rule is said in the open: the rules may be folded away. */
const ruleFaultIn = (faults: OrdersAnswer['faults']): string =>
  ruleFaultSays(
    RULE_FIELDS.find((rule) => faults[rule]),
    faults,
  );

function answered(inputs: Inputs, read: Reading, problem: Problem, props: SumProps, states: number): OrdersAnswer {
  const all = countedUpTo(states, problem);
  const { faults } = read;
  if (all.count === 0n) return { says: noOrderSays(reasonIn(all, states)), faults, count: 0n };
  const says = ordersSay(all.count, problem.bars, isRuled(problem.request.rules));
  const number = orderIn(inputs, read, all.count);
  const kept = keptIn(inputs, read, all.count);
  const found: OrdersAnswer = {
    says,
    faults,
    count: all.count,
    loops: loopsOf(all, problem, states),
    kept: pathOf(kept, all, problem),
  };
  return number === undefined ? found : { ...found, ...shown(number, all, problem, props, read) };
}

/**
 * Why there is none. Which rule stands in the way takes further counts of fewer rules, which may be larger: where the
 * states do not suffice for them, that is too large as well.
 */
function reasonIn(all: Arrangements, states: number): string {
  const reason = all.reason ?? '';
  if (states < IN_WORKER.states && /^no order keeps to [^;]*$/.test(reason))
    throw new TooLarge('the reason is not known');
  return reasonSays(reason);
}

function orderIn(inputs: Inputs, read: Reading, count: bigint): bigint | undefined {
  const typed = inputs.order.trim();
  const number = /^\d{1,400}$/.test(typed) ? BigInt(typed) : 0n;
  if (number >= 1n && number <= count) return number;
  return read.refuse('order', wholeSays(typed, 1, count));
}

function shown(
  number: bigint,
  all: Arrangements,
  problem: Problem,
  props: SumProps,
  read: Reading,
): Partial<OrdersAnswer> {
  const ids = all.at(number - 1n);
  const which = orderSays(number, all.count, namesOf(problem, ids));
  const { more, ...drawing } = drawOrder(ids, problem, which, props, read);
  return { more: [which, ...more], ...drawing };
}

/** The number of any one of the orders, drawn fairly; 0n where there is none. Throws TooLarge beyond the limits. */
export function randomOrder(inputs: Inputs, props: SumProps, random: () => number, limits = IN_WORKER): bigint {
  const problem = readProblem(inputs, reading(inputs, limits), props);
  const all = problem && countedUpTo(limits.states, problem);
  return all && all.count > 0n ? all.indexOf(all.sample(random)) + 1n : 0n;
}
