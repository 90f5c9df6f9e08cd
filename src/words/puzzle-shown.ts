/** What is said where an answer is shown, and where an address leads nowhere. */
import type { Puzzle } from '../core/index.ts';
import { answerSays, type Saying } from './puzzle-sentences.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An answer that is shown, as a sentence. */
export const shownSays = (puzzle: Puzzle, answer: readonly string[] | number, saying: Saying): string =>
  `${capital(answerSays(puzzle, answer, saying))}.`;

/**
 * Why an address led to no puzzle, as a sentence.
 *
 * @example troubleSays('there is no version 9 of the puzzles, only 1') // 'There is no version 9 of the puzzles, only 1.'
 */
export const troubleSays = (why: string): string => `${capital(why)}.`;
