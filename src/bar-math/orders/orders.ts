import { TooLarge, type Arrangements } from '../../core/index.ts';
import { noOrderSays, orderSays, ordersSay } from '../../words/bar-math-answers.ts';
import { reasonSays, ruleFaultSays, tooManySays } from '../../words/bar-math-orders.ts';
import { wholeSays } from '../../words/bar-math.ts';
import { keptIn, loopsOf, pathOf, type OrderList } from './around.ts';
import { laid } from './lay.ts';
import { AT_ALL, countedUpTo, namesOf, readProblem, type Problem } from './problem.ts';
import { isRuled, RULE_FIELDS } from './rules.ts';
import { reading, type Reading } from '../read.ts';
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
  /** The orders kept for practice, in the row in which they are best practised. */
  kept?: OrderList;
}

/**
 * How many orders of the cells fill the bars and keep to the rules, and one of them. Where a limit of states is given,
 * throws TooLarge beyond it; else what is too much to count at all gets a sentence.
 */
export function answerOrders(inputs: Inputs, props: SumProps, states?: number): OrdersAnswer {
  const read = reading(inputs);
  const problem = readProblem(inputs, read, props);
  if (!problem)
    return {
      says: ruleFaultSays(
        RULE_FIELDS.find((rule) => read.faults[rule]),
        read.faults,
      ),
      faults: read.faults,
    };
  try {
    return answered(inputs, read, problem, props, states ?? AT_ALL.states);
  } catch (error) {
    if (states !== undefined || !(error instanceof TooLarge)) throw error;
    return { says: '', faults: { cells: { says: tooManySays(AT_ALL.states) } } };
  }
}

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
  return number === undefined ? found : { ...found, ...shown(number, all, problem, props) };
}

/**
 * Why there is none. Which rule stands in the way takes further counts of fewer rules, which may be larger: where the
 * states do not suffice for them, that is too large as well.
 */
function reasonIn(all: Arrangements, states: number): string {
  const reason = all.reason ?? '';
  if (states < AT_ALL.states && /^no order keeps to [^;]*$/.test(reason)) throw new TooLarge('the reason is not known');
  return reasonSays(reason);
}

function orderIn(inputs: Inputs, read: Reading, count: bigint): bigint | undefined {
  const typed = inputs.order.trim();
  const number = /^\d{1,400}$/.test(typed) ? BigInt(typed) : 0n;
  if (number >= 1n && number <= count) return number;
  return read.refuse('order', wholeSays(typed, 1, count));
}

function shown(number: bigint, all: Arrangements, problem: Problem, props: SumProps): Partial<OrdersAnswer> {
  const ids = all.at(number - 1n);
  const which = orderSays(number, all.count, namesOf(problem, ids));
  return { more: [which], ...laid(ids, problem, which, props) };
}

/** The number of any one of the orders, drawn fairly; 0n where there is none. Throws TooLarge beyond the states. */
export function anyOrder(inputs: Inputs, props: SumProps, random: () => number, states = AT_ALL.states): bigint {
  const problem = readProblem(inputs, reading(inputs), props);
  const all = problem && countedUpTo(states, problem);
  return all && all.count > 0n ? all.indexOf(all.sample(random)) + 1n : 0n;
}
