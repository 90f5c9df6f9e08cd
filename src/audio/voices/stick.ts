import { shape } from './decay.ts';
import { bandpass, highpass } from './filters.ts';
import { mix, silence, whiteNoise, type Hertz, type Signal, type Take } from './signal.ts';

/**
 * How much of a frequency a touch of so many milliseconds carries: the envelope of a half-sine push's spectrum. A harder
 * stroke is a shorter touch and so a brighter sound (from memory: Fletcher and Rossing on struck strings and membranes).
 */
export function touchShare(frequency: Hertz, touchMs: number): number {
  return 1 / (1 + (2 * frequency * touchMs * 0.001) ** 2);
}

/** The sound of a tip that lands. */
export interface Tip {
  /** Length of the push in milliseconds: 0.1 for a bare tip on metal, 3 for a felt beater on a head. */
  touchMs: number;
  /** Middle of the scraping noise that follows the push, and how long that lasts. */
  noise: Hertz;
  sixty: number;
  /** Noise against the push, as a ratio of amplitudes. */
  roughness: number;
}

/**
 * A stick's attack: one push, always the same, then noise that never is. The push gives every variant its onset at the
 * same sample; the noise stays below it.
 */
export function tip({ touchMs, noise, sixty, roughness }: Tip, take: Take): Signal {
  const { rate } = take;
  const out = silence(1.2 * sixty + 0.002 * touchMs, rate);
  mix(out, push(touchMs, rate));
  const scrape = bandpass(whiteNoise(out.length, take), rate, noise, 0.8);
  mix(out, shape(scrape, rate, sixty, 0.0002), 1.6 * roughness);
  return highpass(out, rate, 90);
}

/** One smooth swing up and down again, as long as two touches, without a constant part. */
function push(touchMs: number, rate: number): Signal {
  const length = Math.max(4, 2 * touchMs * 0.001 * rate);
  const swing = new Float32Array(Math.ceil(length));
  return swing.map((_, i) => 1.3 * Math.sin((2 * Math.PI * i) / length) * Math.sin((Math.PI * i) / length));
}
