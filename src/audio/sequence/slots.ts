import {
  COUNT_SYSTEMS,
  countSyllables,
  meterOf,
  slotTicks,
  type CountSystem,
  type Seconds,
  type Ticks,
  type TimelineBar,
} from '../../core/index.ts';
import type { Phase } from '../types.ts';
import type { PlacedStroke } from './placed-strokes.ts';
import type { Section } from './sections.ts';

/** A slot of a pass as it is heard: where one is, and where a change of the request can take hold. */
export interface TimedSlot {
  /** In the pass. */
  tick: Ticks;
  seconds: Seconds;
  phase: Phase;
  /** Bar and tick of the timeline of its phase, as a Position has them. */
  bar: number;
  ownTick: Ticks;
  count: string;
  /** Whether a beat begins here. */
  beat: boolean;
  /** Whether a figure that was written out begins before this slot and ends at or after it. */
  split: boolean;
}

type PassSlot = Omit<TimedSlot, 'seconds' | 'split'>;

/** A system by its name, the default for a name that is none. */
const systemOf = (name?: string): CountSystem => COUNT_SYSTEMS.find((system) => system === name) ?? COUNT_SYSTEMS[0];

function slotsOfBar(bar: TimelineBar, phase: Phase, number: number, from: Ticks, counting?: string): PassSlot[] {
  const step = slotTicks(bar.meter, bar.grid);
  return countSyllables(bar.meter, bar.grid, systemOf(counting)).map((count, slot) => ({
    tick: bar.tick + slot * step,
    phase,
    bar: number,
    ownTick: from + slot * step,
    count,
    beat: slot % bar.grid === 0,
  }));
}

/** A count-in says the beats alone: each number stands until the next one. */
export function countInSlots(bar: TimelineBar, counting?: string): PassSlot[] {
  let said = '';
  return slotsOfBar(bar, 'count-in', 0, -meterOf(bar.meter).barTicks, counting).map((slot) => {
    if (slot.beat) said = slot.count;
    return { ...slot, count: said };
  });
}

function sectionSlots({ phase, timeline, at }: Section, counting?: string): PassSlot[] {
  return timeline.bars.flatMap((bar, i) =>
    slotsOfBar({ ...bar, tick: bar.tick + at }, phase, i + 1, bar.tick, counting),
  );
}

/** The slots of a pickup: the last ones of a bar before bar 1. */
function pickupSlots({ phase, timeline, at }: Section, counting?: string): PassSlot[] {
  const [bar] = timeline.bars;
  const ticks = meterOf(bar.meter).barTicks;
  return slotsOfBar({ ...bar, tick: at - ticks }, phase, 0, -ticks, counting).filter(
    ({ tick }) => tick >= at - timeline.pickupTicks,
  );
}

function layOver(slots: PassSlot[], section: Section, counting?: string): PassSlot[] {
  if (!section.pickup || section.timeline.pickupTicks === 0) return slots;
  const over = pickupSlots(section, counting);
  const free = slots.filter(({ tick }) => tick < over[0].tick || tick >= section.at);
  return [...free, ...over].sort((a, b) => a.tick - b.tick);
}

/** Slots of all sections, pickups laid over what comes before them; `lead` holds the slots before the first one. */
export function slotsIn(sections: readonly Section[], lead: PassSlot[], counting?: string): PassSlot[] {
  const plain = [...lead, ...sections.flatMap((section) => sectionSlots(section, counting))];
  return sections.reduce((slots, section) => layOver(slots, section, counting), plain);
}

/** Slots with their times, and whether they stand inside a written-out figure. */
export function timedSlots(
  slots: PassSlot[],
  placed: readonly PlacedStroke[],
  at: (tick: Ticks) => Seconds,
): TimedSlot[] {
  const figures = placed.filter(({ stroke, anchor }) => stroke.tick < anchor);
  return slots.map((slot) => ({
    ...slot,
    seconds: at(slot.tick),
    split: figures.some(({ stroke, anchor }) => stroke.tick < slot.tick && slot.tick <= anchor),
  }));
}

/** Which run through the same slot this one is: how often it came by before in the pass. */
function runOf(slot: TimedSlot, slots: readonly TimedSlot[]): number {
  return slots.filter(
    ({ phase, ownTick, tick }) => phase === slot.phase && ownTick === slot.ownTick && tick < slot.tick,
  ).length;
}

/** Of slots of one phase those that stand nearest to a tick of its timeline. */
function nearest(slots: readonly TimedSlot[], ownTick: number): TimedSlot[] {
  const distance = Math.min(...slots.map((slot) => Math.abs(slot.ownTick - ownTick)));
  return slots.filter((slot) => Math.abs(slot.ownTick - ownTick) === distance);
}

/** A slot of the check goes on in the pattern where there is no check any more. */
function candidates(slot: TimedSlot, slots: readonly TimedSlot[]): TimedSlot[] {
  const same = slots.filter(({ phase }) => phase === slot.phase);
  return same.length > 0 ? same : slots.filter(({ phase }) => phase === 'pattern');
}

/**
 * The same musical place in another sequence's pass: same phase, same tick of its timeline, same run through it where it has
 * as many. Where the tick is not there any more, the nearest one that is.
 */
export function sameSlot(slot: TimedSlot, from: readonly TimedSlot[], to: readonly TimedSlot[]): TimedSlot {
  const alike = nearest(candidates(slot, to), slot.ownTick);
  return alike[Math.min(runOf(slot, from), alike.length - 1)];
}
