import { TICKS_PER_QUARTER, type Fragment, type Ticks, type WrittenBar } from '../../core/index.ts';
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
  /** Tens of pixels between two bars that share a line: more than none where this bar's last note and the next one's first need it. */
  gap: number;
}

/** Room between a bar line and what stands after it. */
const AFTER_BAR_LINE = 4;
/** Room between the last note of a bar and its bar line. */
const BEFORE_BAR_LINE = 5;
/** Room between the last mark of a bar's ruler and its end. */
const AFTER_MARK = 9;
/** The most a bar line stands beyond a picture that ends its line: what the style sheet leaves there. */
const MOST_OVER = 20;
/** No note is nearer to the next one than this, middle to middle. */
const NEAREST = 20;
/** Least width of a quarter by the slots in it, so that a plain bar is not cramped (ours). */
const QUARTER = [96, 112, 116, 120];
/** The most tens of pixels a column of the page's grid may have; a wider beat takes several columns. */
export const MOST_TENS = 40;

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

/** Pixels a tick that two neighbors need. */
const perTick = (room: number, ticks: Ticks): number => room / ticks;

function needOfColumns(columns: Column[]): number[] {
  return columns.slice(1).map((column, i) => {
    const room = Math.max(NEAREST, columns[i].right + SIZE.air + column.left);
    return perTick(room, column.tick - columns[i].tick);
  });
}

/** What stands last in a bar: a note or a mark of the ruler, and how far behind it the bar line is. */
interface Last {
  tick: Ticks;
  reach: number;
}

function lastsOf(bar: WrittenBar, columns: Column[], labels: readonly CountLabel[]): Last[] {
  const end = bar.tick + bar.ticks;
  const column = columns[columns.length - 1];
  const mark = labels.findLast(({ tick }) => tick >= bar.tick && tick < end);
  const note = column && { tick: column.tick, reach: Math.max(column.right, column.flag) + BEFORE_BAR_LINE };
  return [note, mark && { tick: mark.tick, reach: AFTER_MARK }].filter((last) => last !== undefined);
}

/** The piece as its spacing sees it; the columns and what is last, bar by bar. */
interface Spaced {
  bars: readonly WrittenBar[];
  columns: Column[][];
  lasts: Last[][];
  pad: number;
}

/** Room that the bar line at the end of a line may take beyond the edge of its picture. */
const roomAtLineEnd = (pad: number): number => Math.max(0, Math.min(MOST_OVER, pad - SIZE.head - AFTER_BAR_LINE));

/** Room for each bar line before the next bar's first note, or at the end of the line. */
function roomsOver({ bars, columns, pad }: Spaced): number[] {
  return bars.map((bar, i) => {
    const next = columns[i + 1]?.[0];
    if (!next) return roomAtLineEnd(pad);
    const left = next.tick === bar.tick + bar.ticks ? next.left : SIZE.head;
    return Math.max(0, pad - left - AFTER_BAR_LINE);
  });
}

function needOfBarEnds({ bars, lasts, pad }: Spaced): number[] {
  return lasts.flatMap((own, i) => {
    const end = bars[i].tick + bars[i].ticks;
    return own.map(({ tick, reach }) => perTick(reach + pad - roomAtLineEnd(pad), end - tick));
  });
}

/** How far each bar line has to stand beyond its edge, so that it clears what is last. */
function leastOver({ bars, lasts, pad }: Spaced, pixels: number): number[] {
  return bars.map((bar, i) => {
    const end = bar.tick + bar.ticks;
    return Math.max(0, ...lasts[i].map(({ tick, reach }) => reach + pad - (end - tick) * pixels));
  });
}

/** Tens of pixels that two bars on one line stand apart, so that what is last has room before the bar line. */
function gapOf(spaced: Spaced, pixels: number): number {
  const rooms = roomsOver(spaced);
  const short = leastOver(spaced, pixels).map((least, i) => least - rooms[i]);
  return Math.max(0, Math.ceil(Math.max(0, ...short.slice(0, -1)) / 10));
}

/** How far each bar line stands beyond its edge: where there is room as far as the others, so that lines end alike. */
function overEdges(spaced: Spaced, pixels: number, gap: number): Map<number, number> {
  const least = leastOver(spaced, pixels);
  const rooms = roomsOver(spaced).map((room, i, all) => (i < all.length - 1 ? room + gap * 10 : room));
  const most = Math.max(gap * 10, ...least);
  return new Map(spaced.bars.map(({ number }, i) => [number, Math.max(least[i], Math.min(most, rooms[i]))]));
}

function needOfCounts(labels: readonly CountLabel[]): number[] {
  const width = (label: CountLabel): number => textWidth(label.text, label.strong ? SIZE.beat : SIZE.count);
  return labels.slice(1).map((label, i) => {
    const room = (width(labels[i]) + width(label)) / 2 + SIZE.air;
    return perTick(room, label.tick - labels[i].tick);
  });
}

const floorOf = (bar: WrittenBar): number =>
  QUARTER[Math.min(QUARTER.length, Math.ceil(TICKS_PER_QUARTER / bar.slotTicks)) - 1] / TICKS_PER_QUARTER;

/**
 * The spacing of a piece: wide enough everywhere for the tightest place inside a bar. Where two bars that share a line come
 * closer than that, as after a diddle before a flam, they stand apart by a gap; the piece is not stretched for it.
 */
export function spacingOf(bars: readonly WrittenBar[], labels: readonly CountLabel[]): Spacing {
  const columns = bars.map(columnsOf);
  const lasts = bars.map((bar, i) => lastsOf(bar, columns[i], labels));
  const pad = padFor(bars, columns);
  const spaced = { bars, columns, lasts, pad };
  const whole = unitOf(bars.flatMap((bar) => bar.fragments));
  const least = Math.max(
    ...columns.flatMap(needOfColumns),
    ...needOfBarEnds(spaced),
    ...bars.flatMap((bar) => needOfCounts(labels.filter((label) => isIn(bar, label)))),
    ...bars.map(floorOf),
  );
  const perBeat = Math.ceil((least * whole) / (10 * MOST_TENS) - 1e-9);
  const unit = whole / 2 ** Math.max(0, Math.ceil(Math.log2(perBeat)));
  const tens = Math.ceil((least * unit) / 10 - 1e-9);
  const pixels = (tens * 10) / unit;
  const gap = gapOf(spaced, pixels);
  return { pad, pixels, unit, tens, over: overEdges(spaced, pixels, gap), gap };
}

const isIn = ({ tick, ticks }: WrittenBar, label: CountLabel): boolean =>
  label.tick >= tick && label.tick < tick + ticks;
