/** What a question says to wrong answers. */
import { missesOf } from '../../src/curriculum/index.ts';
import type { Answer, MissReason, QuestionAttributes, QuestionBar, QuestionKind } from '../../src/curriculum/index.ts';
import { LOOK_AGAIN, MISS_SAYS, QUESTION_HINTS } from '../../src/words/index.ts';

const SAYS: Record<MissReason, string> = MISS_SAYS;
const KIND_SAYS: Record<QuestionKind, string> = QUESTION_HINTS;

/** The author's own hint, or what helps with that kind of question. */
export function hintOf({ hint, from }: QuestionAttributes): string {
  return hint ?? (from ? KIND_SAYS[from] : LOOK_AGAIN);
}

/** What is said to wrong answers that show what was thought; nothing where no bar knows the answer. */
export function missHints(question: QuestionAttributes, answer: Answer, bar?: QuestionBar): Record<string, string> {
  const misses = bar ? missesOf(question, bar, answer) : {};
  return Object.fromEntries(Object.entries(misses).map(([given, why]) => [given, SAYS[why]]));
}
