import type { Hertz, SampleRate, Signal } from './signal.ts';

/**
 * Second-order filters by the formulas of the Audio EQ Cookbook (R. Bristow-Johnson; published as a W3C note in 2021).
 * Each changes the signal in place and gives it back.
 */
interface Biquad {
  b0: number;
  b1: number;
  b2: number;
  a0: number;
  a1: number;
  a2: number;
}

/** Cosine of the corner's angle and half its bandwidth, with the corner held below half the sample rate. */
function corner(frequency: Hertz, q: number, rate: SampleRate): { cos: number; alpha: number } {
  const angle = (2 * Math.PI * Math.min(frequency, 0.49 * rate)) / rate;
  return { cos: Math.cos(angle), alpha: Math.sin(angle) / (2 * q) };
}

function run(signal: Signal, { b0, b1, b2, a0, a1, a2 }: Biquad): Signal {
  const [g0, g1, g2, f1, f2] = [b0 / a0, b1 / a0, b2 / a0, a1 / a0, a2 / a0];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < signal.length; i++) {
    const x = signal[i];
    const y = g0 * x + g1 * x1 + g2 * x2 - f1 * y1 - f2 * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    signal[i] = y;
  }
  return signal;
}

/** Keeps what is below the corner. */
export function lowpass(signal: Signal, rate: SampleRate, frequency: Hertz, q = Math.SQRT1_2): Signal {
  const { cos, alpha } = corner(frequency, q, rate);
  const half = (1 - cos) / 2;
  return run(signal, { b0: half, b1: 2 * half, b2: half, a0: 1 + alpha, a1: -2 * cos, a2: 1 - alpha });
}

/** Keeps what is above the corner. */
export function highpass(signal: Signal, rate: SampleRate, frequency: Hertz, q = Math.SQRT1_2): Signal {
  const { cos, alpha } = corner(frequency, q, rate);
  const half = (1 + cos) / 2;
  return run(signal, { b0: half, b1: -2 * half, b2: half, a0: 1 + alpha, a1: -2 * cos, a2: 1 - alpha });
}

/** Keeps a band; 0 dB at its middle. */
export function bandpass(signal: Signal, rate: SampleRate, frequency: Hertz, q: number): Signal {
  const { cos, alpha } = corner(frequency, q, rate);
  return run(signal, { b0: alpha, b1: 0, b2: -alpha, a0: 1 + alpha, a1: -2 * cos, a2: 1 - alpha });
}

/** Lifts (or, below 0 dB, lowers) a band and leaves the rest. */
export function bell(signal: Signal, rate: SampleRate, frequency: Hertz, q: number, decibels: number): Signal {
  const { cos, alpha } = corner(frequency, q, rate);
  const lift = 10 ** (decibels / 40);
  return run(signal, {
    b0: 1 + alpha * lift,
    b1: -2 * cos,
    b2: 1 - alpha * lift,
    a0: 1 + alpha / lift,
    a1: -2 * cos,
    a2: 1 - alpha / lift,
  });
}

/** Lifts (or lowers) all that is above the corner. */
export function highShelf(signal: Signal, rate: SampleRate, frequency: Hertz, q: number, decibels: number): Signal {
  const { cos, alpha } = corner(frequency, q, rate);
  const lift = 10 ** (decibels / 40);
  const slope = 2 * Math.sqrt(lift) * alpha;
  return run(signal, {
    b0: lift * (lift + 1 + (lift - 1) * cos + slope),
    b1: -2 * lift * (lift - 1 + (lift + 1) * cos),
    b2: lift * (lift + 1 + (lift - 1) * cos - slope),
    a0: lift + 1 - (lift - 1) * cos + slope,
    a1: 2 * (lift - 1 - (lift + 1) * cos),
    a2: lift + 1 - (lift - 1) * cos - slope,
  });
}
