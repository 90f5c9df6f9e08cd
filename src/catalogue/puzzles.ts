import {
  BANK,
  makePuzzle,
  PUZZLE_KINDS,
  solutionOf,
  type Answer,
  type Puzzle,
  type PuzzleKind,
} from '../core/index.ts';
import { getNamedCells } from './collections.ts';

/** The kinds of puzzle, in the order they are listed. */
export const getPuzzleKinds = (): readonly PuzzleKind[] => PUZZLE_KINDS;

/** A puzzle with an answer, for readers without script. */
export function getPuzzle(kind: PuzzleKind, seed: number): { puzzle: Puzzle; answer: Answer } {
  const puzzle = makePuzzle(kind, seed);
  return { puzzle, answer: solutionOf(puzzle) };
}

/** Names of the cells that puzzles are made of, as the school says them; a cell that a school has removed keeps its id. */
export async function bankNames(): Promise<Record<string, string>> {
  const cells = await getNamedCells();
  return Object.fromEntries(BANK.map(({ id }) => [id, cells.get(id)?.name ?? id.replaceAll('-', ' ')]));
}
