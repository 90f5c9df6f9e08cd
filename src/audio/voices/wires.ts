import { follow } from './decay.ts';
import { bell, highpass, lowpass } from './filters.ts';
import { whiteNoise, type Hertz, type Signal, type Take } from './signal.ts';

/** How the snare wires answer. */
export interface Wires {
  level: number;
  /** Where their noise ends above. */
  top: Hertz;
}

/**
 * Less than 1: the wires leave the head at the lightest touch and soon cannot leave it further, so that a soft stroke has
 * more of them than a hard one. (From memory: wires need only a small motion of the head to start rattling.)
 */
const GIVE = 0.5;

/** Seconds until the lower head and the wires have caught the motion. */
const RISE = 0.0015;

/** The rattle of the wires under a head: noise that follows its motion and knocks against it once a swing. */
export function wires(head: Signal, { level, top }: Wires, take: Take): Signal {
  const motion = follow(head, take.rate, RISE, 0.016);
  const rattle = wireNoise(head.length, top, take);
  for (let i = 0; i < head.length; i++) {
    const reach = motion[i];
    const knock = 0.65 + 0.5 * Math.min(1.2, Math.max(0, head[i] / (reach + 1e-6)));
    rattle[i] *= level * knock * reach ** GIVE;
  }
  return rattle;
}

/** Many thin coils at once: broad noise with its weight where a snare has it, about 2.5 to 6 kHz. */
function wireNoise(length: number, top: Hertz, take: Take): Signal {
  const { rate } = take;
  const noise = whiteNoise(length, take);
  highpass(noise, rate, 1300, 0.6);
  bell(noise, rate, 3800, 0.7, 5);
  lowpass(noise, rate, top, 0.6);
  return lowpass(noise, rate, 11000, 0.6);
}
