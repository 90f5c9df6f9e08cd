/** What can be asked of the sums that may be large, as plain data: the page answers what is small, a worker the rest. */
import { answerFit, type FitAnswer } from './fit.ts';
import type { WorkLimits } from './limits.ts';
import { answerOrders, randomOrder, type OrdersAnswer } from './orders/orders.ts';
import { easiestOrders, neighborOrders, rankOrders, type RankedOrders } from './orders/ranking.ts';
import type { OrderList } from './orders/related.ts';
import { answerResolve, type ResolveAnswer } from './resolve.ts';
import type { Inputs, SumProps } from './types.ts';

/** What each question is answered with. */
interface Answers {
  fit: FitAnswer;
  resolve: ResolveAnswer;
  orders: OrdersAnswer;
  /** The easiest and the hardest orders. */
  ranked: RankedOrders;
  /** The orders one swap away from the one shown. */
  neighbors: OrderList;
  /** The numbers of the easiest orders of the cells shown. */
  easiest: string[];
  /** The number of any one order. */
  random: bigint;
}

/** The name of a question. */
export type QuestionName = keyof Answers;

/** A question about what stands in the fields. */
export interface Question<Q extends QuestionName = QuestionName> {
  name: Q;
  inputs: Inputs;
  props: SumProps;
}

/** The answer to a question. */
export type AnswerTo<Q extends QuestionName> = Answers[Q];

const ANSWERS: { [Q in QuestionName]: (inputs: Inputs, props: SumProps, limits?: WorkLimits) => Answers[Q] } = {
  fit: answerFit,
  resolve: answerResolve,
  orders: answerOrders,
  ranked: rankOrders,
  neighbors: neighborOrders,
  easiest: easiestOrders,
  random: (inputs, props, limits) => randomOrder(inputs, props, Math.random, limits),
};

/** Answers a question; throws TooLarge where limits are given and it is beyond them. */
export const answerTo = <Q extends QuestionName>(
  { name, inputs, props }: Question<Q>,
  limits?: WorkLimits,
): Answers[Q] => ANSWERS[name](inputs, props, limits);
