import { perform } from '../../src/core/index.ts';
import { answerOf, answerText, type QuestionAttributes, type QuestionBar } from '../../src/curriculum/index.ts';
import { phraseOf } from './phrases.ts';

/** Cells that questions of tests can name, by length. */
const CELLS: Record<string, number> = { 'flam-drag': 3, five: 5, 'four-singles': 4, kick: 1 };

/** A bar for a question: one text, or texts by the ids of their cells. */
export function questionBar(what: string | [string, string][], meter = '4/4', grid = 4): QuestionBar {
  const cells = typeof what === 'string' ? what : what.map(([id, text]) => ({ id, text }));
  const phrase = phraseOf(cells, { meter, grid });
  return { phrase, timeline: perform(phrase), cellSlots: (id) => CELLS[id] };
}

/** The answer as it is shown, or why there is none. */
export function answerTo(
  from: QuestionAttributes['from'],
  more: Partial<QuestionAttributes>,
  about: QuestionBar,
): string {
  const found = answerOf({ ask: '?', from, ...more }, about);
  return found.ok ? answerText(found.answer) : found.message;
}
