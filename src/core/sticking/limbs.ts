import { oneOf } from '../check.ts';

/** A hand. */
export type Hand = 'R' | 'L';
/** A foot: the bass drum's or the hi-hat's. */
export type Foot = 'K' | 'H';
/** Right hand, left hand, bass-drum foot, hi-hat foot. */
export type Limb = Hand | Foot;

/** Every limb, in the order of a chord. */
export const LIMBS: readonly Limb[] = ['R', 'L', 'K', 'H'];

/** Both hands. */
export const HANDS: readonly Hand[] = ['R', 'L'];

/** The surfaces of the kit that a sticking may name, in the order of the documentation. */
export const SURFACES = [
  'snare',
  'rimshot',
  'cross',
  'rim',
  'click',
  'tom1',
  'tom2',
  'floor',
  'hat',
  'open',
  'half',
  'pedal',
  'splash',
  'ride',
  'bell',
  'crash',
  'choke',
  'china',
  'cowbell',
  'kick',
] as const;

/** One thing on the kit that is struck. */
export type Surface = (typeof SURFACES)[number];

/** What a limb strikes where nothing is written. */
export const DEFAULT_SURFACE: Record<Limb, Surface> = { R: 'snare', L: 'snare', K: 'kick', H: 'pedal' };

/** Whether a limb is a hand. */
export const isHand = (limb: Limb): limb is Hand => limb === 'R' || limb === 'L';

/** The other hand. */
export function otherHand(hand: Hand): Hand {
  if (hand !== 'R') oneOf('hand', hand, HANDS);
  return hand === 'R' ? 'L' : 'R';
}
