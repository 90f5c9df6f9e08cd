/** What a question of a lesson asks, offers to choose from and says to wrong answers. */
import type { CountSystem, TimelineBar } from '../../src/core/index.ts';
import {
  answerIn,
  answerText,
  beatsApart,
  choiceIn,
  choicesFor,
  choicesOf,
  missesOf,
  plainAnswer,
  strangersIn,
  textIn,
} from '../../src/curriculum/index.ts';
import type { Answer, MissReason, QuestionAttributes, QuestionBar, QuestionKind } from '../../src/curriculum/index.ts';
import { countsApart, LOOK_AGAIN, MISS_SAYS, QUESTION_HINTS } from '../../src/words/lessons.ts';

const SAYS: Record<MissReason, string> = MISS_SAYS;
const KIND_SAYS: Record<QuestionKind, string> = QUESTION_HINTS;

/** How a question about some bars says an answer and a text, and what is to be added to what it says. */
export function inSyllables(bars: readonly TimelineBar[], system: CountSystem) {
  return {
    answer: (answer: Answer) => (bars.length > 0 ? answerIn(answer, bars, system) : answer),
    text: (text: string) => textIn(text, bars, system),
    /** That its text counts otherwise, where it still names a syllable by itself. */
    apart: (text: string) => countsApart(strangersIn(text, beatsApart(bars, system))),
  };
}

/**
 * The answers to choose from, the author's or those of the kind of question, in an order that gives nothing away, counts in the
 * syllables of a school; none where the answer is to be typed.
 *
 * @example offered({ ask: 'Which hand?', from: 'hand-at', at: '1' }, { kind: 'hand', hands: ['L'] }, bar) // ['right', 'left', 'neither']
 */
export function offered(
  question: QuestionAttributes,
  answer: Answer,
  bar?: QuestionBar,
  system?: CountSystem,
): string[] {
  if (question.choices !== undefined) return choicesIn(choicesOf(question.choices), answer, bar, system);
  if (!bar) return [];
  const choices = choicesFor(question, answer, bar, question.ask.length);
  return choices.map((choice) => answerText(system ? answerIn(choice, bar.timeline.bars, system) : choice));
}

/** What an author wrote to choose from; a number is a count only where a count is asked for. */
function choicesIn(choices: string[], answer: Answer, bar?: QuestionBar, system?: CountSystem): string[] {
  if (!bar || !system) return choices;
  const say = answer.kind === 'count' ? choiceIn : textIn;
  return choices.map((choice) => say(choice, bar.timeline.bars, system));
}

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
