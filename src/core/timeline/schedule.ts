import { tick as checkTick, above0, isObject, must, optionalSwitch, within } from '../check.ts';
import { lastWhere } from '../search.ts';
import { slotTicks } from '../time/meter.ts';
import { TICKS_PER_QUARTER, type Seconds, type Ticks } from '../time/units.ts';
import { checkTimeline } from './check-timeline.ts';
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
  checkTimeline(timeline);
  checkSchedule(options);
  const at = secondsAt(timeline, options);
  const early = graceTimes(timeline, options, at);
  return timeline.strokes
    .map((s) => ({ id: s.id, seconds: early.get(s.id) ?? at(s.tick) }))
    .sort((a, b) => a.seconds - b.seconds);
}

function checkSchedule(options: ScheduleOptions): void {
  must(isObject(options), 'options of schedule', options, 'an object with a bpm');
  optionalSwitch('loop', options.loop);
}

/** Each grace note's time: a flam width before the next note of its figure, within half the gap to the stroke before. */
export function graceTimes(
  timeline: Timeline,
  options: ScheduleOptions,
  at: (tick: Ticks) => Seconds,
): Map<string, Seconds> {
  const width = flamSeconds(options);
  const times = new Map<string, Seconds>();
  for (const { primary, room } of graceFigures(timeline, options.loop, at)) {
    const step = Math.min(width, room / 2 / primary.graces.length);
    primary.graces.forEach((id, i) => times.set(id, at(primary.tick) - step * (primary.graces.length - i)));
  }
  return times;
}

/** A primary whose grace notes are not written out, and how long it is since the stroke before. */
export interface GraceFigure {
  primary: Stroke;
  room: number;
}

/**
 * The grace figures of a timeline with the room before each, in the unit that `at` turns ticks into; Infinity where nothing
 * is struck before. Where the phrase goes round, its last stroke stands before its bar 1, and before its pickup if the last
 * bar leaves room for that one to come again.
 */
export function graceFigures(timeline: Timeline, loop = false, at: (tick: Ticks) => number): GraceFigure[] {
  const main = timeline.strokes.filter((s) => s.kind !== 'grace');
  const seam = loop && main.length ? at(main[main.length - 1].tick) - (at(timeline.ticks) - at(0)) : -Infinity;
  const figures: GraceFigure[] = [];
  let [before, here] = [-Infinity, -Infinity];
  for (const primary of main) {
    if (primary.tick > here) [before, here] = [here, primary.tick];
    if (primary.graces.length === 0 || primary.opened) continue;
    const now = at(primary.tick);
    const line = before === -Infinity ? before : at(before);
    const round = seam < now && (primary.tick >= 0 || line === -Infinity) ? seam : -Infinity;
    figures.push({ primary, room: now - Math.max(line, round) });
  }
  return figures;
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
export function secondsAt(timeline: Timeline, options: ScheduleOptions): (tick: Ticks) => Seconds {
  const at = clockOf(timeline, options);
  return (tick) => at(tick, 0);
}

/** The seconds of any tick of a timeline that is played from a tick on; it swings by its own bars, wherever it begins. */
export function clockOf(timeline: Timeline, options: ScheduleOptions): (tick: Ticks, from: Ticks) => Seconds {
  checkTimeline(timeline);
  checkSchedule(options);
  const { bpm, swing = 1 } = options;
  within('swing', swing, 1, MOST_SWING);
  const sum = integral(tempoChanges(bpm));
  return (tick, from) => {
    checkTick('tick', tick);
    return sum(from + (swing === 1 ? tick : swung(timeline.bars, tick, swing))) - sum(0);
  };
}

function tempoChanges(bpm: number | readonly TempoChange[]): readonly TempoChange[] {
  const changes = typeof bpm === 'number' ? [{ tick: 0, bpm }] : bpm;
  must(Array.isArray(changes) && changes.length > 0, 'bpm', bpm, 'a tempo or a list of changes, at least one');
  changes.forEach((change, i) => {
    must(isObject(change), 'tempo change', change, 'a tick and a bpm');
    above0('bpm', change.bpm);
    const after = i > 0 ? changes[i - 1].tick : -Infinity;
    checkTick('tick of a tempo change', change.tick);
    must(change.tick > after, 'tick of a tempo change', change.tick, `above ${after}`);
  });
  return changes;
}

/** Seconds from the first change to any tick; before it, its tempo holds. */
function integral(changes: readonly TempoChange[]): (tick: Ticks) => Seconds {
  const lasting = (tick: Ticks, { tick: from, bpm }: TempoChange): Seconds =>
    ((tick - from) * 60) / (bpm * TICKS_PER_QUARTER);
  const starts = [0];
  for (let i = 1; i < changes.length; i += 1) starts.push(starts[i - 1] + lasting(changes[i].tick, changes[i - 1]));
  return (tick) => {
    const i = Math.max(
      0,
      lastWhere(changes.length, (n) => changes[n].tick <= tick),
    );
    return starts[i] + lasting(tick, changes[i]);
  };
}

/** A tick moved by swing: of each pair of slots in grids of 2 and 4 the first is made longer, evenly inside each. */
function swung(bars: readonly TimelineBar[], tick: Ticks, ratio: number): Ticks {
  const bar =
    bars[
      Math.max(
        0,
        lastWhere(bars.length, (n) => bars[n].tick <= tick),
      )
    ];
  if (bar.grid !== 2 && bar.grid !== 4) return tick;
  const pair = 2 * slotTicks(bar.meter, bar.grid);
  const into = tick - bar.tick;
  const place = into - Math.floor(into / pair) * pair;
  const long = (pair * ratio) / (1 + ratio);
  const half = pair / 2;
  const moved = place < half ? (place / half) * long : long + ((place - half) / half) * (pair - long);
  return tick - place + moved;
}
