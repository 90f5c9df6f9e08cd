import { whole } from '../check.ts';
import { resolution } from '../time/resolution.ts';
import { slotsOf } from '../time/meter.ts';
import type { Grid, MeterText } from '../time/units.ts';
import { levelOf, puzzleChance, type Level } from './address.ts';
import { BANK, type PuzzleCell } from './bank.ts';
import { difficultyOf } from './difficulty.ts';
import type { Grade, ResolvesPuzzle } from './types.ts';

interface Plan {
  bars: readonly (readonly [MeterText, Grid])[];
  /** Slots a cell may have. */
  cells: readonly number[];
  /** Bars the answer may be, from the first to the second. */
  answers: readonly [number, number];
}

const PLANS: Record<Level, Plan> = {
  1: { bars: [['2/4', 4], ['4/4', 2], ['4/4', 3], ['3/4', 4], ['3/4', 2]], cells: [3, 4, 5, 6], answers: [2, 3] },
  2: { bars: [['4/4', 4], ['3/4', 2], ['4/4', 3], ['3/4', 4], ['5/4', 2]], cells: [3, 4, 5, 6, 7], answers: [2, 5] },
  3: { bars: [['4/4', 4], ['4/4', 3], ['3/4', 4], ['5/4', 3], ['2/4', 6]], cells: [3, 4, 5, 6, 7], answers: [3, 5] },
  4: { bars: [['5/4', 4], ['4/4', 4], ['5/4', 3], ['7/8', 2], ['4/4', 3]], cells: [3, 4, 5, 6, 7], answers: [3, 7] },
  5: { bars: [['7/8', 2], ['4/4', 4], ['2+2+3/8', 2], ['5/4', 4], ['4/4', 6], ['3/4', 6]], cells: [3, 5, 6, 7], answers: [5, 7] },
}; // prettier-ignore

/**
 * A cell played over and over; after how many bars does it start on beat 1 again?
 * @example
 * makeResolves(4182).bars // → 5
 */
export function makeResolves(seed: number): ResolvesPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance('resolves', seed);
  const plan = PLANS[level];
  const ways = plan.bars.flatMap(([meter, grid]) =>
    fitting(plan, slotsOf(meter, grid)).map((cell) => ({ meter, grid, cell })),
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

/** The cells that are home after a number of bars that the level asks for. */
function fitting({ cells, answers: [least, most] }: Plan, barSlots: number): PuzzleCell[] {
  return BANK.filter(({ slots, text }) => {
    const { bars } = resolution(slots, barSlots);
    return !text.includes('-') && cells.includes(slots) && bars >= least && bars <= most;
  });
}

/** The answer is a number of bars. Throws RangeError for what is none. */
export function gradeResolves({ cell, barSlots, bars }: ResolvesPuzzle, given: number): Grade {
  whole('bars', given, 1);
  if (given === bars) return { right: true, wrongs: [] };
  if (given % bars === 0) return { right: false, wrongs: [{ wrong: 'home-sooner', bars: given }] };
  const slots = given * barSlots;
  const cells = Math.floor(slots / cell.slots);
  return { right: false, wrongs: [{ wrong: 'no-home', bars: given, cells, over: slots - cells * cell.slots }] };
}
