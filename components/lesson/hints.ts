/** What a question says to wrong answers. */
import { missesOf, plainAnswer } from '../../src/curriculum/index.ts';
import type { CountSystem } from '../../src/core/index.ts';
import type { Answer, MissReason, QuestionAttributes, QuestionBar, QuestionKind } from '../../src/curriculum/index.ts';
import { LOOK_AGAIN, MISS_SAYS, QUESTION_HINTS } from '../../src/words/lessons.ts';

const SAYS: Record<MissReason, string> = MISS_SAYS;
const KIND_SAYS: Record<QuestionKind, string> = QUESTION_HINTS;

/** The author's own hint, or what helps with that kind of question. */
export function hintOf({ hint, from }: QuestionAttributes): string {
  return hint ?? (from ? KIND_SAYS[from] : LOOK_AGAIN);
}

/**
 * What is said to wrong answers that show what was thought; nothing where no bar knows the answer. Where there are
 * choices, only those can be given.
 */
export function missHints(
  question: QuestionAttributes,
  answer: Answer,
  choices: readonly string[],
  bar?: QuestionBar,
  system?: CountSystem,
): Record<string, string> {
  const misses = bar ? Object.entries(missesOf(question, bar, answer, system)) : [];
  const given = choices.map(plainAnswer);
  const possible = misses.filter(([one]) => given.length === 0 || given.includes(one));
  return Object.fromEntries(possible.map(([one, why]) => [one, SAYS[why]]));
}
