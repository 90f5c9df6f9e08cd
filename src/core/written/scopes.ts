import type { Ticks } from '../time/units.ts';
import type { Fragment, ScoreBar } from './fragments.ts';
import type { Onset } from './voices.ts';

/** A stretch of time that is written in one way: a fragment, or one beat of it where the beat is a tuplet. */
export interface Scope {
  tick: Ticks;
  ticks: Ticks;
  slotTicks: Ticks;
  /** Written ticks to a sounding tick: 1, or 3/2 under a triplet. */
  scale: number;
  /** The figure over it; 0 where it is no tuplet. */
  figure: number;
}

const isPowerOfTwo = (n: number): boolean => (n & (n - 1)) === 0;
const inThree = (ticks: Ticks): boolean => ticks % 30240 === 0;

/** Whether a beat cut in so many is written without a tuplet: halves, and in dotted beats thirds and dotted values. */
function isPlain(ticks: Ticks, cuts: number): boolean {
  return isPowerOfTwo(cuts) || (inThree(ticks) && cuts % 3 === 0 && isPowerOfTwo(cuts / 3));
}

/** The plain division that a tuplet of so many stands for: the largest below it. */
function stoodFor(ticks: Ticks, cuts: number): number {
  const plain = inThree(ticks) ? [3, 6, 12] : [1, 2, 4, 8];
  return Math.max(...plain.filter((n) => n < cuts));
}

/** The fewest equal cuts of the beat on which every onset, and every slot that is split, begins. */
function fewestCuts(tick: Ticks, ticks: Ticks, grid: number, onsets: readonly Onset[], slotTicks: Ticks): number {
  const starts = onsets.flatMap((onset) => {
    const slot = Math.floor((onset.tick - tick) / slotTicks);
    return onset.parts > 1 ? [slot, slot + 1] : [slot];
  });
  for (let cuts = 1; cuts < grid; cuts += 1)
    if (grid % cuts === 0 && starts.every((slot) => (slot * cuts) % grid === 0)) return cuts;
  return ticks / slotTicks;
}

function scopeOf(tick: Ticks, ticks: Ticks, bar: ScoreBar, onsets: readonly Onset[]): Scope {
  const here = onsets.filter((onset) => onset.tick >= tick && onset.tick < tick + ticks);
  const grid = ticks / bar.slotTicks;
  const halved = isPowerOfTwo(bar.grid);
  const cuts = halved || isPlain(ticks, grid) ? grid : fewestCuts(tick, ticks, grid, here, bar.slotTicks);
  const plain = halved || isPlain(ticks, cuts);
  const scale = plain ? 1 : cuts / stoodFor(ticks, cuts);
  return { tick, ticks, slotTicks: bar.slotTicks, scale, figure: plain ? 0 : cuts };
}

/** The scopes of a fragment: one, but for uneven meters whose beats are tuplets. */
export function scopesOf(fragment: Fragment, bar: ScoreBar, onsets: readonly Onset[]): Scope[] {
  const { beatTicks } = bar.meter;
  const beats = fragment.ticks / beatTicks;
  if (beats === 1 || isPowerOfTwo(bar.grid)) return [scopeOf(fragment.tick, fragment.ticks, bar, onsets)];
  return Array.from({ length: beats }, (_, i) => scopeOf(fragment.tick + i * beatTicks, beatTicks, bar, onsets));
}
