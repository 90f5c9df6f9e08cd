import type { Seconds } from '../../core/index.ts';
import type { TimedSlot } from '../sequence/slots.ts';
import type { NoteEvent, PassTimes } from '../sequence/sequence.ts';
import type { Phase, Position } from '../types.ts';
import { eventMoment, holds, type ScheduledPass } from './passes.ts';

/** Index of the last slot at or before a time of its pass. */
function slotAt(slots: readonly TimedSlot[], seconds: Seconds): number {
  const after = slots.findIndex((slot) => slot.seconds > seconds);
  return Math.max(0, (after < 0 ? slots.length : after) - 1);
}

/** Within a slot time runs evenly, with swing too: core makes whole slots longer or shorter. */
function tickAt({ slots, end, ticks }: PassTimes, index: number, seconds: Seconds): number {
  const slot = slots[index];
  const next = slots[index + 1] ?? { seconds: end, tick: ticks };
  const share = (seconds - slot.seconds) / (next.seconds - slot.seconds);
  return slot.ownTick + Math.max(0, share) * (next.tick - slot.tick);
}

function isLit(pass: ScheduledPass, event: NoteEvent, moment: Seconds): boolean {
  const from = eventMoment(pass, event);
  return event.lit !== undefined && from <= moment && moment < from + event.lit.seconds;
}

function litAt(passes: readonly ScheduledPass[], moment: Seconds, phase: Phase): string[] {
  const lit = passes.flatMap((pass) =>
    pass.times.events.filter((event) => isLit(pass, event, moment) && holds(pass, event)),
  );
  return [...new Set(lit.flatMap((event) => (event.lit?.phase === phase ? [event.lit.id] : [])))];
}

/** What is heard at a moment of the audio context's time; undefined before the first pass and after the last. */
export function positionIn(passes: readonly ScheduledPass[], moment: Seconds): Position | undefined {
  const pass = passes.find(({ from, until }) => from <= moment && moment < until);
  if (!pass) return undefined;
  const seconds = moment - pass.start;
  const index = slotAt(pass.times.slots, seconds);
  const { phase, bar, count } = pass.times.slots[index];
  const tick = tickAt(pass.times, index, seconds);
  return { phase, pass: pass.number, bar, tick, count, lit: litAt(passes, moment, phase) };
}
