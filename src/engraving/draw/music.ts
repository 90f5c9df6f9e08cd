import type { Stave, StaveNote } from 'vexflow/core';
import {
  beamsOf,
  heightOf,
  staffPlace,
  type Staff,
  type BeamGroup,
  type Stroke,
  type Ticks,
  type TupletMark,
  type VoicePart,
  type Written,
  type WrittenFragment,
} from '../../core/index.ts';
import { GLYPH, tupletFigure } from '../glyphs/names.ts';
import { graceCount, graceOffset, isDoubled } from '../layout/columns.ts';
import { SIZE } from '../layout/sizes.ts';
import type { Spacing } from '../layout/spacing.ts';
import { curvePath } from './curves.ts';
import { FlatBeam, type Beamed } from './flat-beam.ts';
import { drawGrace, drawNote, drawRest } from './note.ts';
import { num, type Pen } from './pen.ts';
import { signGlyph } from './places.ts';
import { newGrace, newNote, newRest } from './symbols.ts';

/** What drawing a fragment's notes needs. */
export interface Desk {
  fragment: WrittenFragment;
  spacing: Spacing;
  staff: Staff;
  stave: Stave;
  pen: Pen;
  /** Strokes by id. */
  strokes: Map<string, Stroke>;
  /** Most beam lines anywhere in the piece: on one line all beams are level. */
  mostBeams: number;
}

/** Where a tick stands in its fragment's picture. */
export const xAt = ({ fragment, spacing }: Desk, tick: Ticks): number =>
  spacing.pad + (tick - fragment.tick) * spacing.pixels;

/** The width of a fragment's picture. */
export const widthOf = ({ fragment, spacing }: Desk): number => fragment.ticks * spacing.pixels;

const WHOLE = 80640;
/** Steps above C0 of the middle line, B4. */
const MIDDLE_LINE = 34;

/** Which way a beam line of one note alone points: into the beat at its start, else back. */
function stubOf(group: BeamGroup, symbols: readonly Written[], i: number): Beamed['stub'] {
  const { offset, value } = symbols[group.notes[i]];
  const inside = i > 0 && i < group.notes.length - 1;
  return i === 0 || (inside && offset % ((2 * WHOLE) / value.base) === 0) ? 'forward' : 'back';
}

/** Height of a group's beam: a stem's length beyond its furthest head, and beyond grace notes that stand under it. */
function beamHeight(desk: Desk, part: VoicePart, group: BeamGroup, notes: StaveNote[]): number {
  const own = Math.max(...group.notes.map((i) => beamsOf(part.symbols[i].value)));
  const lines = desk.staff === 'pad' && part.stem > 0 ? desk.mostBeams : own;
  const length = SIZE.stem + Math.max(0, lines - 2) * SIZE.beamStep;
  const ys = group.notes.flatMap((i) => notes[i].getYs());
  if (part.stem < 0) return Math.max(...ys) + length;
  const graces = group.notes.slice(1).flatMap((i) => graceYs(desk, part.symbols[i]));
  const onLine = desk.staff === 'pad' ? [0] : [];
  return Math.min(...ys, ...onLine, ...graces.map((y) => y + SIZE.stem * (1 - SIZE.grace) - 4)) - length;
}

function gracesOf(desk: Desk, symbol: Written): { stroke: Stroke; primary: Stroke }[] {
  if (!symbol.begins || !symbol.onset) return [];
  return symbol.onset.strokes
    .filter((primary) => graceCount(primary) > 0)
    .flatMap((primary) => primary.graces.map((id) => ({ stroke: desk.strokes.get(id)!, primary })));
}

const yOf = (desk: Desk, stroke: Stroke): number => -5 * (heightOf(staffPlace(stroke, desk.staff)) - MIDDLE_LINE);
const graceYs = (desk: Desk, symbol: Written): number[] =>
  gracesOf(desk, symbol).map(({ stroke }) => yOf(desk, stroke));

function newBeams(desk: Desk, part: VoicePart, notes: StaveNote[]): FlatBeam[] {
  return part.beams.map((group) => {
    const beamed = group.notes.map((at, i): Beamed => ({
      note: notes[at],
      lines: beamsOf(part.symbols[at].value),
      joins: group.joins[i] ?? 0,
      stub: stubOf(group, part.symbols, i),
    }));
    const beam = new FlatBeam(beamed, beamHeight(desk, part, group, notes));
    beam.postFormat();
    return beam;
  });
}

/** The x of a grace note of a primary. */
export function graceX(desk: Desk, primary: Stroke, nth: number): number {
  return xAt(desk, primary.tick) - graceOffset(graceCount(primary), nth, primary.ghost);
}

function drawGraces(desk: Desk, symbol: Written): void {
  const all = gracesOf(desk, symbol);
  if (all.length === 0) return;
  const { stave, staff, pen } = desk;
  const notes = all.map(({ stroke, primary }, i) =>
    newGrace(stroke, all.length === 1, graceX(desk, primary, i), staff, stave, pen),
  );
  const beam = all.length > 1 ? graceBeam(notes) : undefined;
  notes.forEach((note, i) => drawGrace(note, all[i].stroke, !beam, pen));
  beam?.setContext(pen).drawWithStyle();
  drawSlur(desk, all[0].stroke, all[0].primary);
}

function graceBeam(notes: StaveNote[]): FlatBeam {
  const y = Math.min(...notes.flatMap((note) => note.getYs())) - SIZE.stem * SIZE.grace;
  const beam = new FlatBeam(
    notes.map((note) => ({ note, lines: 2, joins: 2, stub: 'back' as const })),
    y,
    3,
  );
  beam.postFormat();
  return beam;
}

/** From the first grace note to its primary, under both; down the side where the grace note stands much higher. */
function drawSlur(desk: Desk, grace: Stroke, primary: Stroke): void {
  const from = { x: graceX(desk, primary, 0), y: yOf(desk, grace) + 6.5 };
  const low = { x: xAt(desk, primary.tick) - 1, y: yOf(desk, primary) + 7.5 };
  const steep = low.y - from.y > 12;
  const to = steep ? { x: low.x - 8, y: low.y - 6 } : low;
  const depth = steep ? 3 : 4;
  desk.pen.shape(curvePath(from, to, depth), Math.max(from.y, to.y) + depth + 1);
}

/** A tie from one x to another, both middles of heads, and the part of it between two x, on the side away from the stem. */
function drawTie(desk: Desk, stem: 1 | -1, y: number, from: number, to: number, left: number, right: number): void {
  const start = { x: from + 5, y: y + stem * 6 };
  const stop = { x: to - 5, y: start.y };
  const share = (x: number): number => Math.min(1, Math.max(0, (x - start.x) / (stop.x - start.x)));
  const depth = 4.5 * stem;
  desk.pen.shape(curvePath(start, stop, depth, share(left), share(right)), start.y + depth + stem);
}

/** Both halves of a tie over the edge of a picture are drawn, each in its own. */
function drawTies(desk: Desk, part: VoicePart, notes: StaveNote[]): void {
  const { fragment, spacing } = desk;
  part.symbols.forEach((symbol, i) => {
    if (symbol.kind === 'rest') return;
    const x = xAt(desk, symbol.tick);
    const end = symbol.tick + symbol.ticks;
    const within = end < fragment.tick + fragment.ticks;
    const edge = within ? Infinity : Math.max(widthOf(desk), xAt(desk, end) - spacing.pad);
    for (const y of new Set(notes[i].getYs())) {
      if (symbol.tied) drawTie(desk, part.stem, y, x, xAt(desk, end), x, edge);
      const incoming = symbol.from !== undefined && symbol.from < fragment.tick;
      if (incoming) drawTie(desk, part.stem, y, xAt(desk, symbol.from!), x, 0, x);
    }
  });
}

/** The outermost point of the notes a tuplet covers, on its voice's side. */
function tupletHeight(part: VoicePart, notes: StaveNote[]): number {
  const tips = part.symbols.flatMap((symbol, i) => (symbol.kind === 'note' ? [notes[i].getStemExtents().topY] : []));
  return part.stem > 0 ? Math.min(-18, ...tips) - 5 : Math.max(18, ...tips) + 5;
}

const FIGURE_SCALE = 0.8;
const FIGURE_HEIGHT = 11;

function drawTuplet(desk: Desk, part: VoicePart, mark: TupletMark, y: number): void {
  const { pen } = desk;
  const left = xAt(desk, part.symbols[mark.from].tick);
  const right = xAt(desk, part.symbols[mark.to].tick) + (part.stem > 0 ? 6 : -6) * (mark.bracket ? 0 : 1);
  const middle = (left + right + (mark.bracket ? 0 : 6 * part.stem)) / 2;
  const base = part.stem > 0 ? y : y + FIGURE_HEIGHT;
  pen.centered(tupletFigure(String(mark.figure)), middle, base, FIGURE_SCALE);
  if (!mark.bracket) return;
  const line = base - FIGURE_HEIGHT / 2;
  const hook = line + 5 * part.stem;
  pen.reach(line);
  pen.raw(
    `<path class="b" d="M${num(left - 6)} ${num(hook)}V${num(line)}H${num(middle - 7)}M${num(middle + 7)} ${num(line)}H${num(right + 7)}V${num(hook)}"/>`,
  );
}

function drawTuplets(desk: Desk, part: VoicePart, notes: StaveNote[]): void {
  const outer = part.tuplets.length > 1 && part.tuplets.some((mark) => mark.bracket);
  part.tuplets.forEach((mark, i) => {
    const lift = outer && i === 0 && part.symbols[mark.from].scope.figure ? FIGURE_HEIGHT + 3 : 0;
    drawTuplet(desk, part, mark, tupletHeight(part, notes) - lift * part.stem);
  });
}

function newSymbol(desk: Desk, part: VoicePart, symbol: Written): StaveNote {
  const { staff, stave, pen, spacing } = desk;
  const x = xAt(desk, symbol.tick);
  if (symbol.kind === 'note') return newNote(symbol, part.stem, x, stave, pen);
  const wholeBar = symbol.value.base === 1;
  const middle = wholeBar ? x - spacing.pad + (symbol.ticks * spacing.pixels) / 2 : x;
  return newRest(symbol, part.stem, part.shared, middle, staff, stave, pen);
}

function drawPart(desk: Desk, part: VoicePart): void {
  const notes = part.symbols.map((symbol) => newSymbol(desk, part, symbol));
  const beams = newBeams(desk, part, notes);
  part.symbols.forEach((symbol, i) => {
    if (symbol.kind === 'rest') return drawRest(notes[i], symbol, desk.pen);
    drawGraces(desk, symbol);
    drawNote(notes[i], symbol, desk.pen);
  });
  beams.forEach((beam) => beam.setContext(desk.pen).drawWithStyle());
  drawTies(desk, part, notes);
  drawTuplets(desk, part, notes);
}

/** Signs over a note for how a cymbal is struck, in a row above all that was drawn. */
function drawSigns(desk: Desk): void {
  const signs = soundingStrokes(desk).flatMap((stroke) => {
    const sign = signGlyph(staffPlace(stroke, desk.staff));
    return sign ? [{ sign, x: xAt(desk, stroke.tick) }] : [];
  });
  const y = desk.pen.top - 8;
  for (const { sign, x } of signs) desk.pen.centered(sign, x, y, 0.8);
}

/** Strokes that begin in the fragment, without grace notes. */
export const soundingStrokes = ({ fragment }: Desk): Stroke[] =>
  fragment.voices
    .flatMap((part) => part.symbols)
    .flatMap((symbol) => (symbol.begins && symbol.onset ? symbol.onset.strokes : []));

/** Draws the notes of a fragment, without accents. */
export function drawMusic(desk: Desk): void {
  desk.fragment.voices.forEach((part) => drawPart(desk, part));
  drawSigns(desk);
}

/** Draws a fragment's accents, their feet on a line, above everything. */
export function drawAccents(desk: Desk, y: number): void {
  const sounding = soundingStrokes(desk);
  const accented = sounding.filter((stroke) => stroke.accent);
  const byTick = new Map(accented.map((stroke) => [stroke.tick, stroke]));
  for (const [tick, stroke] of byTick) {
    const x = xAt(desk, tick) + (isDoubled(sounding.filter((s) => s.tick === tick)) ? SIZE.head : 0);
    desk.pen.centered(stroke.marcato ? GLYPH.marcato : GLYPH.accent, x, y);
  }
}
