import { countSyllables, stickingOf, type PuzzleBase, type PuzzleCell } from '../../../src/core/index.ts';
import { COUNTING } from '../../../src/words/site.ts';
import type { NameOf } from '../../../src/words/puzzle/say.ts';
import type { RulerCell, RulerDrawing, RulerKind } from '../../../src/bar-math/ruler.ts';
import { marksOf } from '../../../src/bar-math/marks.ts';

/** Cells under their brackets. */
export const cellsDrawn = (cells: readonly PuzzleCell[], nameOf: NameOf, kind: RulerKind = 'cell'): RulerCell[] =>
  cells.map((cell) => ({ slots: cell.slots, kind, name: nameOf(cell.id), marks: marksOf(stickingOf([cell])) }));

/** The ruler of a puzzle with nothing on it. */
export const emptyRuler = ({ meter, grid, slots, barSlots }: PuzzleBase, bars = slots / barSlots): RulerDrawing => ({
  counts: countSyllables(meter, grid, COUNTING),
  grid,
  bars,
});
