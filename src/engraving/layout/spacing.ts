import { TICKS_PER_QUARTER, type Ticks } from '../../core/index.ts';
import type { Fragment } from '../rhythm/fragments.ts';
import type { WrittenBar } from '../rhythm/voice.ts';
import { columnsOf, type Column } from './columns.ts';
import type { CountLabel } from './counts.ts';
import { SIZE, textWidth } from './sizes.ts';

/** How time becomes room: `x = pad + (tick - fragment's tick) × pixels`, the same over the whole piece. */
export interface Spacing {
  pad: number;
  /** Pixels to a tick. */
  pixels: number;
  /** The length that one column of the page's grid stands for, and its width in tens of pixels. */
  unit: Ticks;
  tens: number;
  /** How far the bar line stands beyond its picture's edge, by number of bar: into the room before the next note. */
  over: ReadonlyMap<number, number>;
}

/** Room between a bar line and what stands after it. */
const AFTER_BAR_LINE = 4;
/** Room between the last note of a bar and its bar line. */
const BEFORE_BAR_LINE = 5;
/** No note is nearer to the next one than this, middle to middle. */
const NEAREST = 20;
/** Least width of a quarter by the slots in it, so that a plain bar is not cramped (ours). */
const QUARTER = [96, 112, 116, 120];
/** The most tens of pixels a column of the page's grid may have; a wider beat takes several columns. */
const MOST_TENS = 40;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** The longest time that every fragment is a multiple of. */
export const unitOf = (fragments: readonly Fragment[]): Ticks => fragments.map((f) => f.ticks).reduce(gcd);

function padFor(bars: readonly WrittenBar[], columns: Column[][]): number {
  const starts = new Set(bars.flatMap((bar) => bar.fragments.map((fragment) => fragment.tick)));
  const lefts = columns
    .flat()
    .filter((column) => starts.has(column.tick))
    .map((column) => column.left);
  return Math.ceil(Math.max(SIZE.head + 4, ...lefts) + AFTER_BAR_LINE);
}

/** Pixels a tick that two neighbours need. */
const apart = (room: number, ticks: Ticks): number => room / ticks;

function needOfColumns(columns: Column[]): number[] {
  return columns.slice(1).map((column, i) => {
    const room = Math.max(NEAREST, columns[i].right + SIZE.air + column.left);
    return apart(room, column.tick - columns[i].tick);
  });
}

/** Room that a bar line may take beyond the edge of its picture: up to the next bar's first note, or the end of the line. */
function roomsOver(columns: Column[][], bars: readonly WrittenBar[], pad: number): number[] {
  return bars.map((bar, i) => {
    const next = columns[i + 1]?.[0];
    const left = next && next.tick === bar.tick + bar.ticks ? next.left : SIZE.head;
    return Math.max(0, pad - left - AFTER_BAR_LINE);
  });
}

const lastRight = (own: Column[]): number => Math.max(own[own.length - 1].right, own[own.length - 1].flag);

function needOfBarEnds(bars: readonly WrittenBar[], columns: Column[][], pad: number): number[] {
  const rooms = roomsOver(columns, bars, pad);
  return columns.flatMap((own, i) => {
    if (own.length === 0) return [];
    const end = bars[i].tick + bars[i].ticks;
    return [apart(lastRight(own) + BEFORE_BAR_LINE + pad - rooms[i], end - own[own.length - 1].tick)];
  });
}

/** How far each bar line has to stand beyond its edge, so that it clears the last note. */
function overEdges(bars: readonly WrittenBar[], columns: Column[][], pad: number, pixels: number): Map<number, number> {
  const over = columns.map((own, i): [number, number] => {
    if (own.length === 0) return [bars[i].number, 0];
    const last = (bars[i].tick + bars[i].ticks - own[own.length - 1].tick) * pixels - pad;
    return [bars[i].number, Math.max(0, lastRight(own) + BEFORE_BAR_LINE - last)];
  });
  return new Map(over);
}

function needOfCounts(labels: readonly CountLabel[]): number[] {
  const width = (label: CountLabel): number => textWidth(label.text, label.strong ? SIZE.beat : SIZE.count);
  return labels.slice(1).map((label, i) => {
    const room = (width(labels[i]) + width(label)) / 2 + SIZE.air;
    return apart(room, label.tick - labels[i].tick);
  });
}

const floorOf = (bar: WrittenBar): number =>
  QUARTER[Math.min(QUARTER.length, Math.ceil(TICKS_PER_QUARTER / bar.slotTicks)) - 1] / TICKS_PER_QUARTER;

/** The spacing of a piece: wide enough everywhere for its tightest place. */
export function spacingOf(bars: readonly WrittenBar[], labels: readonly CountLabel[]): Spacing {
  const columns = bars.map(columnsOf);
  const pad = padFor(bars, columns);
  const whole = unitOf(bars.flatMap((bar) => bar.fragments));
  const least = Math.max(
    ...needOfColumns(columns.flat()),
    ...needOfBarEnds(bars, columns, pad),
    ...needOfCounts(labels),
    ...bars.map(floorOf),
  );
  const perBeat = Math.ceil((least * whole) / (10 * MOST_TENS) - 1e-9);
  const unit = whole / 2 ** Math.max(0, Math.ceil(Math.log2(perBeat)));
  const tens = Math.ceil((least * unit) / 10 - 1e-9);
  const pixels = (tens * 10) / unit;
  return { pad, pixels, unit, tens, over: overEdges(bars, columns, pad, pixels) };
}
