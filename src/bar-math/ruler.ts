/** Where everything stands on a bar drawn as a ruler: beat by beat, in parts of the beat, so that time runs evenly. */

/** A stroke over its slot. */
export interface RulerMark {
  /** R, L, K or H. */
  letter: string;
  /** Where in its slot it falls, from 0 to below 1; the second stroke of a diddle is at 0.5. */
  at?: number;
  /** Letters that sound together stand under one another: 0 is the upper row. */
  row?: number;
  /** The hands of its grace notes in the order they sound, drawn small. */
  graces?: string;
  accent?: '>' | '^' | undefined;
  ghost?: boolean;
}

/**
 * How a stretch of the ruler is drawn: a cell under its bracket; one that is given and stays; what is missing, dashed;
 * a cell that is wrong, crossed; letters without a bracket.
 */
export type RulerKind = 'cell' | 'given' | 'left' | 'wrong' | 'bare';

/** A stretch of the ruler; one follows the other. */
export interface RulerCell {
  slots: number;
  kind?: RulerKind;
  /** Over the bracket, where there is room. */
  name?: string | undefined;
  /** In place of the name where there is less room. */
  short?: string | undefined;
  /** The strokes of each of its slots; what is left out is empty. */
  marks?: readonly (readonly RulerMark[])[];
}

/** What a ruler shows. */
export interface RulerDrawing {
  /** What is counted on each slot of a bar. */
  counts: readonly string[];
  /** Slots a beat. */
  grid: number;
  /** How many bars; one where left out. */
  bars?: number;
  cells?: readonly RulerCell[];
  /** Slots whose count stands in a box, from 0 over all bars. */
  marked?: readonly number[];
}

/** A name and the widths of the beat, in pixels, between which it is shown. */
export interface NameAt {
  text: string;
  x: string;
  from: number;
  until?: number;
  /** Shown where the bar stands on one line, or where the line breaks; left out: either way. */
  when?: 'one-line' | 'broken';
}

/** The part of a cell that lies in one beat. */
export interface SpanAt {
  kind: RulerKind;
  x1: string;
  x2: string;
  width: string;
  opens: boolean;
  closes: boolean;
  names: NameAt[];
}

/** One beat, drawn by itself so that a narrow page can break the line after it. */
export interface BeatAt {
  /** Index of its first slot over all bars. */
  slot: number;
  bar: number;
  /** First of its bar, last of its bar. */
  first: boolean;
  last: boolean;
  counts: { x: string; text: string; long: boolean; boxed: boolean }[];
  spans: SpanAt[];
  marks: (RulerMark & { x: string; y: number })[];
}

/** A slot's mark stands so far into the slot: room for a grace note before it. */
const INSET = 0.36;
/** Brackets of neighbors keep so much of a slot between them. */
const GAP = 0.08;
/** A letter of a name, in pixels. */
const LETTER = 6.3;
/** Where letters stand and how far apart their rows are, in pixels. */
export const ROW = { first: 60, height: 19 };
/** Widths of a beat at which names come and go: the style sheet knows these and no others. */
export const STEPS = [50, 75, 100, 125, 150, 175, 200, 250, 300, 400];

/** So many slots are drawn at the most, in whole bars; no bar has more. */
export const MOST_DRAWN = 128;

/**
 * How many of some bars are drawn, of so many slots each; at least one.
 *
 * @example barsDrawn(8, 32) // 4
 */
export const barsDrawn = (bars: number, barSlots: number): number =>
  Math.min(bars, Math.max(1, Math.floor(MOST_DRAWN / barSlots)));

const percent = (part: number): string => `${Number((part * 100).toFixed(3))}%`;

/**
 * A place in a beat, counted in slots, as a part of the beat's width.
 *
 * @example
 * markAt(0, 4); // '9%'
 */
export const markAt = (slot: number, grid: number): string => percent((slot + INSET) / grid);

/** How many rows of letters a drawing needs. */
export function rowsOf({ cells = [] }: RulerDrawing): number {
  let last = 0;
  for (const { marks = [] } of cells)
    for (const strokes of marks) for (const { row = 0 } of strokes) last = Math.max(last, row);
  return last + 1;
}

/** Whether there are brackets, and so names, above the letters. */
export const hasBrackets = ({ cells = [] }: RulerDrawing): boolean => cells.some(({ kind }) => kind !== 'bare');

/** The beats of a drawing, bar after bar; what lies beyond the last bar is left out. Linear in its slots and strokes. */
export function beatsOf(drawing: RulerDrawing): BeatAt[] {
  const { counts, grid, bars = 1 } = drawing;
  const perBar = counts.length / grid;
  const placed = placedOf(drawing.cells ?? []);
  let next = 0;
  return Array.from({ length: perBar * bars }, (_, index) => {
    const slot = index * grid;
    const bar = Math.floor(index / perBar);
    const frame: Frame = { slot, grid, bar: bar * counts.length, barSlots: counts.length };
    // Cells follow one another, so those of a beat begin where those of the beat before ended.
    while (next < placed.length && placed[next].to <= slot) next += 1;
    let after = next;
    while (after < placed.length && placed[after].from < slot + grid) after += 1;
    const here = placed.slice(next, after);
    return {
      slot,
      bar,
      first: index % perBar === 0,
      last: index % perBar === perBar - 1,
      counts: countsAt(drawing, slot),
      spans: here.map((cell) => spanAt(cell, frame)),
      marks: here.flatMap((cell) => marksAt(cell, frame)),
    };
  });
}

/**
 * The cells that begin within so many slots, each with no more strokes than are drawn.
 *
 * @example cellsWithin([{ slots: 3 }, { slots: 3 }], 3) // [{ slots: 3 }]
 */
export function cellsWithin(cells: readonly RulerCell[], slots: number): RulerCell[] {
  const within: RulerCell[] = [];
  let from = 0;
  for (const cell of cells) {
    if (from >= slots) break;
    within.push(cell.marks ? { ...cell, marks: cell.marks.slice(0, slots - from) } : cell);
    from += cell.slots;
  }
  return within;
}

/** A beat and the bar around it, in slots over all bars. */
interface Frame {
  slot: number;
  grid: number;
  bar: number;
  barSlots: number;
}

interface Placed extends RulerCell {
  from: number;
  to: number;
}

function placedOf(cells: readonly RulerCell[]): Placed[] {
  let to = 0;
  return cells.map((cell) => ({ ...cell, from: to, to: (to += cell.slots) }));
}

function countsAt({ counts, grid, marked = [] }: RulerDrawing, slot: number): BeatAt['counts'] {
  return Array.from({ length: grid }, (_, i) => ({
    x: markAt(i, grid),
    text: counts[(slot + i) % counts.length],
    long: i === 0,
    boxed: marked.includes(slot + i),
  }));
}

function spanAt(cell: Placed, frame: Frame): SpanAt {
  const { slot, grid } = frame;
  const [opens, closes] = [cell.from >= slot, cell.to <= slot + grid];
  const left = (opens ? cell.from - slot + GAP : 0) / grid;
  const right = (closes ? cell.to - slot - GAP : grid) / grid;
  return {
    kind: cell.kind ?? 'cell',
    x1: percent(left),
    x2: percent(right),
    width: percent(right - left),
    opens,
    closes,
    names: namesIn(cell, frame),
  };
}

/** Where a name stands: in the middle of what a bar has of its cell; where lines break, of what one beat has. */
function namesIn(cell: Placed, frame: Frame): NameAt[] {
  const { slot, grid, bar, barSlots } = frame;
  const [from, to] = [Math.max(cell.from, bar), Math.min(cell.to, bar + barSlots)];
  const middle = (from + to) / 2;
  const whole = namesAt(cell, middle - slot, to - from, grid);
  if (from >= slot && to <= slot + grid) return whole;
  const here =
    middle >= slot && middle < slot + grid ? whole.map((name) => ({ ...name, when: 'one-line' as const })) : [];
  const [start, end] = [Math.max(from, slot) - slot, Math.min(to, slot + grid) - slot];
  if (!hasMost(from, to, frame)) return here;
  const part = namesAt(cell, (start + end) / 2, end - start, grid);
  return [...here, ...part.map((name) => ({ ...name, when: 'broken' as const }))];
}

/** Whether no other beat has more of a stretch, and none before it as much. */
function hasMost(from: number, to: number, { slot, grid }: Frame): boolean {
  const share = (start: number) => Math.min(to, start + grid) - Math.max(from, start);
  for (let start = slot - grid; start > from - grid; start -= grid) if (share(start) >= share(slot)) return false;
  for (let start = slot + grid; start < to; start += grid) if (share(start) > share(slot)) return false;
  return true;
}

function namesAt({ name = '', short = name }: Placed, middle: number, slots: number, grid: number): NameAt[] {
  const x = percent(middle / grid);
  const needs = (text: string) => STEPS.find((step) => (step * slots) / grid >= text.length * LETTER);
  const [long, less] = [needs(name), needs(short)];
  const names: NameAt[] = [];
  if (name && long) names.push({ text: name, x, from: long });
  if (short && less && less !== long) names.push({ text: short, x, from: less, ...(long ? { until: long } : {}) });
  return names;
}

function marksAt({ from, marks = [] }: Placed, { slot, grid }: Frame): BeatAt['marks'] {
  const first = Math.max(0, slot - from);
  return marks.slice(first, Math.max(0, slot + grid - from)).flatMap((strokes, i) =>
    strokes.map((mark) => ({
      ...mark,
      x: markAt(from + first + i - slot + (mark.at ?? 0), grid),
      y: ROW.first + ROW.height * (mark.row ?? 0),
    })),
  );
}
