import { above0, must, shown } from '../check.ts';
import { refuse, type Result } from '../fault.ts';
import { TICKS_PER_QUARTER, type Grid, type MeterText, type Ticks } from './units.ts';

/** A meter, read: how many beats a bar has and how long they are. */
export interface Meter {
  text: MeterText;
  upper: number;
  lower: 2 | 4 | 8 | 16;
  /** Notes of the lower figure that belong together, in order: `2+2+3/8` gives 2, 2, 3; `6/8` gives 3, 3; `4/4` gives 4. */
  readonly groups: readonly number[];
  /** Whether a beat is three notes of the lower figure: 6/8, 9/8 and 12/8. */
  compound: boolean;
  beats: number;
  beatTicks: Ticks;
  barTicks: Ticks;
}

const LOWER = [2, 4, 8, 16] as const;
/** The most notes of the lower figure a bar may have. */
export const MAX_UPPER = 15;
/** The finest grid: slots a beat. */
export const MAX_GRID = 8;
const COMPOUND: readonly MeterText[] = ['6/8', '9/8', '12/8'];
const METER = /^([1-9]\d{0,3}(?:\+[1-9]\d{0,3})*)\/(\d{1,3})$/;
const COULD_STAND = 'a meter such as 4/4, 6/8 or 2+2+3/8: 1 to 15 over 2, 4, 8 or 16';

/**
 * Reads a meter: 1 to 15 over 2, 4, 8 or 16, or grouped.
 * @example
 * readMeter('6/8') // → { ok: true, meter: { beats: 2, beatTicks: 30240, barTicks: 60480 } }
 */
export function readMeter(text: MeterText): Result<'meter', Meter> {
  const parts = typeof text === 'string' ? METER.exec(text) : null;
  if (!parts) {
    const found = typeof text === 'string' ? `"${text}"` : shown(text);
    return refuse(
      0,
      text === '' ? 'nothing' : typeof text === 'string' ? text : shown(text),
      COULD_STAND,
      `${found} is not a meter; ${COULD_STAND} can stand here`,
    );
  }
  const groups = parts[1].split('+').map(Number);
  const upper = groups.reduce((a, b) => a + b, 0);
  const lower = LOWER.find((n) => String(n) === parts[2]);
  if (upper > MAX_UPPER)
    return refuse(0, text, 'at most 15', `"${text}" has ${upper} above the line; at most ${MAX_UPPER} can stand there`);
  if (!lower)
    return refuse(
      text.indexOf('/') + 1,
      parts[2],
      '2, 4, 8 or 16',
      `"${parts[2]}" is not a note value; 2, 4, 8 or 16 can stand here`,
    );
  return { ok: true, meter: build(text, groups, upper, lower) };
}

function build(text: MeterText, groups: number[], upper: number, lower: Meter['lower']): Meter {
  const compound = COMPOUND.includes(text);
  const note = (4 * TICKS_PER_QUARTER) / lower;
  const beats = compound ? upper / 3 : upper;
  return {
    text,
    upper,
    lower,
    groups: compound ? Array.from({ length: beats }, () => 3) : groups,
    compound,
    beats,
    beatTicks: compound ? 3 * note : note,
    barTicks: upper * note,
  };
}

/** Meters that have been read: the same few are asked for at every slot. */
const known = new Map<MeterText, Meter>();

/** The meter of a text that is known to be one. Throws RangeError for any other. */
export function meterOf(text: MeterText): Meter {
  const before = known.get(text);
  if (before) return before;
  const read = readMeter(text);
  if (!read.ok) throw new RangeError(read.fault.message);
  known.set(text, read.meter);
  return read.meter;
}

/** Whether this is a grid: a whole number of slots a beat, 1 to 8. */
export function isGrid(grid: unknown): grid is Grid {
  return Number.isInteger(grid) && (grid as number) >= 1 && (grid as number) <= MAX_GRID;
}

/** Throws RangeError for what is no grid. */
export function checkGrid(grid: Grid): void {
  must(isGrid(grid), 'grid', grid, `1 to ${MAX_GRID} slots a beat`);
}

/**
 * Ticks of one slot.
 * @example
 * slotTicks('4/4', 4) // → 5040
 */
export function slotTicks(meter: MeterText, grid: Grid): Ticks {
  checkGrid(grid);
  return meterOf(meter).beatTicks / grid;
}

/**
 * Slots of a whole bar.
 * @example
 * slotsOf('4/4', 4) // → 16
 */
export function slotsOf(meter: MeterText, grid: Grid): number {
  checkGrid(grid);
  return meterOf(meter).beats * grid;
}

/**
 * Quarter notes a minute for a tempo in beats a minute as a page shows it: dotted quarters in 6/8, 9/8 and 12/8,
 * quarters in every other meter. Throws RangeError for what is no meter or no tempo.
 * @example
 * quartersPerMinute('6/8', 60) // → 90
 */
export function quartersPerMinute(meter: MeterText, tempo: number): number {
  above0('tempo', tempo);
  return meterOf(meter).compound ? tempo * 1.5 : tempo;
}
