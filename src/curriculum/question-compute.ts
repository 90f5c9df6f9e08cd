import type { Phrase, Timeline } from '../core/index.ts';
import type { AnswerResult } from './question-answers.ts';
import type { QuestionAttributes } from './vocabulary.ts';

/** The bar a question is about. */
export interface QuestionBar {
  phrase: Phrase;
  timeline: Timeline;
  /** Length in slots of the cell of that id, undefined where there is none. */
  cellSlots: (id: string) => number | undefined;
}

/** How an answer is computed from a question and its bar. */
export type Compute = (question: QuestionAttributes, bar: QuestionBar) => AnswerResult;
