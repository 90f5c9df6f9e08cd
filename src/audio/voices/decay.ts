import type { SampleRate, Signal } from './signal.ts';

/** What a decay multiplies by each sample, so that it falls by 60 dB in so many seconds. */
export function decayStep(sixty: number, rate: SampleRate): number {
  return 10 ** (-3 / (sixty * rate));
}

/** A rise to full and a fall by 60 dB in `sixty` seconds, in place; a rise of 0 starts at full. */
export function shape(signal: Signal, rate: SampleRate, sixty: number, rise = 0): Signal {
  const step = decayStep(sixty, rate);
  const climb = rise > 0 ? Math.exp(-1 / (rise * rate)) : 0;
  let level = 1;
  let missing = climb > 0 ? 1 : 0;
  for (let i = 0; i < signal.length; i++) {
    signal[i] *= level * (1 - missing);
    level *= step;
    missing *= climb;
  }
  return signal;
}

/** How strongly a signal is moving, sample by sample: rises within `rise` seconds, sinks within `fall`. */
export function follow(signal: Signal, rate: SampleRate, rise: number, fall: number): Signal {
  const up = 1 - Math.exp(-1 / (rise * rate));
  const down = 1 - Math.exp(-1 / (fall * rate));
  const motion = new Float32Array(signal.length);
  let level = 0;
  for (let i = 0; i < signal.length; i++) {
    const distance = Math.abs(signal[i]) - level;
    level += distance * (distance > 0 ? up : down);
    motion[i] = level;
  }
  return motion;
}

/** Lets a signal go from full to nothing between two times, in place, by half a cosine; silent afterward. */
export function fade(signal: Signal, rate: SampleRate, from: number, to: number): Signal {
  const [first, last] = [from * rate, to * rate];
  for (let i = Math.max(0, Math.floor(first)); i < signal.length; i++) {
    const done = Math.min(1, Math.max(0, (i - first) / (last - first)));
    signal[i] *= 0.5 + 0.5 * Math.cos(Math.PI * done);
  }
  return signal;
}
