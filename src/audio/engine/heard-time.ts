import type { Milliseconds, Seconds } from '../../core/index.ts';

/** What of an audio context tells the time. Safari has no outputLatency. */
export type Clock = Pick<AudioContext, 'currentTime' | 'baseLatency'> &
  Partial<Pick<AudioContext, 'getOutputTimestamp' | 'outputLatency'>>;

/** Loudspeakers without a cable lag by up to half a second; what says more is no reading. */
const MOST_LAG: Seconds = 1;
/** Nothing is heard before it is made, but for the rounding of clocks. */
const ROUNDING: Seconds = 0.02;

/**
 * The moment of the context's time that is heard now, `now` being `performance.now()`. The output timestamp has the delay
 * of the loudspeaker in it; where it makes no sense the delay is taken off the time at which sound is made.
 */
export function heardTime(clock: Clock, now: Milliseconds): Seconds {
  const { contextTime = 0, performanceTime = 0 } = clock.getOutputTimestamp?.() ?? {};
  const heard = contextTime + (now - performanceTime) / 1000;
  const lag = clock.currentTime - heard;
  const makesSense = contextTime > 0 && performanceTime > 0 && lag > -ROUNDING && lag < MOST_LAG;
  return makesSense ? heard : clock.currentTime - (clock.outputLatency || clock.baseLatency || 0);
}
