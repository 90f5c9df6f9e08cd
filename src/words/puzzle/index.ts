/** What is said of every kind of puzzle. Importing this brings them all; a page of one kind imports that kind's file. */
import type { Answer, Puzzle, PuzzleKind, PUZZLES } from '../../core/index.ts';
import { words as ear } from './ear.ts';
import { words as fill } from './fill.ts';
import { words as fix } from './fix.ts';
import { words as missing } from './missing.ts';
import { words as resolves } from './resolves.ts';
import type { Card, NameOf, PuzzleWords, WordsFor } from './say.ts';
import { words as start } from './start.ts';
import { words as which } from './which.ts';

/** The words of every kind. */
export const PUZZLE_WORDS: { [K in PuzzleKind]: WordsFor<(typeof PUZZLES)[K]> } = {
  fill,
  missing,
  start,
  fix,
  ear,
  resolves,
  which,
};

const ANY: Record<PuzzleKind, PuzzleWords<Puzzle, Answer, { wrong: string }, { hint: string }>> = PUZZLE_WORDS;

/** The card of a puzzle. */
export const cardSays = (puzzle: Puzzle, nameOf: NameOf): Card => ANY[puzzle.kind].card(puzzle, nameOf);

/** An answer in words: the cells by name, or the count, the bars, the one of two. */
export const answerSays = (puzzle: Puzzle, answer: Answer, nameOf: NameOf): string =>
  ANY[puzzle.kind].answer(puzzle, answer, nameOf);
