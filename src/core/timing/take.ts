import { LIMBS } from '../sticking/limbs.ts';
import { countNames } from '../time/counts.ts';
import { slotTicks } from '../time/meter.ts';
import { clockOf, graceTimes } from '../timeline/schedule.ts';
import type { Seconds, Ticks } from '../time/units.ts';
import type { ScheduleOptions, Stroke, Timeline } from '../timeline/types.ts';

/** A stroke of one pass and when it is asked for. */
export interface AskedStroke {
  stroke: Stroke;
  pass: number;
  seconds: Seconds;
}

/** A slot of one pass and when it begins. */
export interface AskedSlot {
  pass: number;
  bar: number;
  count: string;
  seconds: Seconds;
}

/** A timeline played so many times round. */
export interface Take {
  /** In order of time; at one instant R L K H. */
  strokes: AskedStroke[];
  /** In order of time, those of a pickup first. */
  slots: AskedSlot[];
  /** How long all bars last. */
  seconds: Seconds;
}

/** Lays out all passes of a take; grace notes stand as `schedule` has them, round a loop where there are several passes. */
export function takeOf(timeline: Timeline, options: ScheduleOptions, passes: number): Take {
  const clock = clockOf(timeline, options);
  const looped = { ...options, loop: passes > 1 };
  const isPickup = pickupOf(timeline);
  const strokes: AskedStroke[] = [];
  const slots: AskedSlot[] = [];
  for (let pass = 1; pass <= passes; pass += 1) {
    const at = (tick: Ticks): Seconds => clock(tick, (pass - 1) * timeline.ticks);
    const early = graceTimes(timeline, looped, at);
    for (const stroke of timeline.strokes)
      if (pass === 1 || !isPickup(stroke))
        strokes.push({ stroke, pass, seconds: early.get(stroke.id) ?? at(stroke.tick) });
    slots.push(...slotsOfPass(timeline, pass, at));
  }
  strokes.sort(
    (a, b) => a.seconds - b.seconds || LIMBS.indexOf(a.stroke.limb) - LIMBS.indexOf(b.stroke.limb) || a.pass - b.pass,
  );
  return { strokes, slots, seconds: clock(passes * timeline.ticks, 0) };
}

/** What belongs to the pickup: not what is early only because it was written out before beat 1. */
function pickupOf({ strokes, pickupTicks }: Timeline): (stroke: Stroke) => boolean {
  const ticks = new Map(strokes.map((s) => [s.id, s.tick]));
  return ({ id, tick, primary }) => pickupTicks > 0 && (ticks.get(primary ?? id) ?? tick) < 0;
}

function slotsOfPass(timeline: Timeline, pass: number, at: (tick: Ticks) => Seconds): AskedSlot[] {
  const pickup = pass === 1 ? pickupSlots(timeline) : [];
  const bars = timeline.bars.flatMap(({ tick, meter, grid, slots }, i) => {
    const names = countNames(meter, grid);
    const length = slotTicks(meter, grid);
    return Array.from({ length: slots }, (_, slot) => ({ bar: i + 1, count: names[slot], tick: tick + slot * length }));
  });
  return [...pickup, ...bars].map(({ bar, count, tick }) => ({ pass, bar, count, seconds: at(tick) }));
}

/** The slots of a pickup, in the meter and grid of bar 1, counted to the end of a bar. */
function pickupSlots({ bars: [first], pickupTicks }: Timeline): { bar: number; count: string; tick: Ticks }[] {
  const length = slotTicks(first.meter, first.grid);
  const count = Math.floor(pickupTicks / length);
  const names = countNames(first.meter, first.grid).slice(-count);
  return Array.from({ length: count }, (_, i) => ({ bar: 0, count: names[i], tick: (i - count) * length }));
}
