import { meterOf, type Meter } from '../time/meter.ts';
import type { Ticks } from '../time/units.ts';
import type { Timeline, TimelineBar } from '../timeline/types.ts';

/** What is engraved as one picture: a beat, or a group of beats where the meter groups them. */
export interface Fragment {
  tick: Ticks;
  ticks: Ticks;
  /** From 1; 0 for a pickup. */
  bar: number;
  /** Its place in its bar, from 0, and whether it is the bar's last one. */
  index: number;
  last: boolean;
}

/** A bar with its fragments; the pickup has only its last ones. */
export interface ScoreBar {
  number: number;
  tick: Ticks;
  ticks: Ticks;
  meter: Meter;
  grid: number;
  slotTicks: Ticks;
  fragments: Fragment[];
}

/** How many notes of the lower figure go together where the meter does not say so (common practice: twos, a three last). */
function evenGroups(upper: number, size: number): number[] {
  const groups = Array.from({ length: Math.floor(upper / size) }, () => size);
  const rest = upper - size * groups.length;
  if (rest === 1 && groups.length) groups[groups.length - 1] += 1;
  else if (rest) groups.push(rest);
  return groups;
}

/** Notes of the lower figure in each fragment of a bar. */
function groupsOf(meter: Meter): readonly number[] {
  if (meter.groups.length > 1) return meter.groups;
  if (meter.lower === 8) return evenGroups(meter.upper, meter.upper === 3 ? 3 : 2);
  if (meter.lower === 16) return evenGroups(meter.upper, meter.upper % 3 === 0 ? 3 : 4);
  return evenGroups(meter.upper, 1);
}

function fragmentsOf(meter: Meter, tick: Ticks, bar: number): Fragment[] {
  const note = meter.barTicks / meter.upper;
  let at = tick;
  return groupsOf(meter).map((group, index, all) => {
    const fragment = { tick: at, ticks: group * note, bar, index, last: index === all.length - 1 };
    at += fragment.ticks;
    return fragment;
  });
}

function scoreBar(bar: TimelineBar, tick: Ticks, number: number): ScoreBar {
  const meter = meterOf(bar.meter);
  const slotTicks = meter.beatTicks / bar.grid;
  const fragments = fragmentsOf(meter, tick, number);
  return { number, tick, ticks: meter.barTicks, meter, grid: bar.grid, slotTicks, fragments };
}

/** The pickup as the last fragments of a bar like the first one: only those in which something sounds or is counted. */
function pickupBar(timeline: Timeline): ScoreBar[] {
  const first = timeline.strokes.reduce((least, { tick }) => Math.min(least, tick), -timeline.pickupTicks);
  if (first >= 0) return [];
  const bar = timeline.bars[0];
  const whole = scoreBar(bar, -meterOf(bar.meter).barTicks, 0);
  return [{ ...whole, fragments: whole.fragments.filter((fragment) => fragment.tick + fragment.ticks > first) }];
}

/** The bars of a timeline, pickup first, cut into fragments. */
export function scoreBars(timeline: Timeline): ScoreBar[] {
  return [...pickupBar(timeline), ...timeline.bars.map((bar, i) => scoreBar(bar, bar.tick, i + 1))];
}

/** A place in a piece's bars: those whose fragments hold the tick. */
export const containsTick = (fragment: Fragment, tick: Ticks): boolean =>
  tick >= fragment.tick && tick < fragment.tick + fragment.ticks;
