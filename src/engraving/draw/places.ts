import type { Head, StaffPlace } from '../../core/index.ts';
import { GLYPH } from '../glyphs/names.ts';

const HEADS: Record<Head, string> = {
  black: GLYPH.black,
  x: GLYPH.x,
  slashed: GLYPH.slashed,
  'circled x': GLYPH.circledX,
  diamond: GLYPH.diamond,
  triangle: GLYPH.triangle,
};

const SIGNS: Record<NonNullable<StaffPlace['sign']>, string> = {
  open: GLYPH.open,
  'half open': GLYPH.halfOpen,
  choke: GLYPH.choke,
};

/** The position as VexFlow writes it: `c/5`. */
export const keyOf = ({ step, octave }: StaffPlace): string => `${step.toLowerCase()}/${octave}`;

/** The glyph of a quarter note's head. */
export const headGlyph = ({ head }: StaffPlace): string => HEADS[head];

/** The glyph of the sign over a note, where it has one. */
export const signGlyph = ({ sign }: StaffPlace): string | undefined => sign && SIGNS[sign];
