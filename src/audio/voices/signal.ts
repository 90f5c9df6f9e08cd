import type { Random } from './rng.ts';

/** One channel of sound, samples from −1 to 1 once it is finished. */
export type Signal = Float32Array;
/** Samples a second. */
export type SampleRate = number;
/** Cycles a second. */
export type Hertz = number;

/** What a single stroke is rendered with: the rate, its own chance, and the hand that plays it. */
export interface Take {
  rate: SampleRate;
  random: Random;
  left: boolean;
}

/** A stretch of silence of so many seconds. */
export function silence(seconds: number, rate: SampleRate): Signal {
  return new Float32Array(Math.ceil(seconds * rate));
}

/** White noise, from −1 to 1 at 48 kHz; at other rates as strong in each hertz, so that a voice keeps its balance. */
export function whiteNoise(length: number, { rate, random }: Pick<Take, 'rate' | 'random'>): Signal {
  const noise = new Float32Array(length);
  const reach = Math.sqrt(rate / 48000);
  for (let i = 0; i < length; i++) noise[i] = reach * (2 * random() - 1);
  return noise;
}

/** Adds `from` to `into` from sample `at` on, as far as `into` reaches; gives `into`. */
export function mix(into: Signal, from: Signal, gain = 1, at = 0): Signal {
  const end = Math.min(from.length, into.length - at);
  for (let i = 0; i < end; i++) into[at + i] += gain * from[i];
  return into;
}

/** Multiplies every sample in place. */
export function scale(signal: Signal, gain: number): Signal {
  for (let i = 0; i < signal.length; i++) signal[i] *= gain;
  return signal;
}

/** The largest magnitude of a signal. */
export function peakOf(signal: Signal): number {
  let peak = 0;
  for (const sample of signal) peak = Math.max(peak, Math.abs(sample));
  return peak;
}

/** A ratio of amplitudes from decibels: 0 is 1, −6.02 is a half. */
export function fromDecibels(decibels: number): number {
  return 10 ** (decibels / 20);
}
