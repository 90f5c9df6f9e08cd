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
import type { PlacedStroke } from './merge.ts';
import type { Section } from './sections.ts';

/** The beginning of a slot: where one is when it is heard, and where a change of the request can take hold. */
export interface Place {
  /** In the pass. */
  tick: Ticks;
  seconds: Seconds;
  phase: Phase;
  /** Bar and tick of the timeline of its phase, as a Position has them. */
  bar: number;
  own: Ticks;
  count: string;
  /** Whether a beat begins here. */
  beat: boolean;
  /** Whether a figure that was written out begins before this place and ends at or after it. */
  split: boolean;
}

type Slot = Omit<Place, 'seconds' | 'split'>;

/** A system by its name, the default for a name that is none. */
const systemOf = (name?: string): CountSystem => COUNT_SYSTEMS.find((system) => system === name) ?? COUNT_SYSTEMS[0];

function slotsOfBar(bar: TimelineBar, phase: Phase, number: number, own: Ticks, counting?: string): Slot[] {
  const step = slotTicks(bar.meter, bar.grid);
  return countSyllables(bar.meter, bar.grid, systemOf(counting)).map((count, slot) => ({
    tick: bar.tick + slot * step,
    phase,
    bar: number,
    own: own + slot * step,
    count,
    beat: slot % bar.grid === 0,
  }));
}

/** A count-in says the beats alone: each number stands until the next one. */
export function countInSlots(bar: TimelineBar, counting?: string): Slot[] {
  let said = '';
  return slotsOfBar(bar, 'count-in', 0, -meterOf(bar.meter).barTicks, counting).map((slot) => {
    if (slot.beat) said = slot.count;
    return { ...slot, count: said };
  });
}

function sectionSlots({ phase, timeline, at }: Section, counting?: string): Slot[] {
  return timeline.bars.flatMap((bar, i) =>
    slotsOfBar({ ...bar, tick: bar.tick + at }, phase, i + 1, bar.tick, counting),
  );
}

/** The slots of a pickup: the last ones of a bar before bar 1. */
function pickupSlots({ phase, timeline, at }: Section, counting?: string): Slot[] {
  const [bar] = timeline.bars;
  const ticks = meterOf(bar.meter).barTicks;
  return slotsOfBar({ ...bar, tick: at - ticks }, phase, 0, -ticks, counting).filter(
    ({ tick }) => tick >= at - timeline.pickupTicks,
  );
}

function layOver(slots: Slot[], section: Section, counting?: string): Slot[] {
  if (!section.pickup || section.timeline.pickupTicks === 0) return slots;
  const over = pickupSlots(section, counting);
  const free = slots.filter(({ tick }) => tick < over[0].tick || tick >= section.at);
  return [...free, ...over].sort((a, b) => a.tick - b.tick);
}

/** Slots of all sections, pickups laid over what comes before them; `lead` holds the slots before the first one. */
export function slotsIn(sections: readonly Section[], lead: Slot[], counting?: string): Slot[] {
  const plain = [...lead, ...sections.flatMap((section) => sectionSlots(section, counting))];
  return sections.reduce((slots, section) => layOver(slots, section, counting), plain);
}

/** Slots with their times, and whether they stand inside a written-out figure. */
export function placesOf(slots: Slot[], placed: readonly PlacedStroke[], at: (tick: Ticks) => Seconds): Place[] {
  const figures = placed.filter(({ stroke, home }) => stroke.tick < home);
  return slots.map((slot) => ({
    ...slot,
    seconds: at(slot.tick),
    split: figures.some(({ stroke, home }) => stroke.tick < slot.tick && slot.tick <= home),
  }));
}
