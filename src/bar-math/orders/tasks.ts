/** What can be asked of the orders, as plain data: the page answers what is small, a worker the rest. */
import { anyOrder, answerOrders, type OrdersAnswer } from './orders.ts';
import type { Inputs, SumProps } from '../types.ts';
import type { OrderList } from './around.ts';
import { easyFive, likedOrders, nearOrders, type Liked } from './liked.ts';
import type { Reach } from './problem.ts';

/** What each question is answered with. */
interface Answers {
  answer: OrdersAnswer;
  liked: Liked;
  /** The orders one swap away from the one shown. */
  near: OrderList;
  /** The numbers of the easiest orders of the cells shown. */
  five: string[];
  /** The number of any one order. */
  any: bigint;
}

/** What can be asked. */
export type Question = keyof Answers;

/** A question about what stands in the fields. */
export interface Task<Q extends Question = Question> {
  of: Q;
  inputs: Inputs;
  props: SumProps;
}

/** The answer to a question. */
export type AnswerTo<Q extends Question> = Answers[Q];

const WAYS: { [Q in Question]: (inputs: Inputs, props: SumProps, reach?: Reach) => Answers[Q] } = {
  answer: (inputs, props, reach) => answerOrders(inputs, props, reach?.states),
  liked: likedOrders,
  near: nearOrders,
  five: easyFive,
  any: (inputs, props, reach) => anyOrder(inputs, props, Math.random, reach?.states),
};

/** Answers a question; throws TooLarge where a reach is given and it is beyond it. */
export const answerTo = <Q extends Question>({ of, inputs, props }: Task<Q>, reach?: Reach): Answers[Q] =>
  WAYS[of](inputs, props, reach);
