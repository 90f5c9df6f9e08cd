import type { CountSystem, Stroke, Timeline } from '../core/index.ts';
import { measureByTable } from './draw/measure.ts';
import { drawAccents, drawMusic, soundingStrokes, widthOf, xAt, type Desk } from './draw/music.ts';
import { escapeText, num, Pen } from './draw/pen.ts';
import { barOver, brackets, letterRow, ruler } from './draw/rows.ts';
import { barLine, drawHead, drawMeter, lineClef, lineEnd, staffLines } from './draw/staff.ts';
import { newStave } from './draw/symbols.ts';
import { staffFor, type Staff } from './kit.ts';
import { bracketsOf, type BracketPart } from './layout/brackets.ts';
import { countLabels, type CountLabel } from './layout/counts.ts';
import { layoutsOf, type Layout } from './layout/lines.ts';
import { layRows, type Rows } from './layout/rows.ts';
import { SIZE } from './layout/sizes.ts';
import { spacingOf, type Spacing } from './layout/spacing.ts';
import { scoreBars } from './rhythm/fragments.ts';
import { beamsOf } from './rhythm/values.ts';
import { writeBars, type WrittenBar, type WrittenFragment } from './rhythm/voice.ts';

/** How a timeline is drawn. */
export interface EngraveOptions {
  /** One line or five; `auto` (default) takes five as soon as a stroke needs them. */
  staff?: Staff | 'auto';
  /** How the ruler counts; `false` leaves it out. */
  counts?: CountSystem | false;
  /** A name for each cell, by its index, over a bracket; `null` for none. Left out: no brackets. */
  names?: readonly (string | null)[];
  /** Diddles as two notes (default) or as one with a slash through its stem. */
  diddles?: 'notes' | 'slash';
  /** Whether letters stand under the strokes; true where left out. */
  letters?: boolean;
  /** Short label of the picture; with it the score is one image to a screen reader. */
  label?: string;
  /** Id of the element that says the reading in words. */
  describedBy?: string;
}

/** A timeline, engraved. */
export interface Engraving {
  /** One `<div class="score">`; the page must have `glyphSprite(glyphs)` once, and the style sheet. */
  html: string;
  /** Codes of the glyphs that it refers to. */
  glyphs: string[];
  /** Bars, pickup included, and fragments in them. */
  bars: number;
  beats: number;
  /** CSS pixels it takes at the least; where there are fewer, it scrolls. */
  leastWidth: number;
}

/** CSS pixels to ten pixels of the drawing, at the least. */
const LEAST_SCALE = 8;

/** Everything about a piece that its pictures share. */
interface Piece {
  staff: Staff;
  options: EngraveOptions;
  bars: WrittenBar[];
  spacing: Spacing;
  layouts: Layout[];
  labels: CountLabel[];
  brackets: Map<WrittenFragment, BracketPart[]>;
  used: Set<string>;
  desks: Desk[];
}

function prepare(timeline: Timeline, options: EngraveOptions): Piece {
  measureByTable();
  const staff = !options.staff || options.staff === 'auto' ? staffFor(timeline) : options.staff;
  const bars = writeBars(scoreBars(timeline), timeline.strokes, options.diddles === 'slash');
  const labels = options.counts === false ? [] : countLabels(bars, options.counts);
  const spacing = spacingOf(bars, labels);
  const layouts = layoutsOf(bars, spacing.unit, spacing.apart);
  const used = new Set<string>();
  return {
    staff,
    options,
    bars,
    spacing,
    layouts,
    labels,
    brackets: bracketsOf(timeline, options.names ?? [], bars, spacing, layouts),
    used,
    desks: desksOf(timeline, bars, spacing, staff, used),
  };
}

function desksOf(timeline: Timeline, bars: WrittenBar[], spacing: Spacing, staff: Staff, used: Set<string>): Desk[] {
  const strokes = new Map<string, Stroke>(timeline.strokes.map((stroke) => [stroke.id, stroke]));
  const fragments = bars.flatMap((bar) => bar.fragments);
  const symbols = fragments
    .flatMap((f) => f.voices)
    .flatMap((part) => part.beams.flatMap((b) => b.notes.map((i) => part.symbols[i])));
  const mostBeams = Math.max(0, ...symbols.map((symbol) => beamsOf(symbol.value)));
  const stave = newStave();
  return fragments.map((fragment) => ({ fragment, spacing, staff, stave, pen: new Pen(used), strokes, mostBeams }));
}

/** Draws the music of all fragments, accents last: level where the staff is one line, else close to each fragment. */
function drawAll({ desks, staff }: Piece): void {
  desks.forEach(drawMusic);
  const level = Math.min(...desks.map((desk) => desk.pen.top));
  desks.forEach((desk) => drawAccents(desk, (staff === 'pad' ? level : desk.pen.top) - 4));
}

function rowsOf({ desks, bars, staff, options, labels }: Piece): Rows {
  const edge = staff === 'pad' ? 12 : 20;
  const slurs = desks.flatMap(soundingStrokes).length > 0;
  return layRows({
    musicTop: Math.min(-edge, ...desks.map((desk) => desk.pen.top)),
    musicBottom: Math.max(edge, ...desks.map((desk) => desk.pen.bottom)),
    names: (options.names ?? []).some((name) => name !== null),
    letters: slurs && options.letters !== false,
    feetApart: bars.some((bar) => bar.fragments.some((fragment) => fragment.voices.length > 1)),
    counts: labels.length > 0,
  });
}

/** Just beyond the last head, which may stand over the edge of its picture: a line of the page may end there. */
const endOfNotes = (desk: Desk): number =>
  Math.max(...soundingStrokes(desk).map((stroke) => xAt(desk, stroke.tick) + SIZE.head + SIZE.air));

/** Lines and their sign, and a new meter where it changes. */
function staffOf(piece: Piece, desk: Desk, index: number): string {
  const { staff, layouts, bars } = piece;
  const { fragment, pen } = desk;
  const startedBy = (i: number): number[] =>
    layouts.filter(({ starts }) => starts.has(i)).map(({ columns }) => columns);
  const at = index === 0 ? [] : startedBy(index);
  const bar = bars.findIndex(({ number }) => number === fragment.bar);
  const changes = fragment.index === 0 && bar > 0 && bars[bar].meter.text !== bars[bar - 1].meter.text;
  if (changes) drawMeter(bars[bar].meter, 4, staff === 'pad' ? -28 : -38, 0.7, pen);
  const width = widthOf(desk);
  const end = width + barOver(desk);
  if (fragment.last) return lineClef(staff, at, pen) + staffLines(staff, 0, end) + barLine(staff, end);
  const beyond = lineEnd(staff, startedBy(index + 1), width, endOfNotes(desk));
  return lineClef(staff, at, pen) + staffLines(staff, 0, width) + beyond;
}

function svg(type: string, width: number, rows: Rows, attributes: string, content: string): string {
  const box = `0 ${rows.top} ${num(width)} ${rows.bottom - rows.top}`;
  return `<svg class="${type}" viewBox="${box}"${attributes}>${content}</svg>`;
}

function beat(piece: Piece, desk: Desk, index: number, rows: Rows): string {
  const { fragment, spacing } = desk;
  const width = widthOf(desk);
  const span = fragment.ticks / spacing.unit;
  const pad = Math.round((spacing.pad / width) * 1e4) / 1e4;
  const place = ` data-tick="${fragment.tick}" data-ticks="${fragment.ticks}" data-pad="${pad}"`;
  const lines = staffOf(piece, desk, index);
  const letters = piece.options.letters === false ? '' : letterRow(desk, rows);
  const counts = piece.labels.length ? ruler(desk, rows, piece.labels) : '';
  const cells = brackets(piece.brackets.get(fragment)!, rows);
  return svg(
    span > 1 ? `beat span-${span}` : 'beat',
    width,
    rows,
    place,
    lines + desk.pen.svg + letters + counts + cells,
  );
}

function barsHtml(piece: Piece, rows: Rows): string {
  let index = 0;
  return piece.bars
    .map((bar) => {
      const beats = bar.fragments.map(() => beat(piece, piece.desks[index], index++, rows));
      return `<div class="bar${bar.number === 0 ? ' pickup' : ''}" data-bar="${bar.number}">${beats.join('')}</div>`;
    })
    .join('');
}

/** Whether a bar line stands so far beyond its picture that the line needs room for it. */
const isLate = ({ over }: Spacing): boolean => Math.max(...over.values()) > 8;

/** Tens of pixels at the end of a line, as the style sheet has them. */
const endTens = ({ spacing }: Piece): number => (isLate(spacing) ? 2 : 0.8);

function classesOf({ spacing, layouts, bars, staff }: Piece, headTens: number): string {
  const hang = bars[0].number === 0 ? bars[0].fragments.reduce((sum, f) => sum + f.ticks / spacing.unit, 0) : 0;
  const lines = layouts.map(({ kind, columns }) => `${kind}-${columns}`);
  const late = isLate(spacing) ? ['late'] : [];
  return [
    'score',
    staff,
    ...late,
    `unit-${spacing.tens}`,
    `head-${headTens}`,
    ...(hang ? [`hang-${hang}`] : []),
    ...lines,
  ].join(' ');
}

/**
 * Engraves a timeline as SVG that stands alone: one picture a beat, whose x is linear in time, the same over the piece.
 * In a picture's width a tick stands at `data-pad + (tick - data-tick) / data-ticks`; that may be beyond 1, in the room
 * that the next picture leaves for its grace notes.
 * @example
 * engrave(perform(phrase), { names: ['flam drag'] }).html // → '<div class="score pad …'
 */
export function engrave(timeline: Timeline, options: EngraveOptions = {}): Engraving {
  const piece = prepare(timeline, options);
  drawAll(piece);
  const rows = rowsOf(piece);
  const head = new Pen(piece.used);
  const headTens = drawHead(piece.staff, piece.bars[0].meter, head);
  const beats = barsHtml(piece, rows);
  const image = options.label === undefined ? '' : ` role="img" aria-label="${escapeText(options.label)}"`;
  const words = options.describedBy ? ` aria-describedby="${escapeText(options.describedBy)}"` : '';
  const first = svg('score-head', headTens * 10, rows, '', head.svg);
  return {
    html: `<div class="${classesOf(piece, headTens)}"${image}${words}><div class="lines">${first}<div class="beats">${beats}</div></div></div>`,
    glyphs: [...piece.used].sort(),
    bars: piece.bars.length,
    beats: piece.desks.length,
    leastWidth: (piece.layouts[0].columns * piece.spacing.tens + headTens + endTens(piece)) * LEAST_SCALE,
  };
}
