import { whole } from '../../check.ts';
import { slotsOf } from '../../time/meter.ts';
import type { Grid, MeterText, SlotIndex } from '../../time/units.ts';
import { bankCells, cellsFor, type PuzzleCell } from '../bank.ts';
import { fillings } from '../cells.ts';
import { RIGHT, wrongBy, type Grade, type PuzzleBase, type PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance, type Chance } from '../random.ts';

/** Where does it start: on which count does a cell begin? The answer is a slot of its bar. */
export interface StartPuzzle extends PuzzleBase {
  kind: 'start';
  cells: PuzzleCell[];
  /** Slots before bar 1. */
  pickup: number;
  /** Which cell is asked for, from 0. */
  ask: number;
  /** Where each cell starts: its bar, 0 for the pickup, and the slot in it. */
  starts: { bar: number; slot: SlotIndex }[];
}

/** A wrong count; `by` is how far off it is, in slots: below 0 it is too early. */
export interface StartWrong {
  wrong: 'start';
  given: SlotIndex;
  by: number;
}

const NUMBER = 2;

interface LevelSpec {
  bars: readonly (readonly [MeterText, Grid, bars: number])[];
  /** How many kinds of cell the bar has. */
  kinds: number;
  /** Most slots before bar 1. */
  pickup: number;
}

const BY_LEVEL: Record<Level, LevelSpec> = {
  1: { bars: [['2/4', 4, 1], ['4/4', 2, 1]], kinds: 2, pickup: 0 },
  2: { bars: [['4/4', 3, 1], ['3/4', 4, 1], ['4/4', 4, 1]], kinds: 2, pickup: 0 },
  3: { bars: [['4/4', 4, 1]], kinds: 3, pickup: 0 },
  4: { bars: [['4/4', 4, 1], ['5/4', 4, 1], ['6/8', 6, 1]], kinds: 4, pickup: 3 },
  5: { bars: [['4/4', 4, 2], ['7/8', 2, 2], ['5/4', 3, 1]], kinds: 4, pickup: 5 },
}; // prettier-ignore

const TRIES = 60;

/**
 * A bar of cells; on which count does one of them start? From level 4 on the phrase may start before beat 1.
 * @example
 * makePuzzle('start', 4182).starts[0] // → { bar: 1, slot: 0 }
 */
function make(seed: number): StartPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  for (let tries = 0; tries < TRIES; tries += 1) {
    const puzzle = draw(chance, BY_LEVEL[level], seed, level);
    if (puzzle) return puzzle;
  }
  const cells = bankCells('rll', 'rll', 'two-singles');
  return puzzleOf({ seed, level, meter: '2/4', grid: 4, slots: 8, barSlots: 8 }, { cells, pickup: 0, ask: 2 });
}

function draw(
  chance: Chance,
  { bars, kinds, pickup: most }: LevelSpec,
  seed: number,
  level: Level,
): StartPuzzle | undefined {
  const [meter, grid, count] = chance.pick(bars);
  const barSlots = slotsOf(meter, grid);
  const pickup = chance.between(0, most);
  const slots = barSlots * count;
  const shelf = chance.shuffle(cellsFor(level, barSlots / 2)).slice(0, kinds);
  const all = fillings({ shelf, before: [], after: [], slots: slots + pickup, barSlots, rules: {}, uses: [] });
  if (all.count < 2n) return undefined;
  const cells = bankCells(...all.sample(chance.unit));
  const places = startsOf(cells, pickup, barSlots);
  const past = level < 3 ? 1 : Math.floor(cells.length / 2);
  const worth = places.flatMap(({ bar, slot }, i) =>
    i > past && bar > 0 && (level < 3 || slot % grid !== 0) ? [i] : [],
  );
  if (!worth.length || new Set(cells.map(({ slots: length }) => length)).size < 2) return undefined;
  return puzzleOf({ seed, level, meter, grid, slots, barSlots }, { cells, pickup, ask: chance.pick(worth) });
}

function startsOf(cells: readonly PuzzleCell[], pickup: number, barSlots: number): { bar: number; slot: SlotIndex }[] {
  let slot = -pickup;
  return cells.map((cell) => {
    const from = slot;
    slot += cell.slots;
    const bar = Math.floor(from / barSlots);
    return { bar: bar + 1, slot: from - bar * barSlots };
  });
}

type Facts = Pick<StartPuzzle, 'seed' | 'level' | 'meter' | 'grid' | 'slots' | 'barSlots'>;

function puzzleOf(facts: Facts, line: Pick<StartPuzzle, 'cells' | 'pickup' | 'ask'>): StartPuzzle {
  const counted = { answers: 1n, choices: BigInt(facts.barSlots), rules: line.pickup ? 1 : 0, depth: line.ask };
  const starts = startsOf(line.cells, line.pickup, facts.barSlots);
  return { kind: 'start', ...facts, ...line, starts, difficulty: difficultyOf(counted, facts.grid) };
}

/**
 * The answer is a slot of the bar the cell starts in. `by` is how far off it is, in slots: below 0 it is too early. Throws
 * RangeError for what is no slot of the bar.
 */
function grade({ starts, ask, barSlots }: StartPuzzle, slot: SlotIndex): Grade<StartWrong> {
  whole('slot', slot, 0, barSlots - 1);
  const by = slot - starts[ask].slot;
  return by === 0 ? RIGHT : wrongBy({ wrong: 'start', given: slot, by });
}

/** The kind `start`. */
export const record: PuzzleKindRecord<StartPuzzle, SlotIndex, StartWrong> = {
  number: NUMBER,
  unanswered: undefined,
  make,
  grade,
  solution: ({ starts, ask }) => starts[ask].slot,
};
