import { slotTicks } from '../time/meter.ts';
import { DEFAULT_FLAM_MS, schedule, secondsAt } from '../timeline/schedule.ts';
import type { Foot, Hand, Limb } from '../sticking/types.ts';
import type { Bpm, Milliseconds, Ticks } from '../time/units.ts';
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

/** A stroke and when it comes, one repeat later where the phrase goes round. */
interface Turn {
  stroke: Stroke;
  tick: Ticks;
  seconds: number;
}

/** How gaps are measured. */
export interface GapOptions {
  bpm: Bpm;
  flamMs?: Milliseconds;
  /** Whether the phrase is repeated, so that the last gap leads back to the first stroke. */
  loop?: boolean;
}

/**
 * The gaps of one limb, in order. A gap from a grace note is of the kind `grace`; the second stroke of a double is a
 * `rebound`.
 */
export function gapsOf(timeline: Timeline, limb: Limb, given: GapOptions): Gap[] {
  const options = { flamMs: DEFAULT_FLAM_MS, loop: false, ...given };
  const seconds = new Map(schedule(timeline, options).map((s) => [s.id, s.seconds]));
  const length = secondsAt(timeline, options)(timeline.ticks);
  const own = timeline.strokes.filter((s) => s.limb === limb);
  const turns = own.map((stroke) => ({ stroke, tick: stroke.tick, seconds: seconds.get(stroke.id)! }));
  // A pickup comes again only where the last bar leaves room for it.
  const again = turns.map((t) => ({ ...t, tick: t.tick + timeline.ticks, seconds: t.seconds + length }));
  const first = again.filter((t) => t.tick > turns[turns.length - 1].tick).slice(0, 1);
  const ends = options.loop ? [...turns, ...first] : turns;
  return ends.slice(1).map((to, i) => gap(timeline, ends[i], to));
}

function gap(timeline: Timeline, from: Turn, to: Turn): Gap {
  const bar = timeline.bars[Math.max(0, from.stroke.bar - 1)];
  const ticks = to.tick - from.tick;
  return {
    kind: kindOf(timeline, from, to),
    from: from.stroke.id,
    to: to.stroke.id,
    ticks,
    slots: ticks / slotTicks(bar.meter, bar.grid),
    ms: (to.seconds - from.seconds) * 1000,
    bar: from.stroke.bar,
    count: from.stroke.count,
  };
}

function kindOf(timeline: Timeline, from: Turn, to: Turn): GapKind {
  const { limb } = from.stroke;
  if (limb === 'K' || limb === 'H') return splitsSlot(from, to) ? 'doubleFoot' : 'foot';
  if (from.stroke.kind === 'grace') return 'grace';
  if (to.stroke.kind === 'grace') return 'single';
  return splitsSlot(from, to) || isDouble(timeline, from, to, limb) ? 'rebound' : 'single';
}

/** Two strokes of one limb in one slot: a diddle, or a doubled kick. */
const splitsSlot = (from: Turn, to: Turn): boolean =>
  from.stroke.bar === to.stroke.bar &&
  from.stroke.slot === to.stroke.slot &&
  to.tick > from.tick &&
  from.stroke.parts > 1;

/** Exactly two strokes of one hand in neighbouring slots, before and after them the other hand or a rest: a double. */
function isDouble(timeline: Timeline, from: Turn, to: Turn, limb: Hand | Foot): boolean {
  const hands = timeline.strokes.filter((s) => (s.limb === 'R' || s.limb === 'L') && s.kind !== 'grace');
  const bar = timeline.bars[Math.max(0, from.stroke.bar - 1)];
  const slot = slotTicks(bar.meter, bar.grid);
  const i = hands.findIndex((s) => s.id === from.stroke.id);
  // Over the seam a stroke comes again one phrase later or earlier.
  const place = (n: number) => {
    const round = Math.floor(n / hands.length);
    const stroke = hands[n - round * hands.length];
    return { limb: stroke.limb, id: stroke.id, tick: stroke.tick + round * timeline.ticks };
  };
  const [before, first, second, after] = [i - 1, i, i + 1, i + 2].map(place);
  const joined = (a: { limb: string; tick: Ticks }, b: { limb: string; tick: Ticks }) =>
    a.limb === limb && b.limb === limb && b.tick - a.tick <= slot;
  return second.id === to.stroke.id && joined(first, second) && !joined(before, first) && !joined(second, after);
}
