import { must } from '../check.ts';
import { lastWhere } from '../search.ts';
import type { Limb } from '../sticking/limbs.ts';
import type { Seconds } from '../time/units.ts';

/** A stroke or a hit, as far as it matters here. */
export interface Event {
  seconds: Seconds;
  limb?: Limb;
}

/** Times in units of which sums are exact, so that equal costs are equal: a tenth of a nanosecond. */
const UNITS = 1e10;

/** The most cells of all tables, 8 bytes each. */
const MOST_CELLS = 2 ** 25;

/** Hits that may be taken in order: all of one limb, or all of which nobody knows the limb. */
interface Lane {
  limb: Limb | undefined;
  times: number[];
  /** Which hits they are. */
  indices: number[];
}

/**
 * For each stroke the index of the hit that was meant for it, or -1: each hit at most once and within the window, a hit of a
 * known limb for that limb only, with the least sum of offsets where a missed stroke and a hit too many cost half a window
 * each. Of equal sums a match comes before a miss and an earlier hit before a later one, for the first stroke first.
 * Strokes are in order of time, hits in any; the time it takes grows with the take and with what lies in one window.
 * @example
 * align([{ seconds: 0, limb: 'R' }, { seconds: 1, limb: 'L' }], [{ seconds: 1.02 }, { seconds: 5 }], 0.15) // → [-1, 0]
 */
export function align(strokes: readonly Event[], hits: readonly Event[], window: Seconds): number[] {
  const lanes = lanesOf(hits).filter((lane) => strokes.some((stroke) => fits(lane, stroke)));
  const matched = strokes.map(() => -1);
  // Where every limb is known, one limb is nothing to another.
  const apart = lanes.every((lane) => lane.limb !== undefined);
  for (const group of apart ? lanes.map((lane) => [lane]) : [lanes]) {
    const own = strokes.flatMap((s, i) => (group.some((lane) => fits(lane, s)) ? [i] : []));
    const times = own.map((i) => Math.round(strokes[i].seconds * UNITS));
    const limbs = own.map((i) => strokes[i].limb);
    const found = matchLanes(times, limbs, group, Math.round(window * UNITS));
    own.forEach((stroke, i) => (matched[stroke] = found[i]));
  }
  return matched;
}

const fits = (lane: Lane, { limb }: { limb?: Limb | undefined }): boolean =>
  lane.limb === undefined || lane.limb === limb;

function lanesOf(hits: readonly Event[]): Lane[] {
  const lanes = new Map<Limb | undefined, Lane>();
  const order = hits.map((_, i) => i).sort((a, b) => hits[a].seconds - hits[b].seconds || a - b);
  for (const i of order) {
    const { limb, seconds } = hits[i];
    const lane = lanes.get(limb) ?? { limb, times: [], indices: [] };
    lanes.set(limb, lane);
    lane.times.push(Math.round(seconds * UNITS));
    lane.indices.push(i);
  }
  return [...lanes.values()];
}

/**
 * What is left to be gained from one stroke on, by how far each lane has been used: `from[d]` and `to[d]` are the hits of lane
 * d within the stroke's window, and a state is an index for each lane from `from[d]` to `to[d]`.
 */
interface Table {
  from: number[];
  to: number[];
  strides: number[];
  best: Float64Array;
}

/** Matching gains the window less the offset; the dynamic program runs from the last stroke to the first. */
function matchLanes(
  times: readonly number[],
  limbs: readonly (Limb | undefined)[],
  lanes: Lane[],
  window: number,
): number[] {
  const tables = tablesOf(times, lanes, window);
  for (let i = times.length - 1; i >= 0; i -= 1) fill(tables[i], tables[i + 1], lanes, limbs[i], times[i], window);
  return trace(tables, lanes, limbs, times, window);
}

function tablesOf(times: readonly number[], lanes: Lane[], window: number): Table[] {
  let cells = 0;
  return times.map((time) => {
    const from = lanes.map((lane) => lastWhere(lane.times.length, (n) => lane.times[n] < time - window) + 1);
    const to = lanes.map((lane) => lastWhere(lane.times.length, (n) => lane.times[n] <= time + window) + 1);
    const strides: number[] = [];
    let size = 1;
    for (const d of lanes.keys()) {
      strides.push(size);
      size *= to[d] - from[d] + 1;
    }
    cells += size;
    must(cells <= MOST_CELLS, 'window', window / UNITS, 'a shorter one, where so many hits lie within it');
    return { from, to, strides, best: new Float64Array(size) };
  });
}

/** The value of a state in the table of a later stroke, whose windows begin later; nothing is gained after the last one. */
function valueIn(table: Table | undefined, used: readonly number[]): number {
  if (!table) return 0;
  let index = 0;
  for (let d = 0; d < used.length; d += 1) index += Math.max(0, used[d] - table.from[d]) * table.strides[d];
  return table.best[index];
}

/** The value of a state where one lane is used up to a hit. */
function valueAfter(table: Table | undefined, used: number[], lane: number, hit: number): number {
  const before = used[lane];
  used[lane] = hit + 1;
  const value = valueIn(table, used);
  used[lane] = before;
  return value;
}

/** From the highest state down: what the next hits of a lane can gain is known from the state that has passed this one. */
function fill(
  table: Table,
  next: Table | undefined,
  lanes: Lane[],
  limb: Limb | undefined,
  time: number,
  window: number,
): void {
  const { from, to, strides, best } = table;
  const open = lanes.flatMap((lane, d) =>
    fits(lane, { limb }) ? [{ lane, d, later: new Float64Array(best.length) }] : [],
  );
  const used = [...to];
  for (let state = best.length - 1; state >= 0; state -= 1) {
    let most = valueIn(next, used);
    for (const { lane, d, later } of open) {
      if (used[d] === to[d]) later[state] = -1;
      else {
        const gain = window - Math.abs(lane.times[used[d]] - time) + valueAfter(next, used, d, used[d]);
        later[state] = Math.max(gain, later[state + strides[d]]);
        most = Math.max(most, later[state]);
      }
    }
    best[state] = most;
    for (let d = 0; d < used.length && (used[d] -= 1) < from[d]; d += 1) used[d] = to[d];
  }
}

/** Goes from the first stroke on and takes for each the earliest hit with which the most can still be gained. */
function trace(
  tables: Table[],
  lanes: Lane[],
  limbs: readonly (Limb | undefined)[],
  times: readonly number[],
  window: number,
): number[] {
  const used = lanes.map(() => 0);
  return times.map((time, i) => {
    const table = tables[i];
    used.forEach((n, d) => (used[d] = Math.max(n, table.from[d])));
    const wanted = valueIn(table, used);
    const best = candidates(lanes, limbs[i], used, table).find(({ d, hit }) => {
      const gain = window - Math.abs(lanes[d].times[hit] - time);
      return gain + valueAfter(tables[i + 1], used, d, hit) === wanted;
    });
    if (!best) return -1;
    used[best.d] = best.hit + 1;
    return lanes[best.d].indices[best.hit];
  });
}

/** The hits that a stroke may still have, in order of time. */
function candidates(
  lanes: Lane[],
  limb: Limb | undefined,
  used: readonly number[],
  { to }: Table,
): { d: number; hit: number }[] {
  const all = lanes.flatMap((lane, d) =>
    fits(lane, { limb }) ? Array.from({ length: to[d] - used[d] }, (_, n) => ({ d, hit: used[d] + n })) : [],
  );
  const time = ({ d, hit }: { d: number; hit: number }): number => lanes[d].times[hit];
  return lanes.length === 1
    ? all
    : all.sort((a, b) => time(a) - time(b) || lanes[a.d].indices[a.hit] - lanes[b.d].indices[b.hit]);
}
