import { shape } from './decay.ts';
import { lowpass } from './filters.ts';
import { byHand, strikeHead, type Drum } from './head.ts';
import { mix, silence, whiteNoise, type Signal, type Take } from './signal.ts';
import { tip } from './stick.ts';

/** A 22-inch bass drum with a pillow against its heads: low, short, and well bent by the beater (pitch and times ours). */
const KICK: Drum = {
  name: 'kick',
  pitch: 57,
  sixty: 0.42,
  damping: 1.1,
  twin: { ratio: 1.7, level: 0.4 },
  bend: 0.75,
  bendSeconds: 0.02,
};

/** A felt beater against the bass drum. */
export function kick(take: Take): Signal {
  const blow = byHand({ strength: 1, place: 0.16, touchMs: 1.6 }, take);
  const out = strikeHead(silence(0.55, take.rate), KICK, blow, take);
  const thump = lowpass(whiteNoise(Math.ceil(0.12 * take.rate), take), take.rate, 420);
  mix(out, shape(thump, take.rate, 0.07, 0.0008), 0.4);
  return mix(out, tip({ touchMs: 0.32, noise: 2300, sixty: 0.018, roughness: 0.6 }, take), 0.75);
}
