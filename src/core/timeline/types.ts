import type { Limb } from '../sticking/types.ts';
import type { Surface } from '../sticking/limbs.ts';
import type { Grid, MeterText, Seconds, SlotIndex, Ticks } from '../time/units.ts';

/** What a stroke is, one each. */
export type StrokeKind = 'single' | 'diddle' | 'flam' | 'drag' | 'ruff' | 'buzz' | 'foot' | 'grace';

/** One sounding stroke at its exact place. */
export interface Stroke {
  /** Made of bar, slot, part and grace index, never of the hand: `1.4.0`, `1.4.1`, `1.4.0k` (its kick), `1.4.0g0`. */
  id: string;
  /** A grace note's tick is its primary's, unless it is written out. */
  tick: Ticks;
  /** From 1; 0 for a pickup. */
  bar: number;
  slot: SlotIndex;
  /** The syllable of its slot with its beat: `4 a`, on the beat `4`. */
  count: string;
  limb: Limb;
  kind: StrokeKind;
  accent: boolean;
  ghost: boolean;
  /** Index of its cell in the phrase. */
  cell: number;
  surface: Surface;
  /** Part of the slot, from 0, of `parts`. */
  part: number;
  parts: number;
  /** How long it may ring: its part of the slot and the holds after it. 0 for a grace note. */
  length: Ticks;
  /** The strong accent, written `^`. */
  marcato: boolean;
  /** A multiple-bounce stroke. */
  buzz: boolean;
  /** Which of the two lines it was written in. */
  line: 'hands' | 'feet';
  /** For a primary: ids of its grace notes, in the order they sound. */
  graces: string[];
  /** For a grace note, written out or not: the id of its primary. */
  primary?: string;
  /** True for a grace note and a primary that were written out as measured notes. */
  opened: boolean;
  /** For a diddle: 0 for its first stroke, 1 for the next …; 0 elsewhere. */
  rebound: number;
}

/** A bar of the timeline; bars are numbered from 1, so `bars[0]` is bar 1. */
export interface TimelineBar {
  tick: Ticks;
  meter: MeterText;
  grid: Grid;
  slots: number;
}

/** A phrase as strokes with exact times, in order of tick; what everything downstream reads. */
export interface Timeline {
  strokes: Stroke[];
  bars: TimelineBar[];
  /** Length of the bars from bar 1 on. */
  ticks: Ticks;
  /** Length of the pickup, 0 where there is none. */
  pickupTicks: Ticks;
  /** The cells, for brackets: where each starts and how long it is. */
  cells: TimelineCell[];
}

/** Where a cell stands. */
export interface TimelineCell {
  id: string;
  tick: Ticks;
  ticks: Ticks;
  slots: number;
  bar: number;
  /** Name of the slot it starts on: `2 &`. */
  count: string;
}

/** When a stroke sounds. */
export interface ScheduledStroke {
  id: string;
  seconds: Seconds;
}

/** From a tick on, this tempo. */
export interface TempoChange {
  tick: Ticks;
  bpm: number;
}

/** How ticks become seconds. */
export interface ScheduleOptions {
  /** Quarter notes a minute, or a list of changes; the first one must stand at or before the first stroke. */
  bpm: number | readonly TempoChange[];
  /** Long to short, 1 (even) to 4, for grids of 2 and 4: 2 is the triplet's shuffle. */
  swing?: number;
  /** Gap between a grace note and the next note of its figure; never more than half the gap to the stroke before. */
  flamMs?: number;
  /** Whether the phrase is repeated, so that the stroke before the first one is the last one. */
  loop?: boolean;
}
