import type { SlotIndex } from '../time/units.ts';
import type { PuzzleCell } from './bank.ts';
import { gradeLaid } from './grade-lay.ts';
import { answersTo, laidOnly, slotsIn, wholeOf } from './lay.ts';
import type { LayPuzzle } from './types.ts';

/** Help with cells to be laid, a little at a time: first the count, then what is left, then one cell. */
export type LayHint =
  /** So many slots are filled; the next one is this. */
  | { hint: 'count'; filled: number; of: number; next: SlotIndex }
  /** So many are left; these cells of the shelf are short enough. */
  | { hint: 'left'; left: number; fitting: string[] }
  /** What comes next in one right answer. */
  | { hint: 'cell'; cell: string }
  /** No right answer begins like this; with so many cells taken back one does. */
  | { hint: 'back'; cells: number }
  /** Nothing more to say: it is right. */
  | { hint: 'done' };

/**
 * The next hint for what is laid so far: `step` 0 says the count, 1 what is left, 2 and above one cell. Where no right
 * answer begins like this, every step from 1 on says how many cells to take back.
 */
export function hintFor(puzzle: LayPuzzle, laid: readonly string[], step: number): LayHint {
  if (gradeLaid(puzzle, laid).right) return { hint: 'done' };
  const filled = slotsIn(cellsOf(puzzle, laid));
  if (step <= 0 && filled < puzzle.gap)
    return { hint: 'count', filled, of: puzzle.gap, next: slotsIn(puzzle.before) + filled };
  const beginning = answersBeginning(puzzle);
  const kept = longestGoodStart(beginning, laid);
  if (kept < laid.length) return { hint: 'back', cells: laid.length - kept };
  const left = puzzle.gap - filled;
  if (step <= 1)
    return { hint: 'left', left, fitting: puzzle.shelf.filter((c) => c.slots <= left).map(({ id }) => id) };
  return { hint: 'cell', cell: beginning(laid)![laid.length] };
}

function cellsOf({ shelf }: LayPuzzle, ids: readonly string[]): PuzzleCell[] {
  return ids.flatMap((id) => shelf.find((cell) => cell.id === id) ?? []);
}

/** How many of the cells, from the first on, some right answer begins with. */
function longestGoodStart(beginning: Beginning, laid: readonly string[]): number {
  for (let length = laid.length; length > 0; length -= 1) if (beginning(laid.slice(0, length))) return length;
  return 0;
}

type Beginning = (laid: readonly string[]) => string[] | undefined;

/** A right answer that begins with these cells, the first in the order of the shelf; nothing where there is none. */
export const completion = (puzzle: LayPuzzle, laid: readonly string[]): string[] | undefined =>
  answersBeginning(puzzle)(laid);

/** Counts a puzzle's answers once, for any number of beginnings. */
function answersBeginning(puzzle: LayPuzzle): Beginning {
  if (puzzle.heard) return (laid) => (startsLike(puzzle.solution, laid) ? puzzle.solution : undefined);
  const answers = answersTo(puzzle);
  return (laid) => {
    const places = laid.map((id) => puzzle.shelf.findIndex((cell) => cell.id === id));
    // Answers come in the order of the shelf, so those that begin alike stand together: halve until the first is found.
    let [low, high] = [0n, answers.count];
    while (low < high) {
      const middle = (low + high) / 2n;
      if (isBefore(laidOnly(answers.at(middle)), places, puzzle)) low = middle + 1n;
      else high = middle;
    }
    const found = low < answers.count ? laidOnly(answers.at(low)) : undefined;
    return found && startsLike(found, laid) ? found : undefined;
  };
}

const startsLike = (answer: readonly string[], laid: readonly string[]): boolean =>
  laid.every((id, i) => id === answer[i]);

/** Whether an answer comes before all that begin with the cells at these places of the shelf. */
function isBefore(answer: readonly string[], places: readonly number[], { shelf }: LayPuzzle): boolean {
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
export function otherAnswer(puzzle: LayPuzzle, ids: readonly string[]): string[] | undefined {
  if (puzzle.heard) return undefined;
  const answers = answersTo(puzzle);
  const own = answers.indexOf(wholeOf(puzzle, ids));
  if (own < 0n || answers.count < 2n) return undefined;
  return laidOnly(answers.at((own + answers.count / 2n) % answers.count));
}
