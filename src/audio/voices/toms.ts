import { shape } from './decay.ts';
import { bandpass } from './filters.ts';
import { byHand, strikeHead, type Blow, type Drum } from './head.ts';
import { mix, silence, whiteNoise, type Signal, type Take } from './signal.ts';
import { tip } from './stick.ts';

/** What the three toms share; the pitches below are a common middle tuning of 12, 13 and 16 inches (ours). */
const TOM = { damping: 0.95, twin: { ratio: 1.62, level: 0.3 }, bend: 0.09, bendSeconds: 0.05 };

/** The toms of the five-piece kit, high to low. */
export const TOMS = {
  tom1: { ...TOM, name: 'tom1', pitch: 158, sixty: 0.75 },
  tom2: { ...TOM, name: 'tom2', pitch: 121, sixty: 0.85 },
  floor: { ...TOM, name: 'floor', pitch: 82, sixty: 1.05 },
} satisfies Record<string, Drum>;

const HARD: Blow = { strength: 1, place: 0.27, touchMs: 0.5 };
const SOFT: Blow = { strength: 0.42, place: 0.33, touchMs: 0.75 };

/** An accent on a tom. */
export function tomAccent(drum: Drum): (take: Take) => Signal {
  return (take) => tom(drum, HARD, 1.1, take);
}

/** A tap on a tom: duller, and bent less. */
export function tomTap(drum: Drum): (take: Take) => Signal {
  return (take) => tom(drum, SOFT, 0.42, take);
}

function tom(drum: Drum, blow: Blow, stick: number, take: Take): Signal {
  const out = strikeHead(silence(1.15 * drum.sixty, take.rate), drum, byHand(blow, take), take);
  // The slap of the head as a whole, too dense for single modes.
  const slap = bandpass(whiteNoise(Math.ceil(0.1 * take.rate), take), take.rate, 5 * drum.pitch, 0.6);
  mix(out, shape(slap, take.rate, 0.05, 0.0008), 0.6 * blow.strength);
  return mix(out, tip({ touchMs: 0.4 * blow.touchMs, noise: 2400, sixty: 0.02, roughness: 0.5 }, take), stick);
}
