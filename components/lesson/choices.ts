/** What a question offers to choose from. */
import type { CountSystem } from '../../src/core/index.ts';
import { answerIn, answerText, choiceIn, choicesFor, choicesOf, textIn } from '../../src/curriculum/index.ts';
import type { Answer, QuestionAttributes, QuestionBar } from '../../src/curriculum/index.ts';

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
