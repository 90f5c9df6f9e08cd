import type { SlotIndex } from '../time/units.ts';
import type { PuzzleCell } from './bank.ts';
import { answersTo, slotsIn, withFixed, withoutFixed, type CellsPuzzle } from './cells.ts';
import { gradeCells, type CellsWrong } from './grade-cells.ts';
import type { PuzzleKindRecord } from './kind.ts';

/** Help with placing cells, a little at a time: first the count, then what is left, then one cell. */
export type CellsHint =
  /** So many slots are filled; the next one is this. */
  | { hint: 'count'; filled: number; of: number; next: SlotIndex }
  /** So many are left; these cells of the shelf are short enough. */
  | { hint: 'left'; left: number; fitting: string[] }
  /** What comes next in one right answer. */
  | { hint: 'cell'; cell: string }
  /** No right answer begins like this; with so many of the last cells removed one does. */
  | { hint: 'back'; cells: number }
  /** Nothing more to say: it is right. */
  | { hint: 'done' };

/**
 * The next hint for what is placed so far: `step` 0 says the count, 1 what is left, 2 and above one cell. Where no right
 * answer begins like this, every step from 1 on says how many cells to remove.
 */
export function cellsHint(puzzle: CellsPuzzle, placed: readonly string[], step: number): CellsHint {
  if (gradeCells(puzzle, placed).right) return { hint: 'done' };
  const filled = slotsIn(cellsOf(puzzle, placed));
  if (step <= 0 && filled < puzzle.gap)
    return { hint: 'count', filled, of: puzzle.gap, next: slotsIn(puzzle.before) + filled };
  const beginning = answersBeginning(puzzle);
  const kept = longestGoodStart(beginning, placed);
  if (kept < placed.length) return { hint: 'back', cells: placed.length - kept };
  const left = puzzle.gap - filled;
  if (step <= 1)
    return { hint: 'left', left, fitting: puzzle.shelf.filter((c) => c.slots <= left).map(({ id }) => id) };
  return { hint: 'cell', cell: beginning(placed)![placed.length] };
}

function cellsOf({ shelf }: CellsPuzzle, ids: readonly string[]): PuzzleCell[] {
  return ids.flatMap((id) => shelf.find((cell) => cell.id === id) ?? []);
}

/** How many of the cells, from the first on, some right answer begins with. */
function longestGoodStart(beginning: Beginning, placed: readonly string[]): number {
  for (let length = placed.length; length > 0; length -= 1) if (beginning(placed.slice(0, length))) return length;
  return 0;
}

type Beginning = (placed: readonly string[]) => string[] | undefined;

/** A right answer that begins with these cells, the first in the order of the shelf; nothing where there is none. */
export const completion = (puzzle: CellsPuzzle, placed: readonly string[]): string[] | undefined =>
  answersBeginning(puzzle)(placed);

/** Counts a puzzle's answers once, for any number of beginnings. */
function answersBeginning(puzzle: CellsPuzzle): Beginning {
  if (puzzle.heard) return (placed) => (startsLike(puzzle.solution, placed) ? puzzle.solution : undefined);
  const answers = answersTo(puzzle);
  return (placed) => {
    const places = placed.map((id) => puzzle.shelf.findIndex((cell) => cell.id === id));
    // Answers come in the order of the shelf, so those that begin alike stand together: halve until the first is found.
    let [low, high] = [0n, answers.count];
    while (low < high) {
      const middle = (low + high) / 2n;
      if (isBefore(withoutFixed(answers.at(middle)), places, puzzle)) low = middle + 1n;
      else high = middle;
    }
    const found = low < answers.count ? withoutFixed(answers.at(low)) : undefined;
    return found && startsLike(found, placed) ? found : undefined;
  };
}

const startsLike = (answer: readonly string[], placed: readonly string[]): boolean =>
  placed.every((id, i) => id === answer[i]);

/** Whether an answer comes before all that begin with the cells at these places of the shelf. */
function isBefore(answer: readonly string[], places: readonly number[], { shelf }: CellsPuzzle): boolean {
  for (const [i, place] of places.entries()) {
    const own = shelf.findIndex((cell) => cell.id === answer[i]);
    if (own !== place) return own < place;
  }
  return false;
}

/**
 * Another right answer than this one, from the other half of all there are; nothing where it is the only one, or none. By
 * ear there is one alone.
 */
export function anotherAnswer(puzzle: CellsPuzzle, ids: readonly string[]): string[] | undefined {
  if (puzzle.heard) return undefined;
  const answers = answersTo(puzzle);
  const own = answers.indexOf(withFixed(puzzle, ids));
  if (own < 0n || answers.count < 2n) return undefined;
  return withoutFixed(answers.at((own + answers.count / 2n) % answers.count));
}

/** What every kind that is answered by cells has besides its maker: its record takes this in. */
export const BY_CELLS = {
  unanswered: [],
  grade: gradeCells,
  solution: ({ solution }) => solution,
  hint: cellsHint,
  another: anotherAnswer,
} satisfies Omit<PuzzleKindRecord<CellsPuzzle, readonly string[], CellsWrong, CellsHint>, 'number' | 'make'>;
