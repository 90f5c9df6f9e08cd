/** A sample this loud belongs to an impulse; ghost notes and hands to one side are still thirty times louder. */
const THRESHOLD = 0.003;
/** An impulse between two samples is shared by both. */
const WIDTH = 3;

/** Where impulses stand in a recording, in samples and fractions of one: the center of what belongs together. */
export function impulsesIn(signal: Float32Array): number[] {
  const found: number[] = [];
  for (let i = 0; i < signal.length; i += 1) {
    if (Math.abs(signal[i]) < THRESHOLD) continue;
    const part = Array.from(signal.subarray(Math.max(0, i - 1), i + WIDTH), Math.abs);
    const mass = part.reduce((sum, sample) => sum + sample, 0);
    found.push(Math.max(0, i - 1) + part.reduce((sum, sample, j) => sum + sample * j, 0) / mass);
    i += WIDTH - 1;
  }
  return found;
}

/** How a recording agrees with what should stand in it; everything in samples. */
export interface Agreement {
  /** The largest distance between an onset and its place. */
  worst: number;
  /** Places without an onset. */
  missing: number[];
  /** Onsets without a place. */
  extra: number[];
}

/** Matches onsets with places; what is further apart than half a millisecond is no match. */
export function compare(found: readonly number[], wanted: readonly number[], sampleRate: number): Agreement {
  const reach = sampleRate / 2000;
  const extra = [...found];
  const missing: number[] = [];
  let worst = 0;
  for (const place of wanted) {
    const at = extra.findIndex((onset) => Math.abs(onset - place) < reach);
    if (at < 0) missing.push(place);
    else worst = Math.max(worst, Math.abs(extra.splice(at, 1)[0] - place));
  }
  return { worst, missing, extra };
}

/** Times in seconds as places in samples, each once: what sounds together is one onset. */
export function placesOf(times: readonly number[], sampleRate: number): number[] {
  const places = [...times].sort((a, b) => a - b).map((time) => time * sampleRate);
  return places.filter((place, i) => i === 0 || place - places[i - 1] > 0.5);
}

/** The shift, in samples, at which a template agrees best with a signal around a place. */
export function bestShift(signal: Float32Array, template: Float32Array, place: number, reach: number): number {
  const scores = Array.from({ length: 2 * reach + 1 }, (_, i) => {
    const from = place + i - reach;
    return template.reduce((sum, sample, j) => sum + sample * (signal[from + j] ?? 0), 0);
  });
  return scores.indexOf(Math.max(...scores)) - reach;
}

/** A signal's changes from sample to sample: attacks stand out, what still rings sinks. */
export const changesOf = (signal: Float32Array): Float32Array =>
  signal.map((sample, i) => sample - (signal[i - 1] ?? 0));
