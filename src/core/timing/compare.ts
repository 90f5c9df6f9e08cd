import { checkOptions, isObject, list, must, oneOf, whole, within } from '../check.ts';
import { lastWhere } from '../search.ts';
import { LIMBS } from '../sticking/limbs.ts';
import { slotTicks } from '../time/meter.ts';
import { TICKS_PER_QUARTER, type Bpm, type Seconds } from '../time/units.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';
import { align } from './align.ts';
import { slopeOf, spreadOf, widthsOf } from './statistics.ts';
import { takeOf, type AskedSlot, type AskedStroke, type Take } from './take.ts';
import type { ExtraHit, Hit, Spread, TimedStroke, Timing, TimingOptions, Widths } from './types.ts';

/** How far a hit may lie from its stroke, in seconds: ours. */
const WINDOW: Seconds = 0.15;
const MOST_WINDOW: Seconds = 10;
const MOST_PASSES = 10_000;

/** A stroke that was asked for, what was asked, and where it stands in the timing. */
interface Judged extends TimedStroke {
  stroke: Stroke;
  /** When it was asked for, and when it was hit. */
  asked: Seconds;
  struck?: Seconds;
}

/**
 * Holds hits against the strokes of a timeline: each hit at most once, in order within a limb, with the least sum of offsets
 * where a miss and a hit too many cost half the window each. Seconds count from the beginning of bar 1; late is positive.
 * Throws RangeError for malformed input.
 * @example
 * compareTiming(timeline, [{ seconds: 0.01 }], { bpm: 60 }).strokes[1] // → { id: '1.0.0', pass: 1, limb: 'R', hit: 0 }
 */
export function compareTiming(timeline: Timeline, hits: readonly Hit[], options: TimingOptions): Timing {
  checkOptions('compareTiming', options);
  const { bpm, swing, flamMs, passes = 1, window = WINDOW } = options;
  whole('passes', passes, 1, MOST_PASSES);
  within('window', window, 0, MOST_WINDOW);
  checkHits(hits);
  const take = takeOf(timeline, { bpm, swing, flamMs }, passes);
  const judged = judge(take.strokes, hits, window);
  const main = judged.filter(({ stroke }) => stroke.kind !== 'grace');
  const used = LIMBS.filter((limb) => judged.some((one) => one.limb === limb));
  return {
    strokes: judged.map(({ stroke: _stroke, asked: _asked, struck: _struck, ...timed }) => timed),
    extra: extraHits(hits, judged, take.slots),
    overall: spreadOf(judged),
    limbs: Object.fromEntries(used.map((limb) => [limb, spreadOf(judged.filter((one) => one.limb === limb))])),
    slots: bySlot(timeline, main),
    cells: byCell(timeline, main),
    flams: flamsOf(judged),
    diddles: diddlesOf(timeline, main),
    drift: driftOf(judged, typeof bpm === 'number' ? bpm : meanBpm(timeline, passes, take)),
  };
}

function checkHits(hits: readonly Hit[]): void {
  list('hits', hits, 'hits');
  for (const hit of hits) {
    must(isObject(hit), 'hit', hit, 'an object with its seconds');
    must(Number.isFinite(hit.seconds), 'seconds of a hit', hit.seconds, 'a number');
    if (hit.limb !== undefined) oneOf('limb of a hit', hit.limb, LIMBS);
    if (hit.level !== undefined) within('level of a hit', hit.level, 0, 1);
  }
}

function judge(asked: readonly AskedStroke[], hits: readonly Hit[], window: Seconds): Judged[] {
  const events = asked.map(({ stroke, seconds }) => ({ seconds, limb: stroke.limb }));
  const found = align(events, hits, window);
  return asked.map(({ stroke, pass, seconds }, i): Judged => {
    const { id, limb } = stroke;
    const hit = found[i];
    if (hit < 0) return { id, pass, limb, stroke, asked: seconds };
    const struck = hits[hit].seconds;
    return { id, pass, limb, hit, offset: struck - seconds, stroke, asked: seconds, struck };
  });
}

function extraHits(hits: readonly Hit[], judged: readonly Judged[], slots: readonly AskedSlot[]): ExtraHit[] {
  const meant = new Set(judged.map(({ hit }) => hit));
  const left = hits.map((_, i) => i).filter((i) => !meant.has(i));
  left.sort((a, b) => hits[a].seconds - hits[b].seconds || a - b);
  return left.map((hit) => {
    const { pass, bar, count } = nearest(slots, hits[hit].seconds);
    return { hit, pass, bar, count };
  });
}

/** The nearest slot, the earlier of two that are as near. */
function nearest(slots: readonly AskedSlot[], seconds: Seconds): AskedSlot {
  const before =
    slots[
      Math.max(
        0,
        lastWhere(slots.length, (i) => slots[i].seconds <= seconds),
      )
    ];
  const after = slots[lastWhere(slots.length, (i) => slots[i].seconds <= seconds) + 1] ?? before;
  // Seconds of one instant may differ by what a number cannot hold.
  const tie = 1e-10;
  return Math.abs(after.seconds - seconds) < Math.abs(seconds - before.seconds) - tie ? after : before;
}

/** Strokes in one list for each number from 0. */
function grouped(count: number, strokes: readonly Judged[], numberOf: (stroke: Stroke) => number): Spread[] {
  const groups: Judged[][] = Array.from({ length: count }, () => []);
  for (const one of strokes) groups[numberOf(one.stroke)]?.push(one);
  return groups.map(spreadOf);
}

function bySlot({ bars }: Timeline, main: readonly Judged[]): Spread[] {
  let slots = 0;
  const firsts = bars.map((bar) => (slots += bar.slots) - bar.slots);
  return grouped(slots, main, ({ bar, slot }) => (bar > 0 ? firsts[bar - 1] + slot : -1));
}

function byCell({ cells }: Timeline, main: readonly Judged[]): Spread[] {
  const firsts = new Map<number, string>();
  for (const { stroke, pass } of main)
    if (pass === 1 && stroke.primary === undefined && !firsts.has(stroke.cell)) firsts.set(stroke.cell, stroke.id);
  const first = main.filter(({ stroke }) => firsts.get(stroke.cell) === stroke.id);
  return grouped(cells.length, first, ({ cell }) => cell);
}

const keyOf = ({ id, pass }: { id: string; pass: number }): string => `${pass} ${id}`;

/** Flams as such: one grace note, not written out. */
function flamsOf(judged: readonly Judged[]): Widths {
  const struck = new Map(judged.map((one) => [keyOf(one), one.struck]));
  const widths = judged.flatMap(({ stroke, pass, struck: primary }) => {
    if (stroke.graces.length !== 1 || stroke.opened) return [];
    const grace = struck.get(keyOf({ id: stroke.graces[0], pass }));
    return grace === undefined || primary === undefined ? [] : [primary - grace];
  });
  return widthsOf(widths);
}

/** The last two parts of a slot by one hand, and what is struck where the slot ends. */
function diddlesOf({ ticks, bars }: Timeline, main: readonly Judged[]): Widths {
  const tickOf = ({ stroke, pass }: Judged): number => stroke.tick + (pass - 1) * ticks;
  const next = new Map<number, Judged>();
  for (const one of main) if (!next.has(tickOf(one))) next.set(tickOf(one), one);
  const before = new Map(main.map((one) => [`${tickOf(one)} ${one.limb}`, one]));
  const shares = main.flatMap((second) => {
    const { kind, rebound, part, parts, limb, bar } = second.stroke;
    if (kind !== 'diddle' || rebound !== 1 || part !== parts - 1) return [];
    const { meter, grid } = bars[Math.max(1, bar) - 1];
    const share = slotTicks(meter, grid) / parts;
    const times = [before.get(`${tickOf(second) - share} ${limb}`), second, next.get(tickOf(second) + share)];
    const [t1, t2, t3] = times.map((one) => one?.struck);
    return t1 === undefined || t2 === undefined || t3 === undefined || t3 === t1 ? [] : [(t3 - t2) / (t3 - t1)];
  });
  return widthsOf(shares);
}

function driftOf(judged: readonly Judged[], bpm: Bpm): Bpm | undefined {
  const points = judged.flatMap(({ asked, struck }) => (struck === undefined ? [] : [{ x: asked, y: struck }]));
  const slope = slopeOf(points);
  return slope === undefined || slope <= 0 ? undefined : bpm * (1 / slope - 1);
}

/** Quarters a minute over the whole take. */
const meanBpm = ({ ticks }: Timeline, passes: number, { seconds }: Take): Bpm =>
  (60 * passes * ticks) / TICKS_PER_QUARTER / seconds;
