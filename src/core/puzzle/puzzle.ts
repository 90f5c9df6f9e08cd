import { must, oneOf } from '../check.ts';
import type { PuzzleKind } from './address.ts';
import { makeEar } from './ear.ts';
import { makeFill } from './fill.ts';
import { gradeFix, makeFix } from './fix.ts';
import { gradeLaid } from './grade-lay.ts';
import { makeMissing } from './missing.ts';
import { gradeResolves, makeResolves } from './resolves.ts';
import { gradeStart, makeStart } from './start.ts';
import type { Grade, Puzzle } from './types.ts';
import { gradeWhich, makeWhich } from './which.ts';

const MAKERS: { [K in PuzzleKind]: (seed: number) => Puzzle & { kind: K } } = {
  fill: (seed) => ({ ...makeFill(seed), kind: 'fill' }),
  missing: (seed) => ({ ...makeMissing(seed), kind: 'missing' }),
  ear: (seed) => ({ ...makeEar(seed), kind: 'ear' }),
  start: makeStart,
  fix: makeFix,
  resolves: makeResolves,
  which: makeWhich,
};

/**
 * The puzzle of a kind and a number: always the same one, always with an answer. Throws RangeError for a kind or a number
 * that does not exist.
 * @example
 * makePuzzle('resolves', 4182).bars // → 5
 */
export function makePuzzle<K extends PuzzleKind>(kind: K, seed: number): Puzzle & { kind: K } {
  oneOf('kind', kind, Object.keys(MAKERS));
  return MAKERS[kind](seed);
}

/** What an answer looks like: ids of cells that were laid, or one number (slot, bars, 1 or 2). */
export type Answer = readonly string[] | number;

/**
 * Grades an answer by what the puzzle asks for. Throws RangeError for an answer of another kind of puzzle, and for a number
 * that cannot be chosen.
 * @example
 * gradePuzzle(makePuzzle('resolves', 4182), 3).right // → false
 */
export function gradePuzzle(puzzle: Puzzle, answer: Answer): Grade {
  if ('shelf' in puzzle) {
    must(Array.isArray(answer), 'answer', answer, `the ids of cells, as a puzzle of kind "${puzzle.kind}" takes them`);
    return gradeLaid(puzzle, answer);
  }
  must(typeof answer === 'number', 'answer', answer, `a number, as a puzzle of kind "${puzzle.kind}" takes it`);
  switch (puzzle.kind) {
    case 'start':
      return gradeStart(puzzle, answer);
    case 'fix':
      return gradeFix(puzzle, answer);
    case 'resolves':
      return gradeResolves(puzzle, answer);
    case 'which':
      return gradeWhich(puzzle, answer);
  }
}

/** A right answer, to be shown. */
export function solutionOf(puzzle: Puzzle): Answer {
  switch (puzzle.kind) {
    case 'start':
      return puzzle.starts[puzzle.ask].slot;
    case 'fix':
      return puzzle.answers[0];
    case 'resolves':
      return puzzle.bars;
    case 'which':
      return puzzle.answer;
    default:
      return puzzle.solution;
  }
}
