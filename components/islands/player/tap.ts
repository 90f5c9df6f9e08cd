/** A longer gap than this (30 beats a minute, and some patience) begins anew. */
const GAP_MS = 2500;
/** Taps that are averaged, at most: two bars of four. */
const TAPS = 9;

/** What the taps so far say. */
export interface Taps {
  times: readonly number[];
  /** Beats a minute, from the second tap on. */
  tempo?: number;
}

/**
 * Takes one more tap, at its event's own time in milliseconds.
 *
 * @example
 * tapped(tapped({ times: [] }, 0), 500).tempo; // 120
 */
export function tapped(taps: Taps, time: number): Taps {
  const last = taps.times.at(-1);
  const fresh = last === undefined || time - last > GAP_MS || time <= last;
  const times = fresh ? [time] : [...taps.times, time].slice(-TAPS);
  const span = time - (times[0] ?? time);
  return span > 0 ? { times, tempo: Math.round((60_000 * (times.length - 1)) / span) } : { times };
}
