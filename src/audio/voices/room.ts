import { shape } from './decay.ts';
import { bandpass, highpass, lowpass } from './filters.ts';
import { rng, type Random } from './rng.ts';
import { mix, scale, silence, whiteNoise, type SampleRate, type Signal } from './signal.ts';

/** Seconds that the room answers. */
export const ROOM_SECONDS = 0.36;

/** Walls, floor and ceiling of a small furnished practice room: seconds after the stroke, and level (ours). */
const REFLECTIONS: readonly (readonly [seconds: number, level: number])[] = [
  [0.0046, 0.68],
  [0.0071, 0.54],
  [0.0093, 0.5],
  [0.0127, 0.38],
  [0.0162, 0.32],
  [0.0208, 0.25],
  [0.0269, 0.18],
];

/** Bands of the tail: curtains and carpet take the highs first. */
const TAIL: readonly { middle: number; sixty: number; level: number }[] = [
  { middle: 250, sixty: 0.34, level: 0.9 },
  { middle: 900, sixty: 0.3, level: 0.8 },
  { middle: 2800, sixty: 0.24, level: 0.5 },
  { middle: 6500, sixty: 0.16, level: 0.25 },
];

/**
 * The room that every voice shares, as the left and the right channel of an impulse response with no direct sound and
 * an energy of 1 each at 48 kHz, as strong at other rates: for a convolver that does not normalize, mixed in at about 0.2.
 */
export function renderRoom(sampleRate: SampleRate): Signal[] {
  return ['left', 'right'].map((ear) => roomFor(rng(`room ${ear}`), sampleRate));
}

function roomFor(random: Random, rate: SampleRate): Signal {
  const out = silence(ROOM_SECONDS, rate);
  for (const [seconds, level] of REFLECTIONS) {
    // The ears are not in the same place: each reflection comes up to half a millisecond later to one of them.
    const at = Math.round((seconds + 0.0005 * random()) * rate);
    out[at] += level * (random() < 0.4 ? -1 : 1);
  }
  lowpass(out, rate, 6000, 0.6);
  mix(out, tailFor(random, rate, out.length));
  return leveled(highpass(out, rate, 120), rate);
}

/** Diffuse from about 8 ms on. */
function tailFor(random: Random, rate: SampleRate, length: number): Signal {
  const start = Math.round(0.008 * rate);
  const tail = new Float32Array(length);
  for (const { middle, sixty, level } of TAIL) {
    const noise = bandpass(whiteNoise(length - start, { rate, random }), rate, middle, 0.7);
    // A wall is one sample at any rate, the tail is more of them the higher it is: each must count for less.
    mix(tail, shape(noise, rate, sixty, 0.006), (0.35 * level * 48000) / rate, start);
  }
  const end = Math.round(0.05 * rate);
  for (let i = 0; i < end; i++) tail[length - 1 - i] *= i / end;
  return tail;
}

function leveled(signal: Signal, rate: SampleRate): Signal {
  const energy = signal.reduce((sum, sample) => sum + sample * sample, 0);
  return scale(signal, Math.sqrt(48000 / rate / energy));
}
