import type { Stroke, Surface, Timeline } from '../core/index.ts';
import { GLYPH } from './glyphs/names.ts';

/** Where a surface stands and what its note looks like. */
export interface Place {
  /** Staff position as the percussion clef reads it, like the treble clef: `c/5`. */
  key: string;
  head: string;
  /** Sign over the note. */
  sign?: string;
}

/**
 * Positions on five lines: N. Weinberg, Guidelines for Drumset Notation, Percussive Notes, June 1994; on a five-piece kit
 * the toms stand on E5, D5 and A4 (common practice). Signs for open and half open from the same trade; rim, click,
 * splash, choke and cowbell are ours, after its shapes.
 */
const KIT: Record<Surface, Place> = {
  snare: { key: 'c/5', head: GLYPH.black },
  rimshot: { key: 'c/5', head: GLYPH.slashed },
  cross: { key: 'c/5', head: GLYPH.x },
  rim: { key: 'c/5', head: GLYPH.circledX },
  click: { key: 'c/5', head: GLYPH.diamond },
  tom1: { key: 'e/5', head: GLYPH.black },
  tom2: { key: 'd/5', head: GLYPH.black },
  floor: { key: 'a/4', head: GLYPH.black },
  hat: { key: 'g/5', head: GLYPH.x },
  open: { key: 'g/5', head: GLYPH.x, sign: GLYPH.open },
  half: { key: 'g/5', head: GLYPH.x, sign: GLYPH.halfOpen },
  pedal: { key: 'd/4', head: GLYPH.x },
  splash: { key: 'a/5', head: GLYPH.diamond },
  ride: { key: 'f/5', head: GLYPH.x },
  bell: { key: 'f/5', head: GLYPH.diamond },
  crash: { key: 'a/5', head: GLYPH.x },
  choke: { key: 'a/5', head: GLYPH.x, sign: GLYPH.choke },
  china: { key: 'b/5', head: GLYPH.x },
  cowbell: { key: 'e/5', head: GLYPH.triangle },
  kick: { key: 'f/4', head: GLYPH.black },
};

/** What may stand on one line; the rest needs five. */
const PAD: readonly Surface[] = ['snare', 'rimshot', 'cross', 'rim', 'click', 'kick'];

/** One line for the pad, five for the kit. */
export type Staff = 'pad' | 'kit';

/** The staff a timeline needs: five lines as soon as one stroke is on a tom, a cymbal or the hi-hat. */
export function staffFor(timeline: Timeline): Staff {
  return timeline.strokes.every((stroke) => PAD.includes(stroke.surface)) ? 'pad' : 'kit';
}

/** Where a stroke's note stands. On one line every hand stroke is on the line, every foot below it (ours). */
export function placeOf(stroke: Stroke, staff: Staff): Place {
  const place = KIT[stroke.surface];
  if (staff === 'kit') return place;
  return { ...place, key: isFoot(stroke) ? 'f/4' : 'b/4' };
}

/** Whether a foot plays it. */
export const isFoot = (stroke: Stroke): boolean => stroke.limb === 'K' || stroke.limb === 'H';

/** Surfaces on which a hand keeps time: with a foot under them a bar is a groove. */
export const TIMEKEEPERS: readonly Surface[] = ['hat', 'open', 'half', 'ride', 'bell', 'cowbell'];
