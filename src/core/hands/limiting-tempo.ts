import { DEFAULT_FLAM_MS, graceFigures } from '../timeline/schedule.ts';
import { TICKS_PER_QUARTER, type Bpm, type Milliseconds, type Ticks } from '../time/units.ts';
import type { Timeline } from '../timeline/types.ts';
import type { Gap } from './gaps.ts';

/** How far a grace note stands before its primary: so wide, but no farther than there is room. */
interface Ahead {
  wide: Milliseconds;
  /** Its share of half the way from the stroke before. */
  room: Ticks;
}

const TOGETHER: Ahead = { wide: 0, room: 0 };

/** How flams are played, and whether the phrase goes round. */
interface Played {
  flamMs?: Milliseconds;
  loop?: boolean;
}

/**
 * For a timeline, the tempo in quarters a minute at which a gap is as short as a limit; Infinity where it never is. A grace
 * note keeps its width at every tempo until the stroke before comes too near; from there on it shrinks with the rest.
 */
export function limitingTempo(timeline: Timeline, played: Played): (gap: Gap, limit: Milliseconds) => Bpm {
  const aheads = graceAheads(timeline, played);
  return ({ from, to, ticks }, limit) => {
    if (ticks === 0) return Infinity;
    const ends = [aheads.get(from) ?? TOGETHER, aheads.get(to) ?? TOGETHER];
    const msAt = (msPerTick: number): Milliseconds =>
      ticks * msPerTick + aheadAt(ends[0], msPerTick) - aheadAt(ends[1], msPerTick);
    const bends = [0, ...ends.map(bendOf)].sort((a, b) => a - b);
    const bend = bends.findLast((at) => msAt(at) <= limit);
    if (bend === undefined) return Infinity;
    const next = bends.find((at) => at > bend);
    const slope = next === undefined ? ticks : (msAt(next) - msAt(bend)) / (next - bend);
    return 60_000 / ((bend + (limit - msAt(bend)) / slope) * TICKS_PER_QUARTER);
  };
}

/** With nothing before it a grace note has all the room there is. */
const aheadAt = ({ wide, room }: Ahead, msPerTick: number): Milliseconds =>
  room === Infinity ? wide : Math.min(wide, room * msPerTick);

/** Milliseconds a tick from which on a grace note has its full width. */
const bendOf = ({ wide, room }: Ahead): number => (room > 0 ? wide / room : 0);

/** As `schedule` has it. */
function graceAheads(timeline: Timeline, { flamMs = DEFAULT_FLAM_MS, loop = false }: Played): Map<string, Ahead> {
  const aheads = new Map<string, Ahead>();
  for (const { primary, room } of graceFigures(timeline, loop, (tick) => tick)) {
    const share = room / 2 / primary.graces.length;
    primary.graces.forEach((id, i) => {
      const steps = primary.graces.length - i;
      aheads.set(id, { wide: steps * flamMs, room: steps * share });
    });
  }
  return aheads;
}
