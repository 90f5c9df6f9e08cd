import {
  beamsOf,
  scoreBars,
  staffFor,
  writeBars,
  type CountSystem,
  type Staff,
  type Timeline,
  type WrittenBar,
  type WrittenFragment,
} from '../core/index.ts';
import { measureByTable } from './draw/measure.ts';
import { drawAccents, drawMusic, soundingStrokes, widthOf, xAt, type Desk } from './draw/music.ts';
import { escapeText, num, Pen } from './draw/pen.ts';
import { barOver, brackets, letterRow, ruler } from './draw/rows.ts';
import { barLine, drawHead, drawMeter, lineClef, lineEnd, staffLines } from './draw/staff.ts';
import { newStave } from './draw/symbols.ts';
import { bracketsOf, type Over } from './layout/brackets.ts';
import { countLabels, type CountLabel } from './layout/counts.ts';
import { layoutsOf, type Layout } from './layout/lines.ts';
import { layRows, type Rows } from './layout/rows.ts';
import { SIZE } from './layout/sizes.ts';
import { spacingOf, type Spacing } from './layout/spacing.ts';
import { writingsOf } from './layout/writings.ts';

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

/** A fragment's music in one way of writing it, drawn, and the layouts it is for, by columns; all where left out. */
interface Music {
  desk: Desk;
  at?: number[];
}

/** One picture to be: its music, the whole way of writing it first, and what stands over it. */
interface Picture {
  index: number;
  music: Music[];
  over: Over;
}

/** Bars that share a line in some layout, and so their rows. */
interface System {
  bars: WrittenBar[];
  pictures: Picture[];
}

/** Everything about a piece that its pictures share. */
interface Piece {
  staff: Staff;
  options: EngraveOptions;
  bars: WrittenBar[];
  spacing: Spacing;
  layouts: Layout[];
  labels: CountLabel[];
  systems: System[];
  used: Set<string>;
}

function prepare(timeline: Timeline, options: EngraveOptions): Piece {
  measureByTable();
  const staff = !options.staff || options.staff === 'auto' ? staffFor(timeline) : options.staff;
  const { strokes } = timeline;
  const slashed = options.diddles === 'slash';
  const blank = scoreBars(timeline);
  const bars = writeBars(blank, strokes, { staff, slashed });
  const labels = options.counts === false ? [] : countLabels(bars, options.counts);
  const spacing = spacingOf(bars, labels);
  const layouts = layoutsOf(bars, spacing.unit, spacing.tens);
  const used = new Set<string>();
  const writings = writingsOf(blank, strokes, { staff, slashed }, bars, layouts);
  const over = bracketsOf(timeline, options.names ?? [], bars, spacing, layouts);
  const shared = { spacing, staff, stave: newStave(), strokes: new Map(strokes.map((stroke) => [stroke.id, stroke])) };
  const desk = (fragment: WrittenFragment): Desk => ({ ...shared, fragment, pen: new Pen(used), mostBeams: 0 });
  const pictures = writings.map((ways, index): Picture => {
    return { index, over: over[index], music: ways.map(({ fragment, at }) => ({ desk: desk(fragment), at })) };
  });
  return { staff, options, bars, spacing, layouts, labels, systems: systemsOf(bars, layouts, pictures), used };
}

/** Bars that may stand on one line: those of a pair, a pickup and bar 1, else each by itself. */
function systemsOf(bars: readonly WrittenBar[], layouts: readonly Layout[], pictures: readonly Picture[]): System[] {
  const has = (kind: Layout['kind']): boolean => layouts.some((layout) => layout.kind === kind);
  const systemOf = (i: number): number => (has('pairs') ? Math.floor(i / 2) : has('hangs') && i === 1 ? 0 : i);
  const groups = [...Map.groupBy(bars, (_, i) => systemOf(i)).values()];
  let drawn = 0;
  return groups.map((own) => {
    const from = drawn;
    drawn += own.reduce((sum, bar) => sum + bar.fragments.length, 0);
    return { bars: own, pictures: pictures.slice(from, drawn) };
  });
}

const musicIn = ({ pictures }: System): Desk[] => pictures.flatMap(({ music }) => music.map(({ desk }) => desk));
const desksIn = ({ pictures }: System): Desk[] => pictures.map(({ music }) => music[0].desk);

/** The most beam lines in a system: on one line its beams are level. */
function mostBeams(desks: readonly Desk[]): number {
  const parts = desks.flatMap(({ fragment }) => fragment.voices);
  const symbols = parts.flatMap((part) => part.beams.flatMap((beam) => beam.notes.map((i) => part.symbols[i])));
  return Math.max(0, ...symbols.map((symbol) => beamsOf(symbol.value)));
}

/** Draws a system's music, accents last: level where the staff is one line, else close to each fragment. */
function drawSystem(system: System, staff: Staff): void {
  const desks = musicIn(system);
  const most = mostBeams(desks);
  desks.forEach((desk) => drawMusic({ ...desk, mostBeams: most }));
  const level = Math.min(...desks.map((desk) => desk.pen.top));
  desks.forEach((desk) => drawAccents(desk, (staff === 'pad' ? level : desk.pen.top) - 4));
}

function rowsOf(system: System, { staff, options, labels }: Piece): Rows {
  const edge = staff === 'pad' ? 12 : 20;
  const desks = musicIn(system);
  const overs = system.pictures.map(({ over }) => over);
  const raised = overs.flatMap(({ names }) => names).some(({ row }) => row > 0);
  return layRows({
    musicTop: Math.min(-edge, ...desks.map((desk) => desk.pen.top)),
    musicBottom: Math.max(edge, ...desks.map((desk) => desk.pen.bottom)),
    names: overs.every(({ parts }) => parts.length === 0) ? 0 : raised ? 2 : 1,
    letters: desks.flatMap(soundingStrokes).length > 0 && options.letters !== false,
    feetApart: system.bars.some((bar) => bar.fragments.some((fragment) => fragment.voices.length > 1)),
    counts: labels.length > 0,
  });
}

/** Just beyond the last head, which may stand over the edge of its picture: a line of the page may end there. */
const endOfNotes = (desk: Desk): number =>
  Math.max(...soundingStrokes(desk).map((stroke) => xAt(desk, stroke.tick) + SIZE.head + SIZE.air));

/** A new meter over a bar that begins with it. */
function newMeter({ bars, staff, used }: Piece, { fragment }: Desk): string {
  const bar = bars.findIndex(({ number }) => number === fragment.bar);
  if (fragment.index > 0 || bar === 0 || bars[bar].meter.text === bars[bar - 1].meter.text) return '';
  const pen = new Pen(used);
  drawMeter(bars[bar].meter, 4, staff === 'pad' ? -28 : -38, 0.7, pen);
  return pen.svg;
}

/** Lines and their sign. */
function staffOf({ staff, layouts, used }: Piece, desk: Desk, index: number): string {
  const startedBy = (i: number): number[] =>
    layouts.filter(({ starts }) => starts.has(i)).map(({ columns }) => columns);
  const clef = lineClef(staff, index === 0 ? [] : startedBy(index), used);
  const width = widthOf(desk);
  const end = width + barOver(desk);
  if (desk.fragment.last) return clef + staffLines(staff, 0, end) + barLine(staff, end);
  return clef + staffLines(staff, 0, width) + lineEnd(staff, startedBy(index + 1), width, endOfNotes(desk));
}

function svg(type: string, width: number, rows: Rows, attributes: string, content: string): string {
  const box = `0 ${rows.top} ${num(width)} ${rows.bottom - rows.top}`;
  return `<svg class="${type}" viewBox="${box}"${attributes}>${content}</svg>`;
}

const musicOf = ({ desk, at }: Music): string =>
  at && desk.pen.svg ? `<g data-at="${at.join(' ')}">${desk.pen.svg}</g>` : desk.pen.svg;

function beat(piece: Piece, { index, music, over }: Picture, rows: Rows): string {
  const { desk } = music[0];
  const { fragment, spacing } = desk;
  const width = widthOf(desk);
  const span = fragment.ticks / spacing.unit;
  const pad = Math.round((spacing.pad / width) * 1e4) / 1e4;
  const place = ` data-tick="${fragment.tick}" data-ticks="${fragment.ticks}" data-pad="${pad}"`;
  const notes = staffOf(piece, desk, index) + music.map(musicOf).join('') + newMeter(piece, desk);
  const letters = piece.options.letters === false ? '' : letterRow(desk, rows);
  const counts = piece.labels.length ? ruler(desk, rows, piece.labels) : '';
  const type = span > 1 ? `beat span-${span}` : 'beat';
  return svg(type, width, rows, place, notes + letters + counts + brackets(over, rows));
}

function systemHtml(piece: Piece, { bars, pictures }: System, rows: Rows): string {
  const bar = ({ number }: WrittenBar): string => {
    const own = pictures.filter(({ music }) => music[0].desk.fragment.bar === number);
    const beats = own.map((picture) => beat(piece, picture, rows)).join('');
    return `<div class="bar${number === 0 ? ' pickup' : ''}" data-bar="${number}">${beats}</div>`;
  };
  return bars.map(bar).join('');
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
    ...(spacing.gap ? [`gap-${spacing.gap}`] : []),
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
 * engrave(perform(phrase), { names: ['flam drag'] }).html.startsWith('<div class="score pad ') // → true
 */
export function engrave(timeline: Timeline, options: EngraveOptions = {}): Engraving {
  const piece = prepare(timeline, options);
  piece.systems.forEach((system) => drawSystem(system, piece.staff));
  const rows = piece.systems.map((system) => rowsOf(system, piece));
  const head = new Pen(piece.used);
  const headTens = drawHead(piece.staff, piece.bars[0].meter, head);
  const beats = piece.systems.map((system, i) => systemHtml(piece, system, rows[i])).join('');
  const image = options.label === undefined ? '' : ` role="img" aria-label="${escapeText(options.label)}"`;
  const words = options.describedBy ? ` aria-describedby="${escapeText(options.describedBy)}"` : '';
  const first = svg('score-head', headTens * 10, rows[0], '', head.svg);
  return {
    html: `<div class="${classesOf(piece, headTens)}"${image}${words}><div class="lines">${first}<div class="beats">${beats}</div></div></div>`,
    glyphs: [...piece.used].sort(),
    bars: piece.bars.length,
    beats: piece.systems.flatMap(desksIn).length,
    leastWidth: (piece.layouts[0].columns * piece.spacing.tens + headTens + endTens(piece)) * LEAST_SCALE,
  };
}
