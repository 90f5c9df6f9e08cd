import type { CountSystem } from '../../core/index.ts';
import { answerIn } from '../syllables.ts';
import { answersTaken, no, number, type Answer, type AnswerResult, type MissReason } from './answers.ts';
import type { Question, QuestionAttribute, QuestionBar, QuestionRecord } from './place.ts';
import { COUNT_KINDS } from './count-kinds.ts';
import { STROKE_KINDS } from './stroke-kinds.ts';

/** Every kind of question, in the order of the documentation. */
export const QUESTIONS = { ...STROKE_KINDS, ...COUNT_KINDS };

/** What a question may ask a bar. */
export type QuestionKind = keyof typeof QUESTIONS;

/** The names of all kinds. */
export const QUESTION_KINDS = Object.keys(QUESTIONS) as [QuestionKind, ...QuestionKind[]];

const RECORDS: Record<QuestionKind, QuestionRecord> = QUESTIONS;

/** A question as a lesson asks it: of a kind (`from`), or with its answer given. */
export interface AnyQuestion extends Question {
  from?: QuestionKind | undefined;
  answer?: string | number | undefined;
}

/**
 * The answer of a question, computed from its bar or taken from `answer`.
 *
 * @example `answerOf({ from: 'slots-left', cell: 'flam-drag' }, bar)` is the number 1 for a bar of 16
 */
export function answerOf(question: AnyQuestion, bar?: QuestionBar): AnswerResult {
  if (question.from === undefined) return given(question.answer ?? '');
  const wrong = misfit(question, question.from);
  if (wrong) return wrong;
  if (!bar)
    return no('from', 'there is no bar to compute it from: put a Bar before the question, or name one with bar="…"');
  return RECORDS[question.from].answer(question, bar);
}

function given(answer: string | number): AnswerResult {
  return typeof answer === 'number' ? number(answer) : { ok: true, answer: { kind: 'text', text: answer } };
}

/** The attributes that belong to a kind of question and to no other. */
const EXACT: readonly QuestionAttribute[] = ['at', 'of', 'cell', 'in', 'over', 'loop'];

function misfit(question: Question, from: QuestionKind): AnswerResult | undefined {
  const { needs, may } = RECORDS[from];
  const missing = needs.find((name) => question[name] === undefined);
  if (missing) return no('from', `from="${from}" needs ${missing}="…" beside it`);
  const extra = EXACT.find((name) => question[name] !== undefined && !needs.includes(name) && !may.includes(name));
  return extra ? no(extra, `${extra} says nothing beside from="${from}"`) : undefined;
}

/**
 * What there is to choose from, the right answer among it; none where it is to be typed.
 *
 * @example `choicesFor({ from: 'hand-at', at: '1' }, left, bar, 0)` are the right hand, the left and neither
 */
export const choicesFor = ({ from }: AnyQuestion, right: Answer, bar: QuestionBar, salt: number): Answer[] =>
  (from && RECORDS[from].choices?.(right, bar, salt)) ?? [];

/**
 * The wrong answers to a computed question that show what was thought, by every way to give them; counts are said in the
 * syllables of `system`.
 *
 * @example `missesOf({ from: 'strokes', of: 'left' }, flamDrags, twelve)` maps '8' to 'graces-left-out'
 */
export function missesOf(
  question: AnyQuestion,
  bar: QuestionBar,
  right: Answer,
  system?: CountSystem,
): Record<string, MissReason> {
  const said = (answer: Answer) => answersTaken(system ? answerIn(answer, bar.timeline.bars, system) : answer);
  const found = (question.from && RECORDS[question.from].misses?.(question, bar, right)) ?? [];
  const taken = said(right);
  const ways = found
    .filter((miss) => miss !== undefined)
    .flatMap(({ answer, why }) => said(answer).map((way) => [way, why] as const));
  // The first reason for an answer stands, and none for the right one.
  return Object.fromEntries(ways.toReversed().filter(([way]) => !taken.includes(way)));
}
