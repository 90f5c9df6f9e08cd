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
  /** Whether no bar may follow another on a line: there is no room for the next bar's first note beside this one's last. */
  apart: boolean;
}

/** Room between a bar line and what stands after it. */
const AFTER_BAR_LINE = 4;
/** Room between the last note of a bar and its bar line. */
const BEFORE_BAR_LINE = 5;
/** Room between the last mark of a bar's ruler and its end. */
const AFTER_MARK = 9;
/** The most a bar line stands beyond a picture that ends its line: what the style sheet leaves there. */
const MOST_OVER = 20;
/** So much narrower must a piece be for its bars to be kept on lines of their own (ours). */
const WORTH_IT = 0.85;
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

/** Room that a bar line may take beyond the edge of its picture: up to the next bar's first note, or the end of the line. */
function roomsOver({ bars, columns, pad }: Spaced, apart: boolean): number[] {
  return bars.map((bar, i) => {
    const next = apart && bar.number > 0 ? undefined : columns[i + 1]?.[0];
    if (!next) return Math.max(0, Math.min(MOST_OVER, pad - SIZE.head - AFTER_BAR_LINE));
    const left = next.tick === bar.tick + bar.ticks ? next.left : SIZE.head;
    return Math.max(0, pad - left - AFTER_BAR_LINE);
  });
}

function needOfBarEnds(spaced: Spaced, apart: boolean): number[] {
  const rooms = roomsOver(spaced, apart);
  return spaced.lasts.flatMap((lasts, i) => {
    const end = spaced.bars[i].tick + spaced.bars[i].ticks;
    return lasts.map(({ tick, reach }) => perTick(reach + spaced.pad - rooms[i], end - tick));
  });
}

/** How far each bar line has to stand beyond its edge, so that it clears what is last. */
function leastOver({ bars, lasts, pad }: Spaced, pixels: number): number[] {
  return bars.map((bar, i) => {
    const end = bar.tick + bar.ticks;
    return Math.max(0, ...lasts[i].map(({ tick, reach }) => reach + pad - (end - tick) * pixels));
  });
}

/** How far each bar line stands beyond its edge: where there is room as far as the others, so that lines end alike. */
function overEdges(spaced: Spaced, pixels: number, apart: boolean): Map<number, number> {
  const least = leastOver(spaced, pixels);
  const rooms = roomsOver(spaced, apart);
  const most = Math.max(...least);
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

/** Columns that may stand side by side on a line: those of a bar, and of a pickup and bar 1. */
function runsOf({ bars, columns }: Spaced, apart: boolean): Column[][] {
  if (!apart) return [columns.flat()];
  return bars[0].number === 0 ? [columns.slice(0, 2).flat(), ...columns.slice(2)] : columns;
}

function spacingWith(spaced: Spaced, labels: readonly CountLabel[], apart: boolean): Spacing {
  const { bars, pad } = spaced;
  const whole = unitOf(bars.flatMap((bar) => bar.fragments));
  const least = Math.max(
    ...runsOf(spaced, apart).flatMap(needOfColumns),
    ...needOfBarEnds(spaced, apart),
    ...needOfCounts(labels),
    ...bars.map(floorOf),
  );
  const perBeat = Math.ceil((least * whole) / (10 * MOST_TENS) - 1e-9);
  const unit = whole / 2 ** Math.max(0, Math.ceil(Math.log2(perBeat)));
  const tens = Math.ceil((least * unit) / 10 - 1e-9);
  const pixels = (tens * 10) / unit;
  return { pad, pixels, unit, tens, over: overEdges(spaced, pixels, apart), apart };
}

/**
 * The spacing of a piece: wide enough everywhere for its tightest place. Where that is between two bars, such as a diddle
 * and a flam, each bar has a line of its own, so that the whole piece is not stretched for it.
 */
export function spacingOf(bars: readonly WrittenBar[], labels: readonly CountLabel[]): Spacing {
  const columns = bars.map(columnsOf);
  const lasts = bars.map((bar, i) => lastsOf(bar, columns[i], labels));
  const spaced = { bars, columns, lasts, pad: padFor(bars, columns) };
  const together = spacingWith(spaced, labels, false);
  const apart = spacingWith(spaced, labels, true);
  return apart.pixels < together.pixels * WORTH_IT ? apart : together;
}
