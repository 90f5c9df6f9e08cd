import { SIZE } from './sizes.ts';

/** The part of a bracket that stands on one line of the page, in the line's own x, and the name it should have. */
export interface Named {
  left: number;
  right: number;
  name: string;
  /** Whether the name must be said here, of all parts of a bracket that lines break. */
  must: boolean;
}

/** One row of a name, its middle at x: row 0 stands on its bracket, row 1 above that. */
export interface NameText {
  text: string;
  x: number;
  row: 0 | 1;
}

/** Between a name and the end of its bracket. */
const INSET = 2;
/** Between two names. */
const AIR = 5;
/** How far a name may stand out over its bracket, over a neighbor that leaves it room. */
const OVERHANG = 14;

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

type Interval = readonly [from: number, to: number];

/** A line of the page while its names are laid out: what its rows may reach, and what stands in them. */
interface Line {
  reach: Interval;
  taken: [Interval[], Interval[]];
  size: number;
}

const middleOf = ({ left, right }: Named): number => (left + right) / 2;
const roomOf = ({ left, right }: Named): number => right - left - 2 * INSET;

/** The name in two rows, broken where they are most alike, between words or after a hyphen; nothing for a single word. */
export function inTwo(name: string, size: number): [upper: string, lower: string] | undefined {
  const breaks = [...name.matchAll(/ |-(?=.)/g)].map(({ 0: mark, index }) => index + (mark === '-' ? 1 : 0));
  const pairs = breaks.map((at): [string, string] => [name.slice(0, at), name.slice(at).trimStart()]);
  const widest = (pair: [string, string]): number => Math.max(...pair.map((row) => nameWidth(row, size)));
  return pairs.sort((a, b) => widest(a) - widest(b))[0];
}

/** A row of text over the middle of its bracket, or pushed aside by an end of the line but still over that middle. */
function rowOver(named: Named, text: string, row: 0 | 1, { reach, size }: Line): NameText | undefined {
  const half = nameWidth(text, size) / 2;
  const middle = middleOf(named);
  if (2 * half > reach[1] - reach[0]) return undefined;
  const x = Math.max(reach[0] + half, Math.min(reach[1] - half, middle));
  return Math.abs(x - middle) <= Math.max(half, roomOf(named) / 2) ? { text, x, row } : undefined;
}

const intervalOf = ({ text, x }: NameText, size: number): Interval => {
  const half = nameWidth(text, size) / 2;
  return [x - half, x + half];
};

const isFree = (line: Line, row: 0 | 1, [from, to]: Interval): boolean =>
  line.taken[row].every(([left, right]) => to + AIR <= left || right + AIR <= from);

/** Takes the rows into the line where all of them are there and nothing is in their way. */
function take(line: Line, rows: readonly (NameText | undefined)[]): NameText[] {
  const all = rows.filter((row) => row !== undefined);
  const free = all.every((text) => isFree(line, text.row, intervalOf(text, line.size)));
  if (all.length < rows.length || !free) return [];
  all.forEach((text) => line.taken[text.row].push(intervalOf(text, line.size)));
  return all;
}

/** Whether a name has room between the ends of its bracket. */
export const fitsWithin = (named: Pick<Named, 'name' | 'left' | 'right'>, size: number = SIZE.name): boolean =>
  nameWidth(named.name, size) <= named.right - named.left - 2 * INSET;

/** The name in one row over its own bracket. */
function within(named: Named, line: Line): NameText[] {
  return fitsWithin(named, line.size) ? take(line, [rowOver(named, named.name, 0, line)]) : [];
}

/** The name over its bracket and what is beside it: out over its ends, in two rows, or raised over its neighbors' names. */
function beyond(named: Named, line: Line): NameText[] {
  const { name } = named;
  const most = roomOf(named) + 2 * OVERHANG;
  const narrow = (text: string): boolean => nameWidth(text, line.size) <= most;
  const two = inTwo(name, line.size);
  const stacked = two && [rowOver(named, two[0], 1, line), rowOver(named, two[1], 0, line)];
  const ways: (NameText | undefined)[][] = [
    ...(narrow(name) ? [[rowOver(named, name, 0, line)]] : []),
    ...(two?.every(narrow) ? [stacked!] : []),
    [rowOver(named, name, 1, line)],
    ...(stacked ? [stacked] : []),
  ];
  for (const rows of ways) {
    const taken = take(line, rows);
    if (taken.length) return taken;
  }
  return [];
}

/**
 * The names over the brackets of one line, each of them whole: in a row over their brackets where they fit, else out over
 * the ends, in two rows, or raised. A name that has no place at all is left out. `reach` is as far as names may stand.
 */
export function placeNames(all: readonly Named[], reach: Interval, size: number = SIZE.name): NameText[][] {
  const line: Line = { reach, taken: [[], []], size };
  const easy = all.map((named) => within(named, line));
  return all.map((named, i) => (easy[i].length || !named.must ? easy[i] : beyond(named, line)));
}

/** How much a line's names ask of the eye: one for each that is not in one row on its bracket, more where it is missing. */
export function costOf(all: readonly Named[], placed: readonly NameText[][]): number {
  const cost = (named: Named, rows: NameText[]): number =>
    rows.length === 0 ? (named.must ? 10 : 0) : rows.length > 1 || rows[0].row > 0 ? 1 : 0;
  return all.reduce((sum, named, i) => sum + cost(named, placed[i]), 0);
}
