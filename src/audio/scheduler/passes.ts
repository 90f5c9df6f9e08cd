import type { Seconds } from '../../core/index.ts';
import type { NoteEvent, PassTimes, Sequence } from '../sequence/sequence.ts';
import type { TimedSlot } from '../sequence/slots.ts';

/** A pass, or what is left of one, at its place in the time of the audio context. */
export interface ScheduledPass {
  sequence: Sequence;
  times: PassTimes;
  /** From 1. */
  number: number;
  /** When its own time is 0. */
  start: Seconds;
  /** It is heard from here up to `until`; its strokes count by when their primaries sound. */
  from: Seconds;
  until: Seconds;
  /** What share of their width the grace notes of its first stroke keep; less than 1 only after a change. */
  graceScale: number;
  /** Index of the first event that was not looked at yet. */
  next: number;
}

/** Two times nearer than this are one: far less than a sample, far more than what sums of seconds lose. */
export const SAME: Seconds = 1e-6;

/** When the first sound of a sequence or its first slot comes, in the time of its first pass. */
export function firstMoment({ first }: Sequence): Seconds {
  return Math.min(first.slots[0].seconds, first.events[0]?.seconds ?? Infinity);
}

/** The opening pass with its own time 0 at `start`. */
export function openingPass(sequence: Sequence, start: Seconds): ScheduledPass {
  const from = start + firstMoment(sequence);
  return {
    sequence,
    times: sequence.first,
    number: 1,
    start,
    from,
    until: start + sequence.first.end,
    graceScale: 1,
    next: 0,
  };
}

/** The pass after this one, if there is one. */
export function passAfter({ sequence, number, until }: ScheduledPass): ScheduledPass | undefined {
  if (!sequence.request.loop) return undefined;
  const { again } = sequence;
  return {
    sequence,
    times: again,
    number: number + 1,
    start: until,
    from: until,
    until: until + again.end,
    graceScale: 1,
    next: 0,
  };
}

/** The rest of a pass from one of its slots on, which is to be heard at `from`. */
export function passFrom(
  sequence: Sequence,
  times: PassTimes,
  number: number,
  slot: TimedSlot,
  from: Seconds,
): ScheduledPass {
  const start = from - slot.seconds;
  return { sequence, times, number, start, from, until: start + times.end, graceScale: 1, next: 0 };
}

/** Whether a sound belongs to this pass and not to the one before or after. */
export function holds({ start, from, until }: ScheduledPass, { anchor }: NoteEvent): boolean {
  return start + anchor >= from - SAME && start + anchor < until - SAME;
}

/** When an event of a pass is heard. */
export function eventMoment({ start, from, graceScale }: ScheduledPass, { seconds, anchor }: NoteEvent): Seconds {
  const early = anchor - seconds;
  return start + anchor - (start + anchor < from + SAME ? graceScale * early : early);
}

/** When a slot of a pass is heard. */
export const slotMoment = (pass: ScheduledPass, slot: TimedSlot): Seconds => pass.start + slot.seconds;

/** Whether what is left of a pass holds one of its slots. */
export function reaches(pass: ScheduledPass, slot: TimedSlot): boolean {
  const moment = slotMoment(pass, slot);
  return moment >= pass.from - SAME && moment < pass.until - SAME;
}
