import {
  compareTiming,
  layPhrase,
  parseSticking,
  perform,
  schedule,
  TICKS_PER_QUARTER,
  type ScheduleOptions,
  type TempoChange,
  type Timeline,
} from '../../../src/core/index.ts';
import { attackOf, between, pick } from './attack.ts';
import { nearlySticking } from './sticking-text.ts';

const METERS = ['4/4', '3/4', '6/8', '2+2+3/8', '7/8'];

/** Phrases with pickups, tempo changes, swing and flams of any width, against seconds summed up stretch by stretch. */
export const schedules = attackOf('schedules', { short: 1_500, long: 100_000 }, (random, about) => {
  const text = nearlySticking(random).replace(/\[[^\]]*\] /, '');
  const read = parseSticking(text);
  if (!read.ok) return undefined;
  const pickup = pick(random, [0, 0, 1, 2]);
  const [meter, grid] = [pick(random, METERS), between(random, 1, 6)];
  const laid = layPhrase({ cells: [{ id: 'text', sticking: read.sticking }], meter, grid, fill: 'rests', pickup });
  if (!laid.ok) return undefined;
  const timeline = perform(laid.phrase, { flams: pick(random, ['grace', 'grace', 'before', 'on']) });
  const bpm = random() < 0.5 ? between(random, 20, 400) : changes(random, timeline.ticks);
  const options = { bpm, swing: pick(random, [1, 1, 2]), flamMs: between(random, 0, 120), loop: random() < 0.5 };
  about(JSON.stringify({ text, meter, grid, pickup, ...options }));
  return badSeconds(timeline, options) ?? badTake(timeline, options);
});

function changes(random: () => number, ticks: number): TempoChange[] {
  const all = Array.from({ length: between(random, 1, 4) }, () => between(random, -ticks, ticks));
  return [...new Set(all)].sort((a, b) => a - b).map((tick) => ({ tick, bpm: between(random, 20, 400) }));
}

/** Seconds from one tick to a later one, stretch by stretch. */
function lasting(bpm: ScheduleOptions['bpm'], from: number, to: number): number {
  const list = typeof bpm === 'number' ? [{ tick: 0, bpm }] : bpm;
  const edges = [from, ...list.map((change) => change.tick).filter((tick) => tick > from && tick < to), to];
  return edges.slice(1).reduce((sum, end, i) => {
    const now = list.findLast((change) => change.tick <= edges[i]) ?? list[0];
    return sum + ((end - edges[i]) * 60) / (now.bpm * TICKS_PER_QUARTER);
  }, 0);
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9 * Math.max(1, Math.abs(a));

function badSeconds(timeline: Timeline, options: ScheduleOptions & { flamMs: number }): string | undefined {
  const seconds = new Map(schedule(timeline, options).map((one) => [one.id, one.seconds]));
  const main = timeline.strokes.filter((stroke) => stroke.kind !== 'grace');
  for (const { id, tick } of main) {
    const wanted = tick < 0 ? -lasting(options.bpm, tick, 0) : lasting(options.bpm, 0, tick);
    if (options.swing === 1 && !near(seconds.get(id)!, wanted)) return `${id} at ${seconds.get(id)}, not ${wanted}`;
  }
  for (const { id, primary } of timeline.strokes.filter((stroke) => stroke.kind === 'grace')) {
    const own = timeline.strokes.find((stroke) => stroke.id === primary)!;
    const ahead = (seconds.get(own.id)! - seconds.get(id)!) / (own.graces.length - own.graces.indexOf(id));
    const before = main.filter((stroke) => stroke.tick < own.tick).map((stroke) => seconds.get(stroke.id)!);
    const room = seconds.get(own.id)! - Math.max(...before);
    if (ahead < 0 || ahead * 1000 > options.flamMs + 1e-6) return `${id} stands ${ahead} s ahead`;
    if (ahead * own.graces.length > room / 2 + 1e-9) return `${id} is nearer to the stroke before than to its own`;
  }
  return undefined;
}

/** Whoever plays exactly what is asked for misses nothing and is never late. */
function badTake(timeline: Timeline, { bpm, swing, flamMs }: ScheduleOptions): string | undefined {
  const limbs = new Map(timeline.strokes.map(({ id, limb }) => [id, limb]));
  const hits = schedule(timeline, { bpm, swing, flamMs }).map(({ id, seconds }) => ({ seconds, limb: limbs.get(id) }));
  const { overall, extra } = compareTiming(timeline, hits, { bpm, swing, flamMs });
  if (overall.missed > 0 || extra.length > 0) return `${overall.missed} missed and ${extra.length} too many`;
  return Math.abs(overall.mean ?? 0) < 1e-9 ? undefined : `${overall.mean} s late`;
}
