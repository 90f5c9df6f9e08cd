/** What a question offers to choose from, where its author left that to the page. */
import { countNames, sayCount } from '../../src/core/index.ts';
import { answerText, choicesOf } from '../../src/curriculum/index.ts';
import type { Answer, QuestionAttributes } from '../../src/curriculum/index.ts';

/** How many counts are offered. */
const COUNTS_OFFERED = 4;

/** The bar the counts are taken from. */
interface CountedBar {
  meter: string;
  grid: number;
}

/**
 * The answers to choose from, in an order that gives nothing away; none where the answer is to be typed.
 *
 * @example offered({ ask: 'Which hand?', from: 'hand-at' }, { kind: 'hand', hands: ['L'] }) // ['right', 'left', 'neither']
 */
export function offered(question: QuestionAttributes, answer: Answer, bar?: CountedBar): string[] {
  if (question.choices !== undefined) return choicesOf(question.choices);
  if (answer.kind === 'hand') return ['right', 'left', ...(answer.hands.length === 2 ? ['both'] : []), 'neither'];
  return answer.kind === 'count' && bar ? countsAround(answer, bar, question.ask.length) : [];
}

/** Neighbouring counts of the bar, the right one among them at a place that depends on the question alone. */
function countsAround(answer: Answer & { kind: 'count' }, bar: CountedBar, salt: number): string[] {
  const names = countNames(bar.meter, bar.grid);
  const first = names.indexOf(answer.count) - (salt % COUNTS_OFFERED);
  const from = Math.min(Math.max(first, 0), Math.max(names.length - COUNTS_OFFERED, 0));
  return names
    .slice(from, from + COUNTS_OFFERED)
    .map((count) => (count === answer.count ? answerText(answer) : sayCount(count)));
}
