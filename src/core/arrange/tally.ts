import { usesOf } from './check.ts';
import type { ArrangeRequest } from './types.ts';

/** How uses are counted: each cell whose number of uses is limited has a digit of one number. */
export interface Tally {
  /** Uses after one more of a cell; -1 where it is used up. */
  add(uses: number, cell: number): number;
  /** Whether every cell has been used often enough. */
  enough(uses: number): boolean;
  /** Slots that the least uses of all cells take. */
  owed: number;
  /** How many of them one more of a cell pays; 0 where it has been used often enough. */
  pays(uses: number, cell: number): number;
  /** Whether any cell is limited. */
  limited: boolean;
  /** How many numbers there are. */
  size: number;
}

interface Digit {
  place: number;
  /** The highest it counts to: the most uses, or, where there is no such limit, the least. */
  top: number;
  min: number;
  /** Whether the most uses can be passed in so many slots. */
  binds: boolean;
}

/** A cell needs a digit only where its limits bind in so many slots; with no upper limit it stops at its least. */
export function tallyOf({ cells, slots }: ArrangeRequest): Tally {
  let place = 1;
  const digits = cells.map((cell): Digit => {
    const { min, max } = usesOf(cell);
    const binds = max < Math.floor(slots / cell.slots);
    const digit = { place, top: binds ? max : min, min, binds };
    place *= digit.top + 1;
    return digit;
  });
  const limited = digits.some((d) => d.top > 0 || d.binds);
  if (!limited) return { limited, size: 1, add: () => 0, enough: () => true, owed: 0, pays: () => 0 };
  return {
    limited,
    size: place,
    owed: cells.reduce((sum, cell, i) => sum + digits[i].min * cell.slots, 0),
    pays: (uses, cell) => (usedOf(uses, digits[cell]) < digits[cell].min ? cells[cell].slots : 0),
    add: (uses, cell) => {
      const digit = digits[cell];
      if (usedOf(uses, digit) < digit.top) return uses + digit.place;
      return digit.binds ? -1 : uses;
    },
    enough: (uses) => digits.every((digit) => usedOf(uses, digit) >= digit.min),
  };
}

/** The remainder by hand: of numbers this large, `%` is many times slower. */
function usedOf(uses: number, { place, top }: Digit): number {
  const above = Math.floor(uses / place);
  return above - Math.floor(above / (top + 1)) * (top + 1);
}
