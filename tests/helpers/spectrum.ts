/** Measuring sound in tests: written apart from the code under test, which has no transform of its own. */

/** Power at one frequency (Goertzel 1958); a full-scale sine gives 1. */
export function powerAt(signal: Float32Array, rate: number, frequency: number): number {
  const turn = 2 * Math.cos((2 * Math.PI * frequency) / rate);
  let [before, now] = [0, 0];
  for (let i = 0; i < signal.length; i++) {
    const next = signal[i] + turn * now - before;
    before = now;
    now = next;
  }
  return (4 * (now * now + before * before - turn * now * before)) / signal.length ** 2;
}

/** The frequency with the most power between two, to a tenth of a hertz. */
export function loudestBetween(stretch: Float32Array, rate: number, low: number, high: number): number {
  const signal = underHann(stretch);
  const search = (from: number, to: number, step: number): number => {
    let [best, power] = [from, 0];
    for (let f = from; f <= to; f += step) {
      const here = powerAt(signal, rate, f);
      if (here > power) [best, power] = [f, here];
    }
    return best;
  };
  const about = search(low, high, 2);
  return search(Math.max(low, about - 2), Math.min(high, about + 2), 0.1);
}

/** The stretch faded in and out, so that its ends do not ring through the whole spectrum. */
function underHann(signal: Float32Array): Float32Array {
  return signal.map((sample, i) => sample * (1 - Math.cos((2 * Math.PI * (i + 0.5)) / signal.length)));
}

/** Energy of a signal below, between and above given frequencies, by the discrete Fourier transform. */
export function energies(signal: Float32Array, rate: number, edges: readonly number[]): number[] {
  const { re, im } = transform(signal);
  const sums = new Array<number>(edges.length + 1).fill(0);
  for (let k = 0; k <= re.length / 2; k++) {
    const frequency = (k * rate) / re.length;
    const band = edges.filter((edge) => frequency >= edge).length;
    sums[band] += (re[k] ** 2 + im[k] ** 2) * (k === 0 || k === re.length / 2 ? 1 : 2);
  }
  return sums.map((sum) => sum / re.length);
}

/** Radix 2, in place, the signal padded with silence to the next power of two. */
function transform(signal: Float32Array): { re: Float64Array; im: Float64Array } {
  const size = 2 ** Math.ceil(Math.log2(Math.max(2, signal.length)));
  const [re, im] = [new Float64Array(size), new Float64Array(size)];
  const bits = Math.log2(size);
  for (let i = 0; i < signal.length; i++) re[reversed(i, bits)] = signal[i];
  for (let half = 1; half < size; half *= 2) {
    for (let start = 0; start < size; start += 2 * half) {
      for (let k = 0; k < half; k++) butterfly(re, im, start + k, start + k + half, (-Math.PI * k) / half);
    }
  }
  return { re, im };
}

function reversed(value: number, bits: number): number {
  let result = 0;
  for (let b = 0; b < bits; b++) if (value & (1 << b)) result |= 1 << (bits - 1 - b);
  return result;
}

function butterfly(re: Float64Array, im: Float64Array, a: number, b: number, angle: number): void {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const x = re[b] * cos - im[b] * sin;
  const y = re[b] * sin + im[b] * cos;
  re[b] = re[a] - x;
  im[b] = im[a] - y;
  re[a] += x;
  im[a] += y;
}

/** Root of the mean square between two times in seconds, in decibels below full scale. */
export function rmsBetween(signal: Float32Array, rate: number, from: number, to: number): number {
  const part = signal.subarray(Math.round(from * rate), Math.round(to * rate));
  const squares = part.reduce((sum, sample) => sum + sample * sample, 0);
  return 10 * Math.log10(squares / part.length + 1e-20);
}

/** The index of the first sample that is louder than a share of the loudest. */
export function firstAbove(signal: Float32Array, share: number): number {
  const peak = loudest(signal);
  return signal.findIndex((sample) => Math.abs(sample) > share * peak);
}

/** The largest magnitude. */
export function loudest(signal: Float32Array): number {
  return signal.reduce((peak, sample) => Math.max(peak, Math.abs(sample)), 0);
}

/** Decibels of a ratio of powers. */
export function decibels(ratio: number): number {
  return 10 * Math.log10(ratio);
}
