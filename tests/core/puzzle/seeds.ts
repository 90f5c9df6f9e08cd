import { makePuzzle, type Puzzle, type PuzzleKind, type PuzzleOf } from '../../../src/core/index.ts';

/** How many numbers are tried of each kind. */
export const SEEDS = process.env.LONG ? 10_000 : 200;

const made = new Map<string, Puzzle>();

/** The puzzles 1, 2, 3 … of a kind; each is made once for all checks of a file. */
export function* everyPuzzle<K extends PuzzleKind>(kind: K, upTo = SEEDS): Generator<PuzzleOf<K>> {
  for (let seed = 1; seed <= upTo; seed += 1) {
    const key = `${kind} ${seed}`;
    const puzzle = (made.get(key) as PuzzleOf<K> | undefined) ?? makePuzzle(kind, seed);
    made.set(key, puzzle);
    yield puzzle;
  }
}

/** What went wrong, as one list: thousands of expectations are slow. */
export function faultsOf<K extends PuzzleKind>(kind: K, check: (puzzle: PuzzleOf<K>) => string | undefined): string[] {
  const faults: string[] = [];
  for (const puzzle of everyPuzzle(kind)) {
    const fault = check(puzzle);
    if (fault) faults.push(`${kind} ${puzzle.seed}: ${fault}`);
  }
  return faults;
}
