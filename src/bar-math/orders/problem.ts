/** What is asked: cells, how often each, the bars they are to fill, and the rules. */
import { arrangements, slotsOf, TooLarge } from '../../core/index.ts';
import type { ArrangeCell, Arrangements, ArrangeRequest, Grid, MeterText } from '../../core/index.ts';
import { readFigure, type Figure } from '../cells.ts';
import { tooLongFaults, type Reading } from '../read.ts';
import { readRows, readUses } from './rows.ts';
import type { Inputs, SumProps } from '../types.ts';
import { rulesOf } from './rules.ts';

/** A problem that can be counted. The id of a cell is the index of its figure. */
export interface Problem {
  figures: readonly Figure[];
  request: ArrangeRequest & Required<Pick<ArrangeRequest, 'rules' | 'barSlots'>>;
  bars: number;
  meter: MeterText;
  grid: Grid;
}

const MOST_BARS = 8;

/** Reads the fields; undefined, with the faults noted, where one cannot be read. */
export function readProblem(inputs: Inputs, read: Reading, props: SumProps): Problem | undefined {
  if (tooLongFaults(inputs)) return undefined;
  const rows = readRows(inputs.cells);
  const figures = rows.map(({ cell }, i) => readFigure(read, `cell${i}`, cell, props.named));
  const uses = rows.map((row, i) => readUses(read, `uses${i}`, row.uses));
  const bars = read.whole('bars', 1, MOST_BARS);
  const meter = read.meter('meter');
  const grid = read.whole('grid', 1, 8);
  if (!bars || !meter || !grid) return undefined;
  const known = figures.filter((figure) => figure !== undefined);
  if (known.length < figures.length) return undefined;
  const barSlots = slotsOf(meter, grid);
  const rules = rulesOf(inputs, read, { rows: rows.length, bars, meter, grid, barSlots });
  if (Object.keys(read.faults).some((field) => field !== 'order' && field !== 'kept')) return undefined;
  const cells = known.map(({ slots, sticking }, i) => ({ id: String(i), slots, sticking, ...timesOf(uses[i]) }));
  return { figures: known, request: { cells, slots: bars * barSlots, barSlots, rules }, bars, meter, grid };
}

const timesOf = (times: ReturnType<typeof readUses>): Pick<ArrangeCell, 'times'> =>
  times === undefined ? {} : { times };

/** The last problem that was counted: turning from one order to the next counts nothing anew. */
let last: { key: string; all: Arrangements } | undefined;
/** The last one that was too large, and for how many states. */
let beyond: { key: string; states: number } | undefined;

/** All orders of a problem. Throws TooLarge where they are more states than that. */
export function countedUpTo(states: number, { request }: Problem): Arrangements {
  const key = JSON.stringify(request);
  if (last?.key === key) return last.all;
  if (beyond?.key === key && beyond.states >= states) throw new TooLarge('counted before');
  try {
    const all = arrangements({ ...request, mostStates: states });
    last = { key, all };
    return all;
  } catch (error) {
    if (error instanceof TooLarge) beyond = { key, states };
    throw error;
  }
}

/** The names of an order's cells. */
export const namesOf = ({ figures }: Problem, ids: readonly string[]): string[] =>
  ids.map((id) => figures[Number(id)].name);
