import { no, number, type AnswerResult } from './question-answers.ts';
import {
  barSeconds,
  barsHome,
  cellsFit,
  cellsHome,
  cellSlots,
  cellStart,
  countAfter,
  longerGaps,
  orders,
  placeAt,
  slotCount,
  slotName,
  slotsLeft,
} from './question-cells.ts';
import {
  gap,
  graceAt,
  handAt,
  kindAt,
  longestRun,
  motionAt,
  nextCount,
  restsAfter,
  strokeCount,
  surfaceAt,
} from './question-hands.ts';
import type { Compute, QuestionBar } from './question-compute.ts';
import { QUESTION_RULES, type QuestionKind } from './question-kinds.ts';
import type { QuestionAttributes } from './vocabulary.ts';

export { answersTaken, answerText, type Answer, type AnswerResult } from './question-answers.ts';
export type { QuestionBar } from './question-compute.ts';

const COMPUTE: Record<QuestionKind, Compute> = {
  'hand-at': handAt,
  'grace-at': graceAt,
  'motion-at': motionAt,
  'kind-at': kindAt,
  'surface-at': surfaceAt,
  'place-at': placeAt,
  'cell-start': cellStart,
  'slot-name': slotName,
  'count-after': countAfter,
  next: nextCount,
  gap,
  'rests-after': restsAfter,
  strokes: strokeCount,
  'longest-run': longestRun,
  slots: slotCount,
  'bar-seconds': barSeconds,
  'cell-slots': cellSlots,
  'cells-fit': cellsFit,
  'slots-left': slotsLeft,
  'bars-home': barsHome,
  'cells-home': cellsHome,
  'longer-gaps': longerGaps,
  orders,
};

/**
 * The answer of a question, computed from its bar or taken from `answer`.
 *
 * @example `answerOf({ ask: '…', from: 'slots-left', cell: 'flam-drag' }, bar)` is the number 1 for a bar of 16
 */
export function answerOf(question: QuestionAttributes, bar?: QuestionBar): AnswerResult {
  if (question.from === undefined) return given(question.answer ?? '');
  const wrong = misfit(question, question.from);
  if (wrong) return wrong;
  if (!bar)
    return no('from', 'there is no bar to compute it from: put a Bar before the question, or name one with bar="…"');
  return COMPUTE[question.from](question, bar);
}

function given(answer: string | number): AnswerResult {
  return typeof answer === 'number' ? number(answer) : { ok: true, answer: { kind: 'text', text: answer } };
}

/** The attributes that belong to a kind of question and to no other. */
const EXACT = ['at', 'of', 'cell', 'in', 'over', 'loop'] as const;

function misfit(question: QuestionAttributes, from: QuestionKind): AnswerResult | undefined {
  const { needs, may }: { needs: readonly string[]; may: readonly string[] } = QUESTION_RULES[from];
  const has = (name: string) => question[name as keyof QuestionAttributes] !== undefined;
  const missing = needs.find((name) => !has(name));
  if (missing) return no('from', `from="${from}" needs ${missing}="…" beside it`);
  const extra = EXACT.find((name) => has(name) && !needs.includes(name) && !may.includes(name));
  return extra ? no(extra, `${extra} says nothing beside from="${from}"`) : undefined;
}
