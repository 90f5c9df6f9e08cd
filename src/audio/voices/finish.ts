import { fade } from './decay.ts';
import { loudnessOf } from './loudness.ts';
import { fromDecibels, peakOf, scale, type SampleRate, type Signal } from './signal.ts';

/** What is softer than this share of the peak at the end is cut off: 72 dB. */
const SILENT = fromDecibels(-72);
/** Seconds of the last fade. */
const FADE_SECONDS = 0.012;

/** Takes out any constant part, in place, by a first-order filter at 12 Hz that leaves the first sample where it is. */
function steady(signal: Signal, rate: SampleRate): Signal {
  const keep = Math.exp((-2 * Math.PI * 12) / rate);
  let [before, out] = [0, 0];
  for (let i = 0; i < signal.length; i++) {
    out = keep * (out + signal[i] - before);
    before = signal[i];
    signal[i] = out;
  }
  return signal;
}

/** Cuts the silent end off and lets the rest end without a step. */
function trim(signal: Signal, rate: SampleRate): Signal {
  const silent = SILENT * peakOf(signal);
  let length = signal.length;
  while (length > 1 && Math.abs(signal[length - 1]) < silent) length--;
  const end = Math.min(signal.length, length + Math.round(FADE_SECONDS * rate));
  const kept = signal.slice(0, end);
  return fade(kept, rate, (end - 1) / rate - FADE_SECONDS, (end - 1) / rate);
}

/** Makes a raw stroke fit to play: no constant part, a soft end, and the loudness given in decibels. */
export function finish(signal: Signal, rate: SampleRate, loudness: number): Signal {
  const ended = trim(steady(signal, rate), rate);
  return scale(ended, fromDecibels(loudness - loudnessOf(ended, rate)));
}
