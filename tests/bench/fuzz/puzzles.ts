import {
  gradePuzzle,
  makePuzzle,
  MAX_SEED,
  PUZZLE_KINDS,
  solutionOf,
  type Answer,
  type Puzzle,
} from '../../../src/core/index.ts';
import { plainFillings, plainRight } from '../../core/puzzle/solver.ts';
import { attackOf, between, pick } from './attack.ts';

type Random = () => number;

/** A puzzle with more ways to fill it than this is graded by some of them. */
const MOST_FILLINGS = 300;
const OTHERS = 12;

/** Any puzzle, each graded by core and by a solver of its own that reads nothing but the letters. */
export const puzzles = attackOf('puzzles', { short: 150, long: 10_000 }, (random, about) => {
  const kind = pick(random, PUZZLE_KINDS);
  const seed = between(random, 1, MAX_SEED);
  about(`${kind} ${seed}`);
  const puzzle: Puzzle = makePuzzle(kind, seed);
  const solution = solutionOf(puzzle);
  if (!plainRight(puzzle, solution)) return `its own solution ${solution} is wrong`;
  const every = everyAnswer(puzzle);
  const answers = every ?? [solution, ...Array.from({ length: OTHERS }, () => someAnswer(puzzle, solution, random))];
  const differs = answers.find((answer) => gradePuzzle(puzzle, answer).right !== plainRight(puzzle, answer));
  if (differs !== undefined) return `${differs} is graded ${gradePuzzle(puzzle, differs).right}`;
  const right = BigInt(answers.filter((answer) => plainRight(puzzle, answer)).length);
  return every && right !== puzzle.difficulty.answers
    ? `${right} answers, not ${puzzle.difficulty.answers}`
    : undefined;
});

/** All answers that can be given; undefined where they are too many. */
function everyAnswer(puzzle: Puzzle): Answer[] | undefined {
  if ('shelf' in puzzle) return plainFillings(puzzle, MOST_FILLINGS);
  if (puzzle.kind === 'which') return [1, 2];
  if (puzzle.kind === 'resolves') return Array.from({ length: 3 * puzzle.bars }, (_, i) => i + 1);
  return Array.from({ length: puzzle.barSlots }, (_, slot) => slot);
}

/** An answer by cells near a right one: some exchanged, left out, doubled or in another order. */
function someAnswer(puzzle: Puzzle, solution: Answer, random: Random): Answer {
  if (!('shelf' in puzzle)) return solution;
  const ids = [...(solution as readonly string[])];
  for (let changes = between(random, 1, 3); changes > 0; changes -= 1) {
    const [at, to] = [between(random, 0, ids.length - 1), between(random, 0, ids.length - 1)];
    const way = between(random, 0, 3);
    if (way === 0) ids.splice(at, 1);
    else if (way === 1) ids.splice(at, 0, pick(random, puzzle.shelf).id);
    else if (way === 2 && ids.length) ids[at] = pick(random, puzzle.shelf).id;
    else if (ids.length) ids.splice(to, 0, ...ids.splice(at, 1));
  }
  return ids;
}
