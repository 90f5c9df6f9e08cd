import { whole } from '../../check.ts';
import { slotsOf } from '../../time/meter.ts';
import { resolution } from '../../time/resolution.ts';
import type { Grid, MeterText } from '../../time/units.ts';
import { BANK, type PuzzleCell } from '../bank.ts';
import { RIGHT, wrongBy, type Grade, type PuzzleBase, type PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance } from '../random.ts';

/** After how many bars does a cell start on beat 1 again? The answer is a number of bars. */
export interface ResolvesPuzzle extends PuzzleBase {
  kind: 'resolves';
  cell: PuzzleCell;
  bars: number;
  cells: number;
}

/** Bars after which beat 1 falls inside a cell, or after which the cell has started on beat 1 before. */
export type ResolvesWrong =
  { wrong: 'not-resolved'; bars: number; cells: number; over: number } | { wrong: 'resolved-before'; bars: number };

const NUMBER = 5;

interface LevelSpec {
  bars: readonly (readonly [MeterText, Grid])[];
  /** Slots a cell may have. */
  cells: readonly number[];
  /** Bars the answer may be, from the first to the second. */
  answers: readonly [number, number];
}

const BY_LEVEL: Record<Level, LevelSpec> = {
  1: { bars: [['2/4', 4], ['4/4', 2], ['4/4', 3], ['3/4', 4], ['3/4', 2]], cells: [3, 4, 5, 6], answers: [2, 3] },
  2: { bars: [['4/4', 4], ['3/4', 2], ['4/4', 3], ['3/4', 4], ['5/4', 2]], cells: [3, 4, 5, 6, 7], answers: [2, 5] },
  3: { bars: [['4/4', 4], ['4/4', 3], ['3/4', 4], ['5/4', 3], ['2/4', 6]], cells: [3, 4, 5, 6, 7], answers: [3, 5] },
  4: { bars: [['5/4', 4], ['4/4', 4], ['5/4', 3], ['7/8', 2], ['4/4', 3]], cells: [3, 4, 5, 6, 7], answers: [3, 7] },
  5: { bars: [['7/8', 2], ['4/4', 4], ['2+2+3/8', 2], ['5/4', 4], ['4/4', 6], ['3/4', 6]], cells: [3, 5, 6, 7], answers: [5, 7] },
}; // prettier-ignore

/**
 * A cell played over and over; after how many bars does it start on beat 1 again?
 * @example
 * makePuzzle('resolves', 4182).bars // → 5
 */
function make(seed: number): ResolvesPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  const spec = BY_LEVEL[level];
  const ways = spec.bars.flatMap(([meter, grid]) =>
    fitting(spec, slotsOf(meter, grid)).map((cell) => ({ meter, grid, cell })),
  );
  const { meter, grid, cell } = chance.pick(ways);
  const barSlots = slotsOf(meter, grid);
  const { bars, cells } = resolution(cell.slots, barSlots);
  const facts = { answers: 1n, choices: BigInt(cell.slots), rules: 0, depth: bars };
  const difficulty = difficultyOf(facts, grid);
  return {
    kind: 'resolves',
    seed,
    level,
    meter,
    grid,
    slots: barSlots * bars,
    barSlots,
    cell,
    bars,
    cells,
    difficulty,
  };
}

/** The cells that resolve after a number of bars that the level asks for. */
function fitting({ cells, answers: [least, most] }: LevelSpec, barSlots: number): PuzzleCell[] {
  return BANK.filter(({ slots, text }) => {
    const { bars } = resolution(slots, barSlots);
    return !text.includes('-') && cells.includes(slots) && bars >= least && bars <= most;
  });
}

/** Throws RangeError for what is no number of bars. */
function grade({ cell, barSlots, bars }: ResolvesPuzzle, given: number): Grade<ResolvesWrong> {
  whole('bars', given, 1);
  if (given === bars) return RIGHT;
  if (given % bars === 0) return wrongBy({ wrong: 'resolved-before', bars: given });
  const slots = given * barSlots;
  const cells = Math.floor(slots / cell.slots);
  return wrongBy({ wrong: 'not-resolved', bars: given, cells, over: slots - cells * cell.slots });
}

/** The kind `resolves`. */
export const record: PuzzleKindRecord<ResolvesPuzzle, number, ResolvesWrong> = {
  number: NUMBER,
  unanswered: 1,
  make,
  grade,
  solution: ({ bars }) => bars,
};
