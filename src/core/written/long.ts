import { TICKS_PER_QUARTER, type Ticks } from '../time/units.ts';
import type { Fragment, ScoreBar } from './fragments.ts';
import type { Onset } from './voices.ts';
import { valueOf, type Value } from './values.ts';
import type { Written } from './symbols.ts';

/** Whether so many whole beats from this one may be one note or rest: halves of a bar, or all of it (common practice). */
function mayJoin(bar: ScoreBar, index: number, count: number): boolean {
  const { length } = bar.fragments;
  const even = bar.fragments.every((fragment) => fragment.ticks === bar.fragments[0].ticks);
  if (!even || index + count > length) return false;
  if (count === length) return true;
  return count === 2 && length % 2 === 0 && index % 2 === 0;
}

const endOf = (fragment: Fragment): Ticks => fragment.tick + fragment.ticks;

interface Long {
  count: number;
  ticks: Ticks;
  value: Value;
}

/** What a bar holds for one voice, and where lines of the page begin inside it: a long symbol may not go over those. */
export interface VoiceBar {
  bar: ScoreBar;
  onsets: readonly Onset[];
  breaks: ReadonlySet<Ticks>;
}

const isBroken = (breaks: ReadonlySet<Ticks>, tick: Ticks, end: Ticks): boolean =>
  [...breaks].some((at) => at > tick && at < end);

/** The most beats from here that are free of onsets, of a length with a value of its own, and allowed. */
function longest({ bar, onsets, breaks }: VoiceBar, index: number, allowed: (end: Ticks) => boolean): Long[] {
  const { tick } = bar.fragments[index];
  return [4, 3, 2].flatMap((count) => {
    if (!mayJoin(bar, index, count)) return [];
    const end = endOf(bar.fragments[index + count - 1]);
    const value = valueOf(end - tick);
    const free = onsets.every((onset) => onset.tick <= tick || onset.tick >= end);
    return value && free && !isBroken(breaks, tick, end) && allowed(end) ? [{ count, ticks: end - tick, value }] : [];
  });
}

/** One symbol over several whole beats, and how many. */
export interface LongSymbol {
  symbol: Written;
  beats: number;
}

const plainScope = (tick: Ticks, ticks: Ticks): Written['scope'] => ({
  tick,
  ticks,
  slotTicks: TICKS_PER_QUARTER,
  scale: 1,
  figure: 0,
});

/** A note that rings over whole beats from the start of one, as a half or longer. */
export function longNote(voice: VoiceBar, index: number, held?: Onset): LongSymbol | undefined {
  const { bar, onsets } = voice;
  const { tick } = bar.fragments[index];
  const begins = onsets.find((onset) => onset.tick === tick);
  const onset = begins ?? held;
  if (!onset) return undefined;
  const [found] = longest(voice, index, (end) => onset.ringEnd >= end);
  if (!found) return undefined;
  const tied = onset.ringEnd > tick + found.ticks;
  const { ticks, value } = found;
  const scope = plainScope(tick, ticks);
  const symbol: Written = { kind: 'note', tick, ticks, value, offset: 0, onset, begins: !!begins, tied, scope };
  return { symbol, beats: found.count };
}

/** A rest of half a bar. A bar of silence has its whole rest, whatever the meter. */
export function longRest(voice: VoiceBar, index: number, held?: Onset): LongSymbol | undefined {
  const { bar, onsets, breaks } = voice;
  const { tick } = bar.fragments[index];
  if (held || onsets.some((onset) => onset.tick === tick)) return undefined;
  const whole = !isBroken(breaks, bar.tick, bar.tick + bar.ticks);
  const silent = whole && onsets.length === 0 && index === 0 && bar.number > 0;
  const [found] = silent
    ? [{ count: bar.fragments.length, ticks: bar.ticks, value: { base: 1, dots: 0 } as Value }]
    : longest(voice, index, () => true).filter((long) => !long.value.dots);
  if (!found) return undefined;
  const { ticks, value, count } = found;
  const scope = plainScope(tick, ticks);
  return {
    symbol: { kind: 'rest', tick, ticks, value, offset: 0, begins: true, tied: false, scope },
    beats: count,
  };
}
