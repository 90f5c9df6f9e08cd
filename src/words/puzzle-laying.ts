/** What is said while cells are laid: how far the bar is, what stands where. */
import { slotsIn, type LayPuzzle, type PuzzleCell } from '../core/index.ts';
import { sayBar } from './labels.ts';
import { partOf, placeSays, slotsSay, type Saying } from './puzzle-sentences.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The slot at which the next cell would start. */
const nextSlot = ({ before }: LayPuzzle, laid: readonly PuzzleCell[]): number => slotsIn(before) + slotsIn(laid);

/** Over the dashed bracket: how many slots are left, and from where. */
export function leftSays(puzzle: LayPuzzle, laid: readonly PuzzleCell[]): string {
  const left = puzzle.gap - slotsIn(laid);
  return left > 0 ? `${left} left, from ${placeSays(puzzle, nextSlot(puzzle, laid))}` : '';
}

/** How far the bar is, for eye and ear. */
export function progressSays(puzzle: LayPuzzle, laid: readonly PuzzleCell[]): string {
  const filled = slotsIn(laid);
  const left = puzzle.gap - filled;
  if (left < 0) return `${capital(slotsSay(puzzle, -left))} too many.`;
  if (left === 0) return puzzle.kind === 'missing' ? 'The hole is filled.' : sayBar('The bar is full.');
  const place = placeSays(puzzle, nextSlot(puzzle, laid));
  const laidSo = filled ? `${capital(partOf(filled, puzzle.gap))}. The next` : 'Nothing laid yet. Your first';
  return `${laidSo} cell starts on ${place}; ${slotsSay(puzzle, left)} to go.`;
}

/** A laid cell: what it is and where it starts. */
export function laidSays(puzzle: LayPuzzle, laid: readonly PuzzleCell[], index: number, saying: Saying): string {
  const slot = nextSlot(puzzle, laid.slice(0, index));
  const cell = laid[index];
  const name = cell ? saying.nameOf(cell.id) : '';
  return slot < puzzle.slots ? `${name}, from ${placeSays(puzzle, slot)}` : name;
}

/** The whole ruler in words. */
export function rulerSays(puzzle: LayPuzzle, laid: readonly PuzzleCell[], saying: Saying): string {
  const fixed = (cells: readonly PuzzleCell[]): string => cells.map(({ id }) => saying.nameOf(id)).join(', ');
  const own = laid.map((_, index) => laidSays(puzzle, laid, index, saying)).join('; ');
  const parts = [
    sayBar(`The bar of ${puzzle.meter} as a ruler`),
    puzzle.before.length ? `given at its beginning: ${fixed(puzzle.before)}` : '',
    own || 'nothing laid yet',
    leftSays(puzzle, laid),
    puzzle.after.length ? `given at its end: ${fixed(puzzle.after)}` : '',
  ];
  return `${parts.filter(Boolean).join('. ')}.`;
}
