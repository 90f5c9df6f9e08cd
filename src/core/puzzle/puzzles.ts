import { oneOf } from '../check.ts';
import type { Answer, Grade, PuzzleKindRecord } from './kind.ts';
import { record as ear } from './kinds/ear.ts';
import { record as fill } from './kinds/fill.ts';
import { record as fix } from './kinds/fix.ts';
import { record as missing } from './kinds/missing.ts';
import { record as resolves } from './kinds/resolves.ts';
import { record as start } from './kinds/start.ts';
import { record as which } from './kinds/which.ts';

/** Every kind of puzzle by its name in addresses, in the order they are listed. Importing this brings them all. */
export const PUZZLES = { fill, missing, start, fix, ear, resolves, which };

/** A kind of puzzle, as it stands in an address. */
export type PuzzleKind = keyof typeof PUZZLES;

/** A puzzle of a kind. */
export type PuzzleOf<K extends PuzzleKind> = ReturnType<(typeof PUZZLES)[K]['make']>;

/** A puzzle of any kind. */
export type Puzzle = PuzzleOf<PuzzleKind>;

/** The names of all kinds. */
export const PUZZLE_KINDS = Object.keys(PUZZLES) as [PuzzleKind, ...PuzzleKind[]];

const MAKERS: { [K in PuzzleKind]: { make: (seed: number) => PuzzleOf<K> } } = PUZZLES;
const RECORDS: Record<PuzzleKind, PuzzleKindRecord> = PUZZLES;

/**
 * The puzzle of a kind and a seed: always the same one, always with an answer. Throws RangeError for a kind or a seed that does
 * not exist.
 * @example
 * makePuzzle('resolves', 4182).bars // → 5
 */
export function makePuzzle<K extends PuzzleKind>(kind: K, seed: number): PuzzleOf<K> {
  oneOf('kind', kind, PUZZLE_KINDS);
  return MAKERS[kind].make(seed);
}

/**
 * Grades an answer by what the puzzle asks for. Throws RangeError for an answer of another kind of puzzle, and for a number
 * that cannot be chosen.
 * @example
 * gradePuzzle(makePuzzle('resolves', 4182), 3).right // → false
 */
export const gradePuzzle = (puzzle: Puzzle, answer: Answer): Grade => RECORDS[puzzle.kind].grade(puzzle, answer);

/**
 * A right answer, to be shown.
 * @example
 * solutionOf(makePuzzle('resolves', 4182)) // → 5
 */
export const solutionOf = (puzzle: Puzzle): Answer => RECORDS[puzzle.kind].solution(puzzle);
