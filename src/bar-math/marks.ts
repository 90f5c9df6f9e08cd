/** Stickings as they stand on a ruler. */
import { slotsOnly } from '../core/sticking/expand.ts';
import type { Chord, HoldItem, Limb, SlotItem, Sticking } from '../core/index.ts';
import type { RulerMark } from './ruler.ts';

/** In which row a letter stands. */
type RowOf = (limb: Limb, index: number) => number;

/** What sounds together stands under one another. */
const STACKED: RowOf = (_limb, index) => index;
/** The right hand above the left one throughout. */
const APART: RowOf = (limb) => (limb === 'R' ? 0 : 1);

function chordMarks(chord: Chord, at: number, rowOf: RowOf): RulerMark[] {
  return chord.map(({ limb, graces = [], accent, ghost }, index) => ({
    letter: limb,
    at,
    row: rowOf(limb, index),
    graces: graces.map(({ hand }) => hand).join(''),
    accent,
    ghost: ghost === true,
  }));
}

function slotMarks(slot: SlotItem | HoldItem, rowOf: RowOf): RulerMark[] {
  if (slot.kind === 'hold') return [];
  return slot.parts.flatMap((chord, part) => chordMarks(chord, part / slot.parts.length, rowOf));
}

/**
 * The strokes of every slot of a sticking, for a cell on a ruler; feet written in a line of their own stand below the
 * hands. With `apart` each hand keeps a row of its own.
 *
 * @example
 * marksOf(sticking)[1]; // [{ letter: 'L', at: 0 }, { letter: 'L', at: 0.5 }]
 */
export function marksOf({ hands, feet }: Sticking, apart = false): RulerMark[][] {
  const rowOf = apart ? APART : STACKED;
  const upper = slotsOnly(hands).map((slot) => slotMarks(slot, rowOf));
  if (!feet) return upper;
  const below = 1 + upper.flat().reduce((most, { row = 0 }) => Math.max(most, row), 0);
  return slotsOnly(feet).map((slot, index) => [...(upper[index] ?? []), ...slotMarks(slot, (_, row) => below + row)]);
}
