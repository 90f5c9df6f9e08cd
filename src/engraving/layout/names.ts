import { SIZE, textWidth } from './sizes.ts';

/** A bracket from the left to the right of its piece, in the piece's own x, and the name it should have. */
export interface Named {
  left: number;
  right: number;
  name: string;
  /** How far its name may stand out on either side. */
  overhang: number;
  /** How far its bar line stands beyond its picture, where it ends with a bar. */
  over?: number;
}

/** Between a name and the end of its bracket. */
const INSET = 2;
/** Between two names. */
const AIR = 5;

/** A name that fits, or its beginning, or nothing where four letters do not fit. */
export function fittedName(name: string, room: number): string {
  if (textWidth(name, SIZE.name) <= room) return name;
  const letters = Math.floor(room / textWidth('m', SIZE.name)) - 1;
  return letters >= 4 ? `${name.slice(0, letters).trimEnd()}…` : '';
}

const middleOf = ({ left, right }: Named): number => (left + right) / 2;
const roomOf = ({ left, right }: Named): number => right - left - 2 * INSET;

/** Half the most room a name may take, its overhang included. */
const halfOf = (named: Named): number =>
  Math.min(textWidth(named.name, SIZE.name), roomOf(named) + 2 * named.overhang) / 2;

/** The names over whole brackets: one may stand out over a narrow bracket where no other name is in its way. */
export function wholeNames(all: readonly Named[]): string[] {
  return all.map((named, i) => {
    const middle = middleOf(named);
    const before = i > 0 ? middle - middleOf(all[i - 1]) - halfOf(all[i - 1]) : Infinity;
    const after = i < all.length - 1 ? middleOf(all[i + 1]) - halfOf(all[i + 1]) - middle : Infinity;
    const beside = 2 * (Math.min(before, after) - AIR);
    return fittedName(named.name, Math.max(roomOf(named), Math.min(beside, roomOf(named) + 2 * named.overhang)));
  });
}
