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
