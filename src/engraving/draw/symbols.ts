import { GraceNote, Stave, StaveNote, Stem, TickContext } from 'vexflow/core';
import { staffPlace, type Staff, type Stroke, type Written } from '../../core/index.ts';
import { GLYPH } from '../glyphs/names.ts';
import { headGlyph, keyOf } from './places.ts';
import type { Pen } from './pen.ts';

/** What VexFlow adds to the x of every note after the start of its stave. */
const STAVE_PADDING = 12;
/** The top line of VexFlow's stave stands so far under its y. */
const STAVE_TOP = 40;
/** Where the stem of a cross begins: at its upper corner (the font's own anchor), not at its middle. */
const CROSS_ANCHOR = 4.4;
const CROSSES: readonly string[] = [GLYPH.x, GLYPH.xHalf];

/** A stave that begins at x 0 with its middle line at y 0; only its measures are used. */
export function newStave(): Stave {
  const stave = new Stave(0, -STAVE_TOP - 20, 100);
  stave.setNoteStartX(-STAVE_PADDING);
  stave.setDefaultLedgerLineStyle({ lineWidth: 1.6 });
  return stave;
}

/** Puts a note at an x: its left edge. */
function place(note: StaveNote, x: number, stave: Stave, pen: Pen): void {
  note.setStave(stave);
  note.setContext(pen);
  note.setTickContext(new TickContext().setX(x));
}

/** The head of a longer value in the same shape. */
function headFor(head: string, base: number): string {
  if (base >= 4) return head;
  if (head === GLYPH.x) return GLYPH.xHalf;
  return base === 1 ? GLYPH.whole : GLYPH.half;
}

function setHeads(note: StaveNote, heads: readonly string[]): void {
  note.noteHeads.forEach((head, i) => head.setText(heads[i]));
  const lowest = heads[note.getStemDirection() > 0 ? 0 : heads.length - 1];
  if (CROSSES.includes(lowest))
    note.getStem()?.setOptions({ stemUpYBaseOffset: -CROSS_ANCHOR, stemDownYBaseOffset: CROSS_ANCHOR });
}

/** A VexFlow note for a written note, its first head centered over x. */
export function newNote(symbol: Written, stem: 1 | -1, x: number, stave: Stave, pen: Pen): StaveNote {
  const heads = symbol.onset!.slashes ? symbol.heads!.slice(0, 1) : symbol.heads!;
  const note = new StaveNote({
    keys: heads.map(({ place }) => keyOf(place)),
    duration: String(symbol.value.base),
    stemDirection: stem,
  });
  setHeads(
    note,
    heads.map((one) => headFor(headGlyph(one.place), symbol.value.base)),
  );
  place(note, x - note.getGlyphWidth() / 2, stave, pen);
  return note;
}

/** A VexFlow rest, centered over x. In the middle where its voice is alone, else above or below. */
export function newRest(
  symbol: Written,
  stem: 1 | -1,
  shared: boolean,
  x: number,
  staff: Staff,
  stave: Stave,
  pen: Pen,
) {
  const alone = symbol.value.base === 1 && staff === 'kit' ? 'd/5' : 'b/4';
  const key = !shared ? alone : stem > 0 ? (staff === 'kit' ? 'd/5' : 'b/4') : 'e/4';
  const rest = new StaveNote({ keys: [key], duration: `${symbol.value.base}r` });
  place(rest, x - rest.getGlyphWidth() / 2, stave, pen);
  return rest;
}

/** A small note centered over x; one alone is slashed, several have two beams. */
export function newGrace(stroke: Stroke, single: boolean, x: number, staff: Staff, stave: Stave, pen: Pen): GraceNote {
  const where = staffPlace(stroke, staff);
  const head = headGlyph(where);
  const note = new GraceNote({
    keys: [keyOf(where)],
    duration: single ? '8' : '16',
    slash: single,
    stemDirection: Stem.UP,
  });
  setHeads(note, [head]);
  const scale = note.getFontScale();
  if (CROSSES.includes(head)) note.getStem()?.setOptions({ stemUpYBaseOffset: -CROSS_ANCHOR * scale });
  place(note, x - note.getGlyphWidth() / 2, stave, pen);
  return note;
}
