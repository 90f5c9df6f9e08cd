import type { StaveNote } from 'vexflow/core';
import { beamsOf, type Stroke, type Written } from '../../core/index.ts';
import { GLYPH } from '../glyphs/names.ts';
import { escapeText, type Pen } from './pen.ts';

/** The middle of a head. */
const headX = (note: StaveNote, i: number): number => {
  const head = note.noteHeads[i];
  return head.getAbsoluteX() + head.getWidth() / 2;
};

/** Readies a note's heads and stem for drawing at the note's x. */
function settle(note: StaveNote, pen: Pen): void {
  note.noteHeads.forEach((head) => head.setX(note.getAbsoluteX()).setContext(pen));
  const x = note.getStemX();
  note.getStem()?.setNoteHeadXBounds(x, x).setContext(pen);
}

/** All of a note but its heads. */
function drawBody(note: StaveNote): void {
  note.drawLedgerLines();
  if (note.hasStem()) note.drawStem();
  note.drawFlag();
}

/** Parentheses that hug a head. */
function drawParentheses(pen: Pen, x: number, y: number, half: number): void {
  pen.glyph(GLYPH.leftParenthesis, x - half - 5.5, y);
  pen.glyph(GLYPH.rightParenthesis, x + half + 0.5, y);
}

function drawHead(note: StaveNote, i: number, stroke: Stroke, pen: Pen): void {
  const head = note.noteHeads[i];
  head.draw();
  if (stroke.ghost) drawParentheses(pen, headX(note, i), note.getYs()[i], head.getWidth() / 2);
}

/** A dot for each head, in the space above where the head is on a line. */
function drawDots(note: StaveNote, pen: Pen): void {
  const ys = note.noteHeads.map((head, i) => head.getY() - (note.getKeyLine(i) % 1 === 0 ? 5 : 0));
  const x = Math.max(...note.noteHeads.map((_, i) => headX(note, i))) + 9.5;
  for (const y of new Set(ys)) pen.glyph(GLYPH.dot, x, y);
}

/** The free part of a stem between head and beams, where a roll is marked. */
function freeStem(note: StaveNote, symbol: Written): { x: number; y: number } {
  const { topY, baseY } = note.getStemExtents();
  const down = note.getStemDirection() < 0 ? -1 : 1;
  const beams = beamsOf(symbol.value);
  const used = beams ? 5 + (beams - 1) * 7.5 : 4;
  const inner = down > 0 ? Math.min(...note.getYs()) : Math.max(...note.getYs(), baseY);
  return { x: note.getStemX(), y: (inner - down * 5 + topY + down * used) / 2 };
}

function drawSlashes(count: number, note: StaveNote, symbol: Written, pen: Pen): void {
  const { x, y } = freeStem(note, symbol);
  pen.centeredOn(GLYPH.slashes[count - 1], x, y);
}

const open = (attribute: string, stroke: Stroke): string => `<g ${attribute}="${escapeText(stroke.id)}">`;

/** Draws the strokes of a note, each in a group of its own; the first one has the stem. A tied note strikes nothing. */
export function drawNote(note: StaveNote, symbol: Written, pen: Pen): void {
  const onset = symbol.onset!;
  settle(note, pen);
  symbol.heads!.forEach(({ stroke }, i) => {
    pen.raw(open(symbol.begins ? 'data-stroke' : 'data-held', stroke));
    if (i === 0) drawBody(note);
    if (i > 0 && onset.slashes) drawSlashes(onset.slashes, note, symbol, pen);
    else drawHead(note, i, stroke, pen);
    if (i === 0 && symbol.value.dots) drawDots(note, pen);
    if (stroke.buzz) pen.centeredOn(GLYPH.buzz, freeStem(note, symbol).x, freeStem(note, symbol).y);
    pen.raw('</g>');
  });
}

/** Draws a rest with its dot. */
export function drawRest(rest: StaveNote, symbol: Written, pen: Pen): void {
  settle(rest, pen);
  rest.noteHeads[0].draw();
  if (symbol.value.dots) pen.glyph(GLYPH.dot, rest.getAbsoluteX() + rest.getGlyphWidth() + 2.5, rest.getYs()[0] - 5);
}

/** The line through the flag of a grace note that stands alone, between the font's own anchors for it. */
function drawSlash(grace: StaveNote, scale: number, pen: Pen): void {
  const x = grace.getStemX();
  const y = grace.getStemExtents().topY;
  pen.setLineWidth(1);
  pen
    .beginPath()
    .moveTo(x - 6.44 * scale, y + 24.56 * scale)
    .lineTo(x + 12.84 * scale, y + 7.96 * scale)
    .stroke();
  pen.setLineWidth(1.5);
}

/** Draws a grace note. */
export function drawGrace(grace: StaveNote, stroke: Stroke, slashed: boolean, pen: Pen): void {
  settle(grace, pen);
  pen.raw(open('data-stroke', stroke));
  drawBody(grace);
  grace.noteHeads[0].draw();
  if (slashed) drawSlash(grace, grace.getFontScale(), pen);
  pen.raw('</g>');
}
