/** Up to here everything passes unchanged. */
export const KNEE = 0.8;
/** The loudest input that has a place of its own on the curve; louder is as loud. */
export const INPUT_RANGE = 4;
const POINTS = 8193;

/** What a sample becomes: itself up to the knee, above it ever less more, never 1. */
export function softClip(sample: number): number {
  const over = Math.abs(sample) - KNEE;
  if (over <= 0) return sample;
  return Math.sign(sample) * (KNEE + (1 - KNEE) * Math.tanh(over / (1 - KNEE)));
}

/**
 * The soft clip of the output as a curve for a wave shaper that gets its input divided by INPUT_RANGE. A shaper has no delay of its
 * own, which a compressor used as a limiter has: light and sound stay together.
 */
export function softClipCurve(): Float32Array<ArrayBuffer> {
  const middle = (POINTS - 1) / 2;
  return Float32Array.from({ length: POINTS }, (_, i) => softClip((INPUT_RANGE * (i - middle)) / middle));
}
