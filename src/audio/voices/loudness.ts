import { highpass, highShelf } from './filters.ts';
import type { SampleRate, Signal } from './signal.ts';

/** How much of a stroke decides how loud it seems: its first 80 ms. */
const WINDOW_SECONDS = 0.08;

/**
 * Loudness of a stroke in decibels below full scale: the mean square of its first 80 ms, weighted as ITU-R BS.1770 weights
 * (a shelf of 4 dB above about 1.7 kHz, less below about 40 Hz; the analog values of its two filters are recalled).
 */
export function loudnessOf(signal: Signal, rate: SampleRate): number {
  const start = signal.slice(0, Math.round(WINDOW_SECONDS * rate));
  highShelf(start, rate, 1682, Math.SQRT1_2, 4);
  highpass(start, rate, 38, 0.5);
  const squares = start.reduce((sum, sample) => sum + sample * sample, 0);
  return 10 * Math.log10(squares / (WINDOW_SECONDS * rate));
}
