import { block, cowbell } from './blocks.ts';
import { buzz } from './buzz.ts';
import { china, choke, crash, ride, rideBell } from './cymbals.ts';
import { finish } from './finish.ts';
import { hatAccent, hatHalf, hatOpen, hatPedal, hatSplash, hatTap } from './hats.ts';
import { kick } from './kick.ts';
import { hasHands, variantsOf, type VoiceName } from './names.ts';
import { crossStick, rim, rimshot, stickClick } from './rims.ts';
import { rng } from './rng.ts';
import type { SampleRate, Signal, Take } from './signal.ts';
import { ACCENT, GHOST, GRACE, snare, TAP } from './snare.ts';
import { tomAccent, TOMS, tomTap } from './toms.ts';

/** How a voice is made, and how loud it is in the kit: decibels below full scale over its first 80 ms, weighted. */
interface Voice {
  play: (take: Take) => Signal;
  loudness: number;
}

/** The kit in balance. On the snare a tap lies 6 dB and a ghost 12 dB below an accent; a grace 14. */
const KIT: Record<VoiceName, Voice> = {
  downbeat: { play: block(1080, 0.05), loudness: -29 },
  beat: { play: block(860, 0.045), loudness: -31 },
  subdivision: { play: block(700, 0.03), loudness: -37 },
  accent: { play: (take) => snare(ACCENT, take), loudness: -22 },
  tap: { play: (take) => snare(TAP, take), loudness: -28 },
  ghost: { play: (take) => snare(GHOST, take), loudness: -34 },
  grace: { play: (take) => snare(GRACE, take), loudness: -36 },
  buzz: { play: buzz, loudness: -29 },
  rimshot: { play: rimshot, loudness: -21 },
  rim: { play: rim, loudness: -28 },
  cross: { play: crossStick, loudness: -28 },
  click: { play: stickClick, loudness: -30 },
  kick: { play: kick, loudness: -21 },
  tom1: { play: tomAccent(TOMS.tom1), loudness: -22 },
  'tom1-tap': { play: tomTap(TOMS.tom1), loudness: -28 },
  tom2: { play: tomAccent(TOMS.tom2), loudness: -22 },
  'tom2-tap': { play: tomTap(TOMS.tom2), loudness: -28 },
  floor: { play: tomAccent(TOMS.floor), loudness: -22 },
  'floor-tap': { play: tomTap(TOMS.floor), loudness: -28 },
  hat: { play: hatAccent, loudness: -29 },
  'hat-tap': { play: hatTap, loudness: -34 },
  half: { play: hatHalf, loudness: -29 },
  open: { play: hatOpen, loudness: -29 },
  pedal: { play: hatPedal, loudness: -34 },
  splash: { play: hatSplash, loudness: -32 },
  ride: { play: ride, loudness: -31 },
  bell: { play: rideBell, loudness: -30 },
  crash: { play: crash, loudness: -26 },
  choke: { play: choke, loudness: -26 },
  china: { play: china, loudness: -26 },
  cowbell: { play: cowbell, loudness: -29 },
};

/** Takes of one voice differ in loudness by no more than this, in decibels either way. */
const LOUDNESS_SPREAD = 0.4;

/**
 * Renders one take of a voice as mono samples, peak below 1; it sounds from index 0 on, without delay.
 * The same name, rate and variant give the same samples on one engine (engines differ in the last bits of sines).
 * Throws `RangeError` for a variant that does not exist or a rate below 8000: `renderVoice('tap', 48000, 0)`.
 */
export function renderVoice(name: VoiceName, sampleRate: SampleRate, variant: number): Signal {
  checkRequest(name, sampleRate, variant);
  const { play, loudness } = KIT[name];
  const random = rng(`${name} ${variant}`);
  const spread = variantsOf(name) > 1 ? LOUDNESS_SPREAD * (2 * random() - 1) : 0;
  const left = hasHands(name) && variant % 2 === 1;
  return finish(play({ rate: sampleRate, random, left }), sampleRate, loudness + spread);
}

function checkRequest(name: VoiceName, sampleRate: SampleRate, variant: number): void {
  const last = variantsOf(name) - 1;
  if (!Number.isInteger(variant) || variant < 0 || variant > last) {
    throw new RangeError(`variant ${variant} of "${name}" must be a whole number from 0 to ${last}`);
  }
  if (!(sampleRate >= 8000 && sampleRate <= 384000)) {
    throw new RangeError(`sample rate ${sampleRate} must be from 8000 to 384000`);
  }
}
