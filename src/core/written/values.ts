import { TICKS_PER_QUARTER, type Ticks } from '../time/units.ts';

/** A written value: 4 a quarter, 8 an eighth …, with or without a dot. */
export interface Value {
  base: number;
  dots: 0 | 1;
}

const WHOLE = 4 * TICKS_PER_QUARTER;
const BASES = [1, 2, 4, 8, 16, 32, 64, 128];

/** All values, longest first, with the ticks they last where nothing is a tuplet. */
const VALUES = BASES.flatMap((base) => [
  { value: { base, dots: 1 } as Value, ticks: (WHOLE / base) * 1.5 },
  { value: { base, dots: 0 } as Value, ticks: WHOLE / base },
]).sort((a, b) => b.ticks - a.ticks);

/** The value that lasts exactly so long, if there is one. */
export const valueOf = (ticks: Ticks): Value | undefined => VALUES.find((row) => row.ticks === ticks)?.value;

/** Beams or flags of a value: none for a quarter, one for an eighth. */
export const beamsOf = ({ base }: Value): number => Math.max(0, Math.log2(base) - 2);

/** How strictly a value must sit on the beat: a rest stands where it starts, a note may be syncopated by half its length. */
export type Alignment = 'rest' | 'note' | 'free';

function fits(value: Value, ticks: Ticks, offset: Ticks, alignment: Alignment): boolean {
  if (alignment === 'free') return true;
  const plain = WHOLE / value.base;
  if (alignment === 'note') return offset % (plain / 2) === 0;
  return offset % (value.dots ? 2 * plain : ticks) === 0;
}

/** One piece of a length of time. */
export interface Piece {
  offset: Ticks;
  ticks: Ticks;
  value: Value;
}

const SHORTEST = VALUES[VALUES.length - 1];

/** The longest value that fits and reads well, or that fits at all; what is shorter than the shortest is written as it. */
function pieceOf(offset: Ticks, left: Ticks, alignment: Alignment): Piece {
  const inTime = VALUES.filter((row) => row.ticks <= left);
  const found = inTime.find((row) => fits(row.value, row.ticks, offset, alignment)) ?? inTime[0] ?? SHORTEST;
  return { offset, ticks: Math.min(found.ticks, left), value: found.value };
}

/**
 * A length as the fewest values that read well from this offset into the beat: the longest that fits first.
 * A remainder below the shortest value, which only a grace note written out in a split slot leaves, is written as that.
 */
export function piecesOf(offset: Ticks, length: Ticks, alignment: Alignment): Piece[] {
  const pieces: Piece[] = [];
  for (let at = offset; at < offset + length; at += pieces[pieces.length - 1].ticks)
    pieces.push(pieceOf(at, offset + length - at, alignment));
  return pieces;
}
