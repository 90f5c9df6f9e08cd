import { checkOptions, oneOf } from '../check.ts';
import { HANDS, isHand, LIMBS } from '../sticking/limbs.ts';
import { slotTicks } from '../time/meter.ts';
import { DEFAULT_FLAM_MS, schedule, secondsAt } from '../timeline/schedule.ts';
import type { Hand, Limb } from '../sticking/types.ts';
import type { Bpm, Milliseconds, Seconds, Ticks } from '../time/units.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';

/** What a gap asks of a limb; each kind has a limit of its own. */
export type GapKind = 'single' | 'rebound' | 'grace' | 'foot' | 'doubleFoot';

/** The way from one stroke of a limb to its next. */
export interface Gap {
  kind: GapKind;
  /** Ids of the two strokes. */
  from: string;
  to: string;
  ticks: Ticks;
  /** Slots of the bar the first stroke stands in; a fraction inside a split slot. */
  slots: number;
  ms: Milliseconds;
  /** Where it begins. */
  bar: number;
  count: string;
}

/** How gaps are measured. */
export interface GapOptions {
  bpm: Bpm;
  flamMs?: Milliseconds;
  /** Whether the phrase is repeated, so that the last gap leads back to the first stroke. */
  loop?: boolean;
}

/** A timeline that has been scheduled, and its doubles. */
export interface Timed {
  timeline: Timeline;
  loop: boolean;
  seconds: ReadonlyMap<string, Seconds>;
  /** How long one time round is. */
  length: Seconds;
  /** Ids of the strokes that begin a double over two slots. */
  doubles: ReadonlySet<string>;
}

/** Schedules a timeline once for the gaps of all limbs. */
export function timed(timeline: Timeline, given: GapOptions): Timed {
  checkOptions('gaps', given);
  const options = { flamMs: DEFAULT_FLAM_MS, loop: false, ...given };
  return {
    timeline,
    loop: options.loop,
    seconds: new Map(schedule(timeline, options).map((s) => [s.id, s.seconds])),
    length: secondsAt(timeline, options)(timeline.ticks),
    doubles: doublesIn(timeline, options.loop),
  };
}

/**
 * The gaps of one limb, in order. A gap from a grace note is of the kind `grace`; the second stroke of a double is a
 * `rebound`.
 */
export function gapsOf(timeline: Timeline, limb: Limb, options: GapOptions): Gap[] {
  oneOf('limb', limb, LIMBS);
  return limbGaps(timed(timeline, options), limb);
}

/** A stroke and when it comes, one repeat later where the phrase goes round. */
interface Turn {
  stroke: Stroke;
  tick: Ticks;
  seconds: Seconds;
  again: boolean;
}

/** The gaps of one limb, in order. */
export function limbGaps({ timeline, loop, seconds, length, doubles }: Timed, limb: Limb): Gap[] {
  const turns = timeline.strokes
    .filter((stroke) => stroke.limb === limb)
    .map((stroke): Turn => ({ stroke, tick: stroke.tick, seconds: seconds.get(stroke.id)!, again: false }));
  const last = turns[turns.length - 1];
  // A pickup comes again only where the last bar leaves room for it.
  const first = loop ? turns.find((turn) => turn.tick + timeline.ticks > last.tick) : undefined;
  const ends = first
    ? [...turns, { ...first, tick: first.tick + timeline.ticks, seconds: first.seconds + length, again: true }]
    : turns;
  return ends.slice(1).map((to, i) => gapBetween(timeline, ends[i], to, doubles));
}

function gapBetween(timeline: Timeline, from: Turn, to: Turn, doubles: ReadonlySet<string>): Gap {
  const ticks = to.tick - from.tick;
  return {
    kind: kindOf(from, to, doubles),
    from: from.stroke.id,
    to: to.stroke.id,
    ticks,
    slots: ticks / slotTicksAt(timeline, from.stroke.bar),
    ms: (to.seconds - from.seconds) * 1000,
    bar: from.stroke.bar,
    count: from.stroke.count,
  };
}

function slotTicksAt({ bars }: Timeline, number: number): Ticks {
  const { meter, grid } = bars[Math.min(bars.length, Math.max(1, number)) - 1];
  return slotTicks(meter, grid);
}

function kindOf(from: Turn, to: Turn, doubles: ReadonlySet<string>): GapKind {
  if (!isHand(from.stroke.limb)) return splitsSlot(from, to) ? 'doubleFoot' : 'foot';
  if (from.stroke.kind === 'grace') return 'grace';
  if (to.stroke.kind === 'grace') return 'single';
  return splitsSlot(from, to) || doubles.has(from.stroke.id) ? 'rebound' : 'single';
}

/** Two strokes of one limb in one slot, the same time round: a diddle, or a doubled kick. */
const splitsSlot = (from: Turn, to: Turn): boolean =>
  !to.again &&
  from.stroke.bar === to.stroke.bar &&
  from.stroke.slot === to.stroke.slot &&
  to.tick > from.tick &&
  from.stroke.parts > 1;

/** Main strokes of the hands at one tick. */
interface Moment {
  tick: Ticks;
  struck: Partial<Record<Hand, string>>;
  /** Ticks of a slot there. */
  slot: Ticks;
}

/**
 * The strokes that begin a double over two slots: exactly two strokes of one hand in neighboring slots, whatever the other
 * hand does at the same time, with the other hand or a rest before and after them.
 */
function doublesIn(timeline: Timeline, loop: boolean): Set<string> {
  const moments = momentsOf(timeline);
  const goesOn = (i: number, hand: Hand, slot: Ticks): boolean => {
    const [from, to] = [momentAt(moments, i, timeline, loop), momentAt(moments, i + 1, timeline, loop)];
    if (!from?.struck[hand] || !to?.struck[hand]) return false;
    return to.tick > from.tick && to.tick - from.tick <= slot;
  };
  const doubles = new Set<string>();
  moments.forEach(({ struck, slot }, i) => {
    for (const hand of HANDS)
      if (goesOn(i, hand, slot) && !goesOn(i - 1, hand, slot) && !goesOn(i + 1, hand, slot)) doubles.add(struck[hand]!);
  });
  return doubles;
}

function momentsOf(timeline: Timeline): Moment[] {
  const moments: Moment[] = [];
  for (const { id, tick, limb, kind, bar } of timeline.strokes) {
    if (!isHand(limb) || kind === 'grace') continue;
    if (moments[moments.length - 1]?.tick !== tick)
      moments.push({ tick, struck: {}, slot: slotTicksAt(timeline, bar) });
    moments[moments.length - 1].struck[limb] = id;
  }
  return moments;
}

/** A moment by its place; over the seam of a loop it comes again one time round later or earlier. */
function momentAt(moments: Moment[], n: number, { ticks }: Timeline, loop: boolean): Moment | undefined {
  const round = Math.floor(n / moments.length);
  if (round === 0 || !loop) return moments[n];
  const moment = moments[n - round * moments.length];
  return { ...moment, tick: moment.tick + round * ticks };
}
