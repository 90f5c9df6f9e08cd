import { SIZE } from './sizes.ts';

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

/** Letters by the most that one takes of its size in the label font at the weight of names, measured in Chromium. */
const WIDTHS: readonly [em: number, letters: string][] = [
  [0.31, ' ,.ijl'],
  [0.38, 'frt-'],
  [0.44, 'I1'],
  [0.52, 'csvyz'],
  [0.58, 'aehknouxFJL2'],
  [0.61, 'bdgpqEST3579'],
  [0.67, 'ABCKPRVYZ0468'],
  [0.75, 'DGHNOQUXw#&…'],
];
const WIDEST = 0.88;

const letterWidth = (letter: string): number => WIDTHS.find(([, letters]) => letters.includes(letter))?.[0] ?? WIDEST;

/** Room for a name at a size of its letters. */
export const nameWidth = (name: string, size: number): number =>
  [...name].reduce((sum, letter) => sum + letterWidth(letter), 0) * size;

/** The fewest letters a name is shortened to. */
const FEWEST = 4;

/** A name that fits, or its beginning, or nothing where four letters do not fit. */
export function fittedName(name: string, room: number, size: number = SIZE.name): string {
  if (nameWidth(name, size) <= room) return name;
  for (let letters = name.length - 1; letters >= FEWEST; letters -= 1) {
    const short = `${name.slice(0, letters).trimEnd()}…`;
    if (nameWidth(short, size) <= room) return short;
  }
  return '';
}

const middleOf = ({ left, right }: Named): number => (left + right) / 2;
const roomOf = ({ left, right }: Named): number => right - left - 2 * INSET;

/** Half the most room a name may take, its overhang included. */
const halfOf = (named: Named, size: number): number =>
  Math.min(nameWidth(named.name, size), roomOf(named) + 2 * named.overhang) / 2;

/** The names over whole brackets: one may stand out over a narrow bracket where no other name is in its way. */
export function wholeNames(all: readonly Named[], size: number = SIZE.name): string[] {
  return all.map((named, i) => {
    const middle = middleOf(named);
    const before = i > 0 ? middle - middleOf(all[i - 1]) - halfOf(all[i - 1], size) : Infinity;
    const after = i < all.length - 1 ? middleOf(all[i + 1]) - halfOf(all[i + 1], size) - middle : Infinity;
    const beside = 2 * (Math.min(before, after) - AIR);
    const room = Math.max(roomOf(named), Math.min(beside, roomOf(named) + 2 * named.overhang));
    return fittedName(named.name, room, size);
  });
}

/** The size of a piece's names, one for all of them: the smaller one where more of them are whole with it. */
export function nameSize(all: readonly Named[]): number {
  const cut = (size: number): number => wholeNames(all, size).filter((name, i) => name !== all[i].name).length;
  return cut(SIZE.smallName) < cut(SIZE.name) ? SIZE.smallName : SIZE.name;
}
