import { above0, isObject, must, within } from '../check.ts';
import { slotTicks } from '../time/meter.ts';
import { TICKS_PER_QUARTER, type Seconds, type Ticks } from '../time/units.ts';
import type { ScheduledStroke, ScheduleOptions, Stroke, TempoChange, Timeline, TimelineBar } from './types.ts';

/** Gap between a grace note and the next note, where none is given: ours, no published figure was found (15 to 40 ms is usual). */
export const DEFAULT_FLAM_MS = 30;
const MOST_FLAM_MS = 1000;
const MOST_SWING = 4;

/**
 * When each stroke sounds, in seconds from the beginning of bar 1, in order of time: the one place where ticks become
 * seconds. Pickups, and grace notes of the first stroke, are before zero. Throws RangeError for a tempo, a swing or a
 * flam width that cannot be played.
 * @example
 * schedule(timeline, { bpm: 60 }).slice(0, 2) // → [{ id: '1.0.0g0', seconds: -0.03 }, { id: '1.0.0', seconds: 0 }]
 */
export function schedule(timeline: Timeline, options: ScheduleOptions): ScheduledStroke[] {
  const at = secondsAt(timeline, options);
  const main = timeline.strokes.filter((s) => s.kind !== 'grace');
  const heard = new Map(main.map((s) => [s.id, at(s.tick)]));
  const early = graceTimes(timeline, options, at, main);
  return timeline.strokes
    .map((s) => ({ id: s.id, seconds: heard.get(s.id) ?? early.get(s.id)! }))
    .sort((a, b) => a.seconds - b.seconds);
}

/** Each grace note's time: a flam width before the next note of its figure, within half the gap to the stroke before. */
function graceTimes(
  timeline: Timeline,
  options: ScheduleOptions,
  at: (tick: Ticks) => Seconds,
  main: Stroke[],
): Map<string, Seconds> {
  const width = flamSeconds(options);
  const ticks = [...new Set(main.map((s) => s.tick))];
  const length = at(timeline.ticks) - at(0);
  const times = new Map<string, Seconds>();
  for (const primary of main.filter((s) => s.graces.length > 0 && !s.opened)) {
    const before = ticks.findLast((tick) => tick < primary.tick);
    const wrapped = options.loop ? at(ticks[ticks.length - 1]) - length : -Infinity;
    const gap = at(primary.tick) - (before === undefined ? wrapped : at(before));
    const step = Math.min(width, gap / 2 / primary.graces.length);
    primary.graces.forEach((id, i) => times.set(id, at(primary.tick) - step * (primary.graces.length - i)));
  }
  return times;
}

function flamSeconds({ flamMs = DEFAULT_FLAM_MS }: ScheduleOptions): Seconds {
  within('flamMs', flamMs, 0, MOST_FLAM_MS);
  return flamMs / 1000;
}

/**
 * The seconds of any tick of a timeline, fractions of a tick included, 0 at the beginning of bar 1.
 * @example
 * secondsAt(timeline, { bpm: 60 })(20160) // → 1
 */
export function secondsAt(timeline: Timeline, { bpm, swing = 1 }: ScheduleOptions): (tick: Ticks) => Seconds {
  within('swing', swing, 1, MOST_SWING);
  const changes = tempoChanges(bpm);
  const steady = (tick: Ticks): Seconds => integrate(changes, tick) - integrate(changes, 0);
  return swing === 1 ? steady : (tick) => steady(swung(timeline.bars, tick, swing));
}

function tempoChanges(bpm: number | readonly TempoChange[]): readonly TempoChange[] {
  const changes = typeof bpm === 'number' ? [{ tick: 0, bpm }] : bpm;
  must(Array.isArray(changes) && changes.length > 0, 'bpm', bpm, 'a tempo or a list of changes, at least one');
  changes.forEach((change, i) => {
    must(isObject(change), 'tempo change', change, 'a tick and a bpm');
    above0('bpm', change.bpm);
    const after = i > 0 ? changes[i - 1].tick : -Infinity;
    must(Number.isFinite(change.tick) && change.tick > after, 'tick of a tempo change', change.tick, `above ${after}`);
  });
  return changes;
}

/** Seconds from the first change to a tick; before it, its tempo holds. */
function integrate(changes: readonly TempoChange[], tick: Ticks): Seconds {
  let seconds = 0;
  for (const [i, change] of changes.entries()) {
    const next = changes[i + 1]?.tick ?? Infinity;
    const to = Math.min(tick, next);
    if (i === 0 || to > change.tick) seconds += ((to - change.tick) * 60) / (change.bpm * TICKS_PER_QUARTER);
    if (tick <= next) break;
  }
  return seconds;
}

/** A tick moved by swing: of each pair of slots in grids of 2 and 4 the first is made longer, evenly inside each. */
function swung(bars: readonly TimelineBar[], tick: Ticks, ratio: number): Ticks {
  const bar = bars.findLast((b) => b.tick <= tick) ?? bars[0];
  if (bar.grid !== 2 && bar.grid !== 4) return tick;
  const pair = 2 * slotTicks(bar.meter, bar.grid);
  const into = tick - bar.tick;
  const place = into - Math.floor(into / pair) * pair;
  const long = (pair * ratio) / (1 + ratio);
  const half = pair / 2;
  const moved = place < half ? (place / half) * long : long + ((place - half) / half) * (pair - long);
  return tick - place + moved;
}
