import type { Milliseconds, Seconds } from '../core/index.ts';
import type { PlayerReason } from './types.ts';

/** What tells whether a context makes sound. */
export type Pulse = Pick<AudioContext, 'currentTime' | 'state'>;

/** A context whose time stands still for so long has nothing to sound on, or may not. */
export const PATIENCE: Milliseconds = 2000;

/** Why a context's time stands still: before a visitor touched the page browsers allow no sound. */
function reasonOf(pulse: Pulse, touched: boolean): PlayerReason {
  return pulse.state !== 'running' && !touched ? 'suspended' : 'no-device';
}

/**
 * Tells from looks at a context whether it is alive: undefined while its time moves or has not stood still for long, else
 * the reason. `now` is in milliseconds of any clock that runs on.
 */
export function pulseOf(
  pulse: Pulse,
  now: Milliseconds,
): (now: Milliseconds, touched: boolean) => PlayerReason | undefined {
  let time: Seconds = pulse.currentTime;
  let moved = now;
  return (at, touched) => {
    if (pulse.currentTime !== time) moved = at;
    time = pulse.currentTime;
    return at - moved < PATIENCE ? undefined : reasonOf(pulse, touched);
  };
}
