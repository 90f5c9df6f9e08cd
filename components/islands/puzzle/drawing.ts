/** Puzzles as rulers, and as something to hear. */
import {
  barOfTime,
  countSyllables,
  perform,
  performCells,
  readPhrase,
  slotsIn,
  stickingOf,
  type Heard,
  type LayPuzzle,
  type Puzzle,
  type PuzzleCell,
  type StartPuzzle,
  type Timeline,
} from '../../../src/core/index.ts';
import type { RulerCell, RulerDrawing, RulerKind } from '../../../src/bar-math/ruler.ts';
import { marksOf } from '../../../src/bar-math/marks.ts';
import { COUNTING } from '../../../src/words/site.ts';

/** A name by the id of a cell. */
export type NameOf = (cell: string) => string;

/** Cells under their brackets. */
export const cellsDrawn = (cells: readonly PuzzleCell[], nameOf: NameOf, kind: RulerKind = 'cell'): RulerCell[] =>
  cells.map((cell) => ({ slots: cell.slots, kind, name: nameOf(cell.id), marks: marksOf(stickingOf([cell])) }));

/** The ruler of a puzzle with nothing on it. */
export function emptyRuler(puzzle: Puzzle): RulerDrawing {
  const { meter, grid, slots, barSlots } = puzzle;
  return {
    counts: countSyllables(meter, grid, COUNTING),
    grid,
    bars: puzzle.kind === 'resolves' ? 1 : slots / barSlots,
  };
}

/** What is laid, between what is fixed; what is left is dashed, with its words. */
export function layRuler(
  puzzle: LayPuzzle,
  laid: readonly PuzzleCell[],
  says: { nameOf: NameOf; left: string },
): RulerDrawing {
  const left = puzzle.gap - slotsIn(laid);
  return {
    ...emptyRuler(puzzle),
    cells: [
      ...cellsDrawn(puzzle.before, says.nameOf, 'given'),
      ...cellsDrawn(laid, says.nameOf),
      ...(left > 0 ? [{ slots: left, kind: 'left', name: says.left, short: String(left) } as const] : []),
      ...cellsDrawn(puzzle.after, says.nameOf, 'given'),
    ],
  };
}

/** Strokes without cells, as they stand in the bar. */
export const strokesDrawn = (strokes: readonly string[]): RulerCell[] =>
  strokes.map((text) => ({ slots: 1, kind: 'bare', marks: marksOf(stickingOf([{ id: text, text, slots: 1 }])) }));

/** The cells of a bar that is asked about, once it has been answered. */
export function startRuler(puzzle: StartPuzzle, nameOf: NameOf): RulerDrawing {
  const { pickup, barSlots, slots } = puzzle;
  const empty = emptyRuler(puzzle);
  const cells = cellsDrawn(puzzle.cells, nameOf, 'given');
  cells[puzzle.ask] = { ...cells[puzzle.ask], kind: 'cell' };
  if (!pickup) return { ...empty, cells };
  // What starts early stands at the end of a bar before the first.
  return { ...empty, bars: slots / barSlots + 1, cells: [{ slots: barSlots - pickup, kind: 'bare' }, ...cells] };
}

/** So many bars of one cell over and over. */
export function roundsRuler(puzzle: Puzzle & { kind: 'resolves' }, nameOf: NameOf): RulerDrawing {
  const cells = Array.from({ length: puzzle.cells }, () => puzzle.cell);
  return { ...emptyRuler(puzzle), bars: puzzle.bars, cells: cellsDrawn(cells, nameOf) };
}

/** What is fixed and what is laid between, with silence for what is left; nothing where there would be silence alone. */
export function wholeLine({ before, after, gap }: LayPuzzle, laid: readonly PuzzleCell[]): PuzzleCell[] {
  const left = gap - slotsIn(laid);
  const rest = left > 0 ? [{ id: 'rest', text: Array(left).fill('-').join(' '), slots: left }] : [];
  return before.length + laid.length + after.length ? [...before, ...laid, ...rest, ...after] : [];
}

/** Cells to be heard; nothing where there are none. */
export const heardCells = (puzzle: Puzzle, cells: readonly PuzzleCell[]): Timeline | undefined =>
  cells.length ? performCells(cells, puzzle) : undefined;

/** One of two things to be told apart, to be heard. */
export function heardOne({ meter, grid }: Puzzle, { id, text, lead }: Heard): Timeline | undefined {
  const read = readPhrase({ cells: [{ id, text }], meter, grid, lead });
  return read.ok ? perform(read.phrase) : undefined;
}

/** A bar of time in a puzzle's meter. */
export function timeBar({ meter, grid }: Puzzle): { timeline: Timeline; bars: 1 } | undefined {
  const read = readPhrase({ cells: [{ id: 'time', text: barOfTime(meter, grid) }], meter, grid });
  return read.ok ? { timeline: perform(read.phrase), bars: 1 } : undefined;
}
