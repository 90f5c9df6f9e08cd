import type { Grid, MeterText } from '../time/units.ts';
import type { Hand, Limb, Surface } from './limbs.ts';

export type { Foot, Hand, Limb } from './limbs.ts';

/** The most a text may hold, groups written out; characters count as they are printed, mirrored or not. */
export const LIMITS = { characters: 4096, bars: 32, barSlots: 128, slots: 4096 } as const;

/** A grace note: the hand that plays it and, where written, the surface. */
export interface Grace {
  hand: Hand;
  surface?: Surface;
}

/** One stroke as it is written. An absent key means "not written". */
export interface StrokeText {
  limb: Limb;
  /** In the order they sound; one is a flam, two a drag, three a four-stroke ruff. */
  graces?: Grace[];
  accent?: '>' | '^';
  ghost?: true;
  buzz?: true;
  surface?: Surface;
}

/** Strokes that sound together, in the order R L K H; none is a rest. */
export type Chord = StrokeText[];

/** A slot: one to four parts that share it evenly, or the stroke before ringing on. */
export interface SlotItem {
  kind: 'slot';
  parts: Chord[];
}
export interface HoldItem {
  kind: 'hold';
}
export interface BarLineItem {
  kind: 'bar';
}
export interface HeadItem {
  kind: 'head';
  meter: MeterText;
  grid: Grid;
}
export interface GroupItem {
  kind: 'group';
  items: Item[];
  count: number;
}
export type Item = SlotItem | HoldItem | BarLineItem | HeadItem | GroupItem;

/** A sticking: the hands' line and, where written, the feet's line under it. It holds no source positions. */
export interface Sticking {
  hands: Item[];
  feet?: Item[];
}
