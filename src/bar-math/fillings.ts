/** What teachers put into a gap. */
import { arrangements, parseSticking, slotCount } from '../core/index.ts';
import type { NamedCell } from './types.ts';

/** A way to fill what is left: as the address has it, ids divided by commas, and its cells. */
export interface Filling {
  value: string;
  cells: readonly NamedCell[];
}

/** What could fill a gap. */
export interface Fillings {
  /** Some of them, those of few cells first. */
  some: Filling[];
  /** How many orders there are in all, and of which cells. */
  ways: bigint;
  of: readonly NamedCell[];
}

/** Ids of the cells that are tried, in the order a teacher would try them. */
const FILLERS =
  'single-left kick kick-doubled flam-left two-singles double rll flam-drag three-singles four-singles paradiddle'.split(
    ' ',
  );
/** More of them would be a list to search, not to choose from. */
const MOST = 14;
const MOST_CELLS = 4;
/** A longer gap holds the cell itself, or is no gap. */
const LONGEST = 16;

interface Filler {
  cell: NamedCell;
  slots: number;
}

function fillersFor(left: number, named: readonly NamedCell[]): Filler[] {
  const found = FILLERS.flatMap((id) => named.find((cell) => cell.id === id) ?? []);
  return found.map((cell) => ({ cell, slots: slotsIn(cell.text) })).filter(({ slots }) => slots > 0 && slots <= left);
}

function slotsIn(text: string): number {
  const parsed = parseSticking(text);
  return parsed.ok ? slotCount(parsed.sticking.hands) : 0;
}

/** Choices of so many fillers, each not before the one before it, that make the slots. */
function choices(fillers: readonly Filler[], slots: number, count: number): Filler[][] {
  if (count === 0) return slots === 0 ? [[]] : [];
  return fillers.flatMap((filler, i) =>
    filler.slots > slots
      ? []
      : choices(fillers.slice(i), slots - filler.slots, count - 1).map((rest) => [filler, ...rest]),
  );
}

/** What could fill so many slots, of the cells of the course that teachers use for it. */
export function fillingsOf(left: number, named: readonly NamedCell[]): Fillings {
  const fillers = left >= 1 && left <= LONGEST ? fillersFor(left, named) : [];
  if (fillers.length === 0) return { some: [], ways: 0n, of: [] };
  const some: Filler[][] = [];
  for (let count = 1; count <= MOST_CELLS && some.length < MOST; count += 1)
    some.push(...choices(fillers, left, count));
  const cells = fillers.map(({ cell, slots }) => ({ id: cell.id, slots }));
  return {
    some: some.slice(0, MOST).map((chosen) => fillingOf(chosen.map(({ cell }) => cell))),
    ways: arrangements({ cells, slots: left }).count,
    of: fillers.map(({ cell }) => cell),
  };
}

const fillingOf = (cells: readonly NamedCell[]): Filling => ({ value: cells.map(({ id }) => id).join(','), cells });
