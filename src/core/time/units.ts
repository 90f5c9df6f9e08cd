/**
 * The units of time and place. They are aliases, not brands: they name what a number means where it is written down.
 */

/** A whole number of ticks, 20,160 to a quarter note. Times before bar 1 are negative. */
export type Ticks = number;
/** Seconds, after the one conversion in `schedule`. */
export type Seconds = number;
/** Milliseconds. */
export type Milliseconds = number;
/** Quarter notes a minute. */
export type Bpm = number;
/** A place on the grid, counted from 0. */
export type SlotIndex = number;
/** Slots a beat, 1 to 8: 3 triplets, 4 sixteenths. */
export type Grid = number;
/** A meter as it is written: `4/4`, `6/8`, `2+2+3/8`. */
export type MeterText = string;

/** Slowest and fastest tempo that a page offers, in beats a minute. */
export const TEMPO_LIMITS = { min: 30, max: 300 } as const;

/** Ticks to a quarter note: 2⁶·3²·5·7, so that every grid, split in two, three or four, is whole. */
export const TICKS_PER_QUARTER: Ticks = 20160;
