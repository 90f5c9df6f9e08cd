/**
 * Every sound there is, the most needed first: the clicks of the metronome and the snare drum, then the rest of the kit.
 */
export const VOICES = [
  'downbeat',
  'beat',
  'subdivision',
  'tap',
  'accent',
  'grace',
  'ghost',
  'kick',
  'buzz',
  'rimshot',
  'cross',
  'rim',
  'click',
  'hat',
  'hat-tap',
  'pedal',
  'tom1',
  'tom1-tap',
  'tom2',
  'tom2-tap',
  'floor',
  'floor-tap',
  'half',
  'open',
  'splash',
  'ride',
  'bell',
  'crash',
  'choke',
  'china',
  'cowbell',
] as const;

/** The name of a sound. `tap`, `accent`, `grace`, `ghost` and `buzz` are the snare's; `click` is stick on stick. */
export type VoiceName = (typeof VOICES)[number];

/** The metronome's voices: first beat of a bar, other beats, slots between. */
export const METRONOME_VOICES = ['downbeat', 'beat', 'subdivision'] as const satisfies readonly VoiceName[];

/** Even takes are the right hand's, odd ones the left's. A metronome is the same each time. */
const VARIANTS: Record<VoiceName, number> = {
  downbeat: 1,
  beat: 1,
  subdivision: 1,
  tap: 10,
  accent: 10,
  grace: 10,
  ghost: 10,
  kick: 5,
  buzz: 6,
  rimshot: 6,
  cross: 6,
  rim: 6,
  click: 6,
  hat: 6,
  'hat-tap': 6,
  pedal: 5,
  tom1: 6,
  'tom1-tap': 6,
  tom2: 6,
  'tom2-tap': 6,
  floor: 6,
  'floor-tap': 6,
  half: 4,
  open: 4,
  splash: 3,
  ride: 6,
  bell: 4,
  crash: 4,
  choke: 4,
  china: 4,
  cowbell: 6,
};

/** Voices that no hand plays: their takes differ, but by no hand. */
const HANDLESS: ReadonlySet<VoiceName> = new Set([...METRONOME_VOICES, 'kick', 'pedal', 'splash']);

/** How many takes of a voice there are; throws `RangeError` for a name that is no voice: `variantsOf('beat')` is 1. */
export function variantsOf(name: VoiceName): number {
  if (!Object.hasOwn(VARIANTS, name)) throw new RangeError(`"${name}" must be one of ${VOICES.join(', ')}`);
  return VARIANTS[name];
}

/** Whether a voice has takes for either hand, alternately right and left. */
export function hasHands(name: VoiceName): boolean {
  return !HANDLESS.has(name);
}
