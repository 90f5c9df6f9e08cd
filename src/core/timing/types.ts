import type { Limb } from '../sticking/limbs.ts';
import type { Bpm, Seconds } from '../time/units.ts';
import type { TempoChange } from '../timeline/types.ts';

/** Something that was struck. */
export interface Hit {
  /** From the beginning of bar 1; before it, below 0. */
  seconds: Seconds;
  /** Left out where nobody knows. */
  limb?: Limb;
  /** How loud, 0 to 1. */
  level?: number;
}

/** What was asked for, and how far a hit may lie from it. */
export interface TimingOptions {
  /** Quarter notes a minute, or a list of changes over the whole take. */
  bpm: Bpm | readonly TempoChange[];
  swing?: number;
  flamMs?: number;
  /** Times round, 1 by default; a pickup stands before the first one only. */
  passes?: number;
  /** How far a hit may lie from its stroke, 0.15 s by default (ours). */
  window?: Seconds;
}

/** A stroke of the take, and the hit that was meant for it. */
export interface TimedStroke {
  id: string;
  /** Times round, from 1. */
  pass: number;
  limb: Limb;
  /** Index of the hit as given; nothing where the stroke was missed. */
  hit?: number;
  /** Late is positive. */
  offset?: Seconds;
}

/** A hit that was meant for no stroke, at the nearest slot in scheduled seconds, the earlier one of two as near. */
export interface ExtraHit {
  /** Index of the hit as given. */
  hit: number;
  pass: number;
  bar: number;
  count: string;
}

/** How strokes were hit. */
export interface Spread {
  /** How many were asked for, and how many of them were missed. */
  strokes: number;
  missed: number;
  /** Mean offset; nothing where none was hit. */
  mean: Seconds | undefined;
  /** Standard deviation, by one less than the hits; nothing below two of them. */
  sd: Seconds | undefined;
}

/** How wide several figures were. */
export interface Widths {
  count: number;
  mean: number | undefined;
  sd: number | undefined;
}

/** A take held against what was asked for. */
export interface Timing {
  /** In order of time; at one instant R L K H. */
  strokes: TimedStroke[];
  /** In order of time. */
  extra: ExtraHit[];
  /** Grace notes included, as for each limb. */
  overall: Spread;
  limbs: Partial<Record<Limb, Spread>>;
  /** Main strokes of each slot of all bars from bar 1 on, passes together. */
  slots: Spread[];
  /** The first main stroke of each cell, passes together. */
  cells: Spread[];
  /** Seconds from the grace note of a flam to its primary, where both were hit. */
  flams: Widths;
  /**
   * Where the second stroke of a diddle falls between the first one and the next stroke at the slot's end, as the share that
   * is left after it: 0.5 is even. Where nothing is struck at the slot's end, a diddle is left out.
   */
  diddles: Widths;
  /** By how much faster, or below 0 slower, the take was than asked for; nothing where fewer than two strokes were hit. */
  drift: Bpm | undefined;
}
