import type { Seconds } from '../../core/index.ts';
import type { Sequence } from '../sequence/sequence.ts';
import type { TimedSlot } from '../sequence/slots.ts';
import { sameSlot } from '../sequence/slots.ts';
import type { PlayRequest } from '../types.ts';
import { holds, slotMoment, reaches, SAME, passFrom, type ScheduledPass } from './passes.ts';

/** Where an old sequence ends and a new one goes on. */
export interface Splice {
  old: ScheduledPass;
  moment: Seconds;
  next: ScheduledPass;
}

const gridsOf = ({ timeline }: PlayRequest): string =>
  timeline.bars.map(({ meter, grid }) => `${meter}:${grid}`).join();

/** With swing or grid changed only the beats stay where they are: the pulse goes on unbroken where a beat is the seam. */
function needsBeat(a: PlayRequest, b: PlayRequest): boolean {
  return a.swing !== b.swing || gridsOf(a) !== gridsOf(b);
}

/** The slots still to come from a moment on. */
export function slotsAhead(
  passes: readonly ScheduledPass[],
  from: Seconds,
): { pass: ScheduledPass; slot: TimedSlot }[] {
  return passes.flatMap((pass) =>
    pass.times.slots
      .filter((slot) => reaches(pass, slot) && slotMoment(pass, slot) >= from)
      .map((slot) => ({ pass, slot })),
  );
}

/** When the last stroke before a moment is played. */
function lastStrokeBefore(passes: readonly ScheduledPass[], moment: Seconds): Seconds {
  const anchors = passes.flatMap((pass) =>
    pass.times.events
      .filter((event) => 'stroke' in event.note && holds(pass, event))
      .map(({ anchor }) => pass.start + anchor),
  );
  return anchors.reduce((last, anchor) => (anchor < moment - SAME ? Math.max(last, anchor) : last), -Infinity);
}

/** Within half the gap to the stroke before, as core has it: that stroke is the old sequence's, so core cannot know the gap. */
function graceScaleFor(passes: readonly ScheduledPass[], { moment, next }: Splice): number {
  const target = moment - next.start;
  const figure = next.times.events.filter(({ anchor }) => Math.abs(anchor - target) < SAME);
  const ahead = Math.max(0, ...figure.map(({ anchor, seconds }) => anchor - seconds));
  return ahead === 0 ? 1 : Math.min(1, (moment - lastStrokeBefore(passes, moment)) / 2 / ahead);
}

function spliceAt(old: ScheduledPass, slot: TimedSlot, sequence: Sequence): { splice: Splice; clean: boolean } {
  const times = old.number === 1 ? sequence.first : sequence.again;
  const target = sameSlot(slot, old.times.slots, times.slots);
  const moment = slotMoment(old, slot);
  const next = passFrom(sequence, times, old.number, target, moment);
  return { splice: { old, moment, next }, clean: !slot.split && !target.split };
}

const withGraceScale = (passes: readonly ScheduledPass[], splice: Splice): Splice => ({
  ...splice,
  next: { ...splice.next, graceScale: graceScaleFor(passes, splice) },
});

/** The first place at or after a moment where the new sequence can take over without breaking a figure in two. */
export function findSplice(passes: readonly ScheduledPass[], sequence: Sequence, from: Seconds): Splice | undefined {
  const ahead = slotsAhead(passes, from);
  const seams = ahead.filter(({ pass, slot }) => slot.beat || !needsBeat(pass.sequence.request, sequence.request));
  const splices = (seams.length > 0 ? seams : ahead).map(({ pass, slot }) => spliceAt(pass, slot, sequence));
  const best = splices.find(({ clean }) => clean) ?? splices[0];
  return best && withGraceScale(passes, best.splice);
}

/** Where no slot is left in a sequence that ends, the new one may go on with a pass of its own. */
export function spliceAtEnd(old: ScheduledPass, sequence: Sequence): Splice | undefined {
  if (!sequence.request.loop) return undefined;
  const { until } = old;
  const next = passFrom(sequence, sequence.again, old.number + 1, sequence.again.slots[0], until);
  return withGraceScale([old], { old, moment: until, next });
}
