/** What a question says to an answer: never more than a nudge until it is right. */

/** What kind of thing is asked for. */
export type AnswerKind = 'hand' | 'count' | 'number' | 'text';

const WHERE_TO_LOOK: Record<AnswerKind, string> = {
  hand: 'Put a finger on that count and read the letter above it.',
  count: 'Count along the ruler with a finger and stop where it happens.',
  number: 'Count it once more, aloud.',
  text: 'Have another look.',
};

/**
 * What is said to a right answer.
 *
 * @example rightSays('left') // 'Yes: left.'
 */
export function rightSays(answer: string): string {
  return `Yes: ${answer}.`;
}

/**
 * What is said to a wrong one, and where to look.
 *
 * @example wrongSays('number', '4', '5') // 'More than 4. Count it once more, aloud.'
 */
export function wrongSays(kind: AnswerKind, given: string, right: string): string {
  return `${notThat(kind, given, right)} ${WHERE_TO_LOOK[kind]}`;
}

function notThat(kind: AnswerKind, given: string, right: string): string {
  const [is, should] = [Number(given), Number(right)];
  if (kind === 'number' && Number.isFinite(is) && is !== should) return `${is < should ? 'More' : 'Fewer'} than ${is}.`;
  return `Not ${given}.`;
}

/** What is said to an empty field. */
export const NOTHING_GIVEN = 'Write a number or a word first.';
