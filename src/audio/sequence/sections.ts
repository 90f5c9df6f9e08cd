import { meterOf, type Ticks, type Timeline, type TimelineBar } from '../../core/index.ts';
import type { Check, PlayRequest } from '../types.ts';

/** One run through the check or the pattern, at its place in a pass. */
export interface Section {
  phase: 'check' | 'pattern';
  timeline: Timeline;
  /** Where tick 0 of its timeline stands in the pass. */
  at: Ticks;
  /** Whether its pickup sounds over what comes before it. */
  pickup: boolean;
}

/** Whether the pattern leaves room at its end for its own pickup, so that the pickup sounds at every return. */
function hasRoomForPickup({ strokes, ticks, pickupTicks }: Timeline): boolean {
  return strokes.every(({ tick }) => tick < ticks - pickupTicks);
}

/** Times a timeline is played to last for at least so many bars. */
const repeats = (timeline: Timeline, bars: number): number => Math.ceil(bars / timeline.bars.length);

type Run = Omit<Section, 'at'>;

const checks = ({ timeline, bars }: Check): Run[] =>
  Array.from({ length: repeats(timeline, bars) }, () => ({ phase: 'check', timeline, pickup: false }));

/** `first`: whether the first one's pickup sounds over what comes before; the others' only where there is room. */
function patterns(timeline: Timeline, times: number, first: boolean): Run[] {
  const room = hasRoomForPickup(timeline);
  return Array.from({ length: times }, (_, i) => ({ phase: 'pattern', timeline, pickup: (first && i === 0) || room }));
}

function placeRuns(runs: readonly Run[], from: Ticks): Section[] {
  let at = from;
  return runs.map((run) => {
    const section = { ...run, at };
    at += run.timeline.ticks;
    return section;
  });
}

/**
 * The runs of one pass in order, the first one at `from`: so many bars of the check and then so many of the pattern.
 * A pattern of fewer bars is repeated, one of more bars is played whole. `opens` says that nothing was played before.
 */
export function sectionsOf(request: PlayRequest, from: Ticks, opens: boolean): Section[] {
  const { check, timeline } = request;
  if (!check) return placeRuns(patterns(timeline, 1, opens), from);
  return placeRuns([...checks(check), ...patterns(timeline, repeats(timeline, check.bars), true)], from);
}

/** Where the last section ends. */
export function endOf(sections: readonly Section[]): Ticks {
  const last = sections[sections.length - 1];
  return last.at + last.timeline.ticks;
}

/** A whole bar to count in what comes next. */
export function countInBar(next: Section): { bar: TimelineBar; ticks: Ticks } {
  const { meter, grid } = next.timeline.bars[0];
  const { beats, barTicks } = meterOf(meter);
  return { bar: { tick: 0, meter, grid, slots: beats * grid }, ticks: barTicks };
}
