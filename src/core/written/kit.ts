import type { Surface } from '../sticking/limbs.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';

/** Shapes of a note head. */
export type Head = 'black' | 'x' | 'slashed' | 'circled x' | 'diamond' | 'triangle';

/** Where a stroke's note stands, as a treble clef would read it, and what it looks like. */
export interface StaffPlace {
  step: 'C' | 'D' | 'E' | 'F' | 'G' | 'A' | 'B';
  octave: number;
  head: Head;
  /** The sign over it. */
  sign?: 'open' | 'half open' | 'choke';
}

/** One line for the pad, five for the kit. */
export type Staff = 'pad' | 'kit';

const at = (step: StaffPlace['step'], octave: number, head: Head = 'black', sign?: StaffPlace['sign']): StaffPlace =>
  sign ? { step, octave, head, sign } : { step, octave, head };

/**
 * Positions on five lines: N. Weinberg, Guidelines for Drumset Notation, Percussive Notes, June 1994; on a five-piece kit
 * the toms stand on E5, D5 and A4 (common practice). Signs for open and half open from the same trade; rim, click,
 * splash, choke and cowbell are ours, after its shapes.
 */
const KIT: Record<Surface, StaffPlace> = {
  snare: at('C', 5),
  rimshot: at('C', 5, 'slashed'),
  cross: at('C', 5, 'x'),
  rim: at('C', 5, 'circled x'),
  click: at('C', 5, 'diamond'),
  tom1: at('E', 5),
  tom2: at('D', 5),
  floor: at('A', 4),
  hat: at('G', 5, 'x'),
  open: at('G', 5, 'x', 'open'),
  half: at('G', 5, 'x', 'half open'),
  pedal: at('D', 4, 'x'),
  splash: at('A', 5, 'diamond'),
  ride: at('F', 5, 'x'),
  bell: at('F', 5, 'diamond'),
  crash: at('A', 5, 'x'),
  choke: at('A', 5, 'x', 'choke'),
  china: at('B', 5, 'x'),
  cowbell: at('E', 5, 'triangle'),
  kick: at('F', 4),
};

/** What may stand on one line; the rest needs five. */
const PAD: readonly Surface[] = ['snare', 'rimshot', 'cross', 'rim', 'click', 'kick'];

/** Surfaces on which a hand keeps time: with a foot under them a bar is a groove. */
export const TIMEKEEPERS: readonly Surface[] = ['hat', 'open', 'half', 'ride', 'bell', 'cowbell'];

/** Whether a foot plays it. */
export const isFoot = (stroke: Stroke): boolean => stroke.limb === 'K' || stroke.limb === 'H';

/**
 * The staff a timeline needs: five lines as soon as one stroke is on a tom, a cymbal or the hi-hat.
 * @example
 * staffFor(timeline) // → 'pad'
 */
export function staffFor(timeline: Timeline): Staff {
  return timeline.strokes.every((stroke) => PAD.includes(stroke.surface)) ? 'pad' : 'kit';
}

/**
 * Where a stroke's note stands. On one line every hand stroke is on the line, every foot below it (ours).
 * @example
 * staffPlace(timeline.strokes[0], 'kit') // → { step: 'C', octave: 5, head: 'black' }
 */
export function staffPlace(stroke: Stroke, staff: Staff): StaffPlace {
  const place = KIT[stroke.surface];
  if (staff === 'kit') return place;
  return isFoot(stroke) ? { ...place, step: 'F', octave: 4 } : { ...place, step: 'B', octave: 4 };
}

/** Steps above C0, so that positions can be compared. */
export const heightOf = ({ step, octave }: StaffPlace): number => octave * 7 + 'CDEFGAB'.indexOf(step);

/** A stroke of a chord with the place of its note. */
export interface PlacedStroke {
  stroke: Stroke;
  place: StaffPlace;
}

/** Strokes of a chord with their places, from the lowest to the highest. */
export const placedByHeight = (strokes: readonly Stroke[], staff: Staff): PlacedStroke[] =>
  strokes
    .map((stroke) => ({ stroke, place: staffPlace(stroke, staff) }))
    .sort((a, b) => heightOf(a.place) - heightOf(b.place));
