/** What a question offers to choose from, where its author left that to the page. */
import { countNames, saySlot, type CountSystem, type Timeline } from '../../src/core/index.ts';
import { answerIn, answerText, barOfCount, choiceIn, choicesOf, textIn } from '../../src/curriculum/index.ts';
import type { Answer, QuestionAttributes } from '../../src/curriculum/index.ts';

/** How many counts are offered. */
const COUNTS_OFFERED = 4;

/** The most surfaces that are offered; of more than these the answer is typed. */
const SURFACES_OFFERED = 6;

const MOTIONS = ['full', 'down', 'tap', 'up'] as const;
const STROKES = ['single', 'flam', 'diddle', 'foot', 'nothing'] as const;

/**
 * The answers to choose from, in an order that gives nothing away, counts in the syllables of a school; none where the
 * answer is to be typed.
 *
 * @example offered({ ask: 'Which hand?', from: 'hand-at' }, { kind: 'hand', hands: ['L'] }) // ['right', 'left', 'neither']
 */
export function offered(
  question: QuestionAttributes,
  answer: Answer,
  timeline?: Timeline,
  system?: CountSystem,
): string[] {
  if (question.choices !== undefined) return choicesIn(choicesOf(question.choices), answer, timeline, system);
  if (answer.kind === 'hand') return handsOffered(question, answer);
  if (answer.kind === 'motion') return MOTIONS.map((motion) => answerText({ kind: 'motion', motion }));
  if (answer.kind === 'stroke')
    return [...new Set([...STROKES, answer.stroke])].map((stroke) => answerText({ kind: 'stroke', stroke }));
  if (answer.kind === 'place') return [1, 2, 3].map((place) => answerText({ kind: 'place', place }));
  if (!timeline) return [];
  if (answer.kind === 'surface') return surfacesOf(timeline);
  return answer.kind === 'count' ? countsAround(answer, timeline, question.ask.length, system) : [];
}

/** What an author wrote to choose from; a number is a count only where a count is asked for. */
function choicesIn(choices: string[], answer: Answer, timeline?: Timeline, system?: CountSystem): string[] {
  if (!timeline || !system) return choices;
  const say = answer.kind === 'count' ? choiceIn : textIn;
  return choices.map((choice) => say(choice, timeline.bars, system));
}

function handsOffered({ from }: QuestionAttributes, { hands }: Answer & { kind: 'hand' }): string[] {
  return ['right', 'left', ...(hands.length === 2 ? ['both'] : []), ...(from === 'hand-at' ? ['neither'] : [])];
}

/** All that is struck in the bar. */
function surfacesOf({ strokes }: Timeline): string[] {
  const surfaces = [...new Set(strokes.map(({ surface }) => surface))].toSorted();
  return surfaces.length < 2 || surfaces.length > SURFACES_OFFERED
    ? []
    : surfaces.map((surface) => answerText({ kind: 'surface', surface }));
}

/** Neighbouring counts of the bar, the right one among them at a place that depends on the question alone. */
function countsAround(
  answer: Answer & { kind: 'count' },
  { bars }: Timeline,
  salt: number,
  system?: CountSystem,
): string[] {
  const { meter, grid } = barOfCount(answer, bars);
  const names = countNames(meter, grid);
  const first = names.indexOf(answer.count) - (salt % COUNTS_OFFERED);
  const from = Math.min(Math.max(first, 0), Math.max(names.length - COUNTS_OFFERED, 0));
  const right = answerText(system ? answerIn(answer, bars, system) : answer);
  return names
    .slice(from, from + COUNTS_OFFERED)
    .map((count, at) => (count === answer.count ? right : saySlot(meter, grid, from + at, system)));
}
