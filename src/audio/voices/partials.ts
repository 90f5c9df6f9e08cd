import { decayStep } from './decay.ts';
import type { Hertz, SampleRate, Signal } from './signal.ts';

/** One vibration of a struck thing: it starts at zero and dies away. */
export interface Partial {
  frequency: Hertz;
  level: number;
  /** Seconds until it has fallen by 60 dB. */
  sixty: number;
}

/** How far above its resting pitch a head starts, as a share of it, and how fast it comes down. */
export interface PitchFall {
  rise: number;
  /** Seconds until a share of 1/e of the rise is left. */
  seconds: number;
}

/** How many samples share one angle while the pitch falls: short enough to be smooth, long enough to be cheap. */
const BLOCK = 16;

/** How far a partial is rendered, in decibels: the few of a head to the end of hearing, the many of a plate not so far. */
const HEAD_DEPTH = 78;
const PLATE_DEPTH = 66;

/** The sample by which a partial has fallen so far. */
function reach({ sixty }: Partial, rate: SampleRate, length: number, depth: number): number {
  return Math.min(length, Math.ceil((depth / 60) * sixty * rate));
}

/** Adds partials of steady pitch, above all those of metal and wood. */
export function ring(into: Signal, rate: SampleRate, partials: readonly Partial[]): Signal {
  for (const partial of partials) if (partial.frequency < 0.45 * rate) ringOne(into, rate, partial);
  return into;
}

/** A two-pole resonator: two multiplications a sample and no sine. */
function ringOne(into: Signal, rate: SampleRate, partial: Partial): void {
  const angle = (2 * Math.PI * partial.frequency) / rate;
  const step = decayStep(partial.sixty, rate);
  const [turn, shrink] = [2 * step * Math.cos(angle), step * step];
  let before = 0;
  let now = partial.level * step * Math.sin(angle);
  const end = reach(partial, rate, into.length, PLATE_DEPTH);
  for (let i = 1; i < end; i++) {
    into[i] += now;
    const next = turn * now - shrink * before;
    before = now;
    now = next;
  }
}

/** Adds partials whose pitches fall together from sample `at` on, as those of a head do. */
export function ringFalling(
  into: Signal,
  rate: SampleRate,
  partials: readonly Partial[],
  fall: PitchFall,
  at = 0,
): Signal {
  for (const partial of partials) fallOne(into.subarray(at), rate, partial, fall);
  return into;
}

/** Turns a pointer in the plane; its angle a sample is set anew for each block. */
function fallOne(into: Signal, rate: SampleRate, partial: Partial, fall: PitchFall): void {
  const step = decayStep(partial.sixty, rate);
  const end = reach(partial, rate, into.length, HEAD_DEPTH);
  let x = partial.level;
  let y = 0;
  for (let from = 0; from < end; from += BLOCK) {
    const rise = fall.rise * Math.exp(-(from + BLOCK / 2) / (fall.seconds * rate));
    const angle = (2 * Math.PI * partial.frequency * (1 + rise)) / rate;
    const [cos, sin] = [step * Math.cos(angle), step * Math.sin(angle)];
    for (let i = from; i < Math.min(end, from + BLOCK); i++) {
      into[i] += y;
      const turned = cos * x - sin * y;
      y = sin * x + cos * y;
      x = turned;
    }
  }
}
