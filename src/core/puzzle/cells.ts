import { arrangements } from '../arrange/arrange.ts';
import type { ArrangeCell, ArrangeRequest, ArrangeRules, Arrangements } from '../arrange/types.ts';
import { longestRuns } from '../hands/runs.ts';
import { perform } from '../timeline/perform.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';
import { readPhrase } from '../phrase/read.ts';
import { parseSticking } from '../sticking/parse.ts';
import type { Hand, Sticking } from '../sticking/types.ts';
import type { Bpm, SlotIndex } from '../time/units.ts';
import type { PuzzleCell } from './bank.ts';
import type { PuzzleBase } from './kind.ts';

/** How often a cell is to be used. */
export interface Uses {
  cell: string;
  min: number;
  /** Left out: as often as one likes. */
  max?: number;
}

/** A puzzle answered by placing cells. What stands before and after is fixed; the answer is the ids of the cells between. */
export interface CellsPuzzle<K extends string = string> extends PuzzleBase {
  kind: K;
  /** The cells that may be placed. */
  shelf: PuzzleCell[];
  before: PuzzleCell[];
  after: PuzzleCell[];
  /** Slots to be filled. */
  gap: number;
  /** Slots are counted from the start of the first bar. `first` and `last` are cells of the shelf. */
  rules: ArrangeRules;
  uses: Uses[];
  /** By ear: what is heard, and how fast. It counts as an answer, as does whatever sounds the same. */
  heard?: { cells: PuzzleCell[]; bpm: Bpm };
  /** One right answer. */
  solution: string[];
}

/** One slot at a time would fill any bar, so the shelf has only two of a cell of one slot. */
const MOST_OF_ONE_SLOT = 2;

/** How often the cells of a shelf may be used, where no rule says it. */
export const shelfLimits = (shelf: readonly PuzzleCell[]): Uses[] =>
  shelf.filter(({ slots }) => slots === 1).map(({ id }) => ({ cell: id, min: 0, max: MOST_OF_ONE_SLOT }));

/** Whether a number of uses is a rule of the puzzle, and not only what the shelf has. */
export const isUseRule = ({ min }: Uses): boolean => min > 0;

/** What is fixed stands in the arrangement as one cell that is used once; no cell of the bank has such an id. */
const BEFORE = '(before)';
const AFTER = '(after)';

/** The sticking of cells one after another. Throws RangeError for a text that is none. */
export function stickingOf(cells: readonly PuzzleCell[]): Sticking {
  const text = cells.map((cell) => cell.text).join(' ');
  const read = parseSticking(text);
  if (!read.ok) throw new RangeError(`sticking is "${text}"; ${read.fault.message}`);
  return read.sticking;
}

/** Slots of cells one after another. */
export const slotsIn = (cells: readonly PuzzleCell[]): number => cells.reduce((sum, { slots }) => sum + slots, 0);

const fixed = (id: string, cells: readonly PuzzleCell[]): ArrangeCell[] =>
  cells.length ? [{ id, slots: slotsIn(cells), sticking: stickingOf(cells), times: 1 }] : [];

type Problem = Pick<CellsPuzzle, 'shelf' | 'before' | 'after' | 'slots' | 'barSlots' | 'rules' | 'uses'>;

/** The puzzle as a question about arrangements; `first` and `last` hold where nothing is fixed at that end. */
function requestOf({ shelf, before, after, slots, barSlots, rules, uses }: Problem): ArrangeRequest {
  const cells = shelf.map(({ id, slots: length, text }): ArrangeCell => {
    const limit = uses.find((use) => use.cell === id);
    const times = limit && { min: limit.min, ...(limit.max === undefined ? {} : { max: limit.max }) };
    return { id, slots: length, sticking: stickingOf([{ id, text, slots: length }]), ...(times ? { times } : {}) };
  });
  return {
    cells: [...fixed(BEFORE, before), ...cells, ...fixed(AFTER, after)],
    slots,
    barSlots,
    rules: { ...rules, ...(before.length ? { first: BEFORE } : {}), ...(after.length ? { last: AFTER } : {}) },
  };
}

/** All right answers to a puzzle that rules alone decide, in the order of the shelf. */
export const answersTo = (puzzle: Problem): Arrangements => arrangements(requestOf(puzzle));

/** All ways to fill what is to be filled, with what the shelf has, whatever the rules say. */
export const fillings = (puzzle: Problem): Arrangements =>
  answersTo({ ...puzzle, rules: {}, uses: shelfLimits(puzzle.shelf) });

/** The placed cells, without what is fixed. */
export const withoutFixed = (ids: readonly string[]): string[] => ids.filter((id) => id !== BEFORE && id !== AFTER);

/** The placed cells with what is fixed, as they stand among the arrangements. */
export const withFixed = (
  { before, after }: Pick<CellsPuzzle, 'before' | 'after'>,
  ids: readonly string[],
): string[] => [...(before.length ? [BEFORE] : []), ...ids, ...(after.length ? [AFTER] : [])];

/** What is fixed and what is placed between, with rests for what is left; nothing where there would be rests alone. */
export function wholeLine({ before, after, gap }: CellsPuzzle, placed: readonly PuzzleCell[]): PuzzleCell[] {
  const left = gap - slotsIn(placed);
  const rest = left > 0 ? [{ id: 'rest', text: Array(left).fill('-').join(' '), slots: left }] : [];
  return before.length + placed.length + after.length ? [...before, ...placed, ...rest, ...after] : [];
}

/** Before which of the placed cells a new one goes if it is dropped on a slot: the nearest edge; past the last, their number. */
export function placeNearest({ before }: CellsPuzzle, placed: readonly PuzzleCell[], slot: SlotIndex): number {
  const start = slotsIn(before);
  const edges = [...placed.keys(), placed.length].map((index) => start + slotsIn(placed.slice(0, index)));
  const distances = edges.map((edge) => Math.abs(edge - slot));
  return distances.indexOf(Math.min(...distances));
}

/** Cells as strokes with times; an unfinished bar ends in rests. */
export function performCells(
  cells: readonly PuzzleCell[],
  { meter, grid }: Pick<CellsPuzzle, 'meter' | 'grid'>,
): Timeline {
  const read = readPhrase({ cells, meter, grid, fill: 'rests' });
  if (!read.ok) throw new RangeError(`cells do not make a phrase: ${read.fault.message}`);
  return perform(read.phrase);
}

/** The slot of a stroke, counted from the start of the first bar; all bars of a puzzle are alike. */
export const slotOfStroke = ({ barSlots }: Pick<CellsPuzzle, 'barSlots'>, { bar, slot }: Stroke): SlotIndex =>
  (bar - 1) * barSlots + slot;

/** The most strokes in a row by one hand, grace notes left out. */
export function longestRun(played: Timeline): number {
  const lengthOf = (hand: Hand): number => longestRuns(played, hand).longestRun?.length ?? 0;
  return Math.max(lengthOf('R'), lengthOf('L'));
}
