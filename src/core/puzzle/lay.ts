import { arrangements } from '../arrange/arrange.ts';
import type { ArrangeCell, ArrangeRequest, Arrangements } from '../arrange/types.ts';
import { longestRuns } from '../hands/runs.ts';
import { perform } from '../timeline/perform.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';
import { readPhrase } from '../phrase/read.ts';
import { parseSticking } from '../sticking/parse.ts';
import type { Hand, Sticking } from '../sticking/types.ts';
import type { PuzzleCell } from './bank.ts';
import type { LayPuzzle } from './types.ts';
import { shelfLimits } from './uses.ts';

/** What is fixed stands in the arrangement as one cell that is used once; no cell of the bank has such an id. */
const BEFORE = '(before)';
const AFTER = '(after)';

/** The sticking of cells laid one after another. Throws RangeError for a text that is none. */
export function stickingOf(cells: readonly PuzzleCell[]): Sticking {
  const text = cells.map((cell) => cell.text).join(' ');
  const read = parseSticking(text);
  if (!read.ok) throw new RangeError(`sticking is "${text}"; ${read.fault.message}`);
  return read.sticking;
}

/** Slots of cells laid one after another. */
export const slotsIn = (cells: readonly PuzzleCell[]): number => cells.reduce((sum, { slots }) => sum + slots, 0);

const fixed = (id: string, cells: readonly PuzzleCell[]): ArrangeCell[] =>
  cells.length ? [{ id, slots: slotsIn(cells), sticking: stickingOf(cells), times: 1 }] : [];

type Asked = Pick<LayPuzzle, 'shelf' | 'before' | 'after' | 'slots' | 'barSlots' | 'rules' | 'uses'>;

/** The puzzle as a question about arrangements; `first` and `last` hold where nothing is fixed at that end. */
function requestOf({ shelf, before, after, slots, barSlots, rules, uses }: Asked): ArrangeRequest {
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
export const answersTo = (puzzle: Asked): Arrangements => arrangements(requestOf(puzzle));

/** All ways to fill what is to be filled, with what the shelf has, whatever the rules say. */
export const fillings = (puzzle: Asked): Arrangements =>
  answersTo({ ...puzzle, rules: {}, uses: shelfLimits(puzzle.shelf) });

/** The cells that were laid, without what is fixed. */
export const laidOnly = (ids: readonly string[]): string[] => ids.filter((id) => id !== BEFORE && id !== AFTER);

/** What was laid with what is fixed, as it stands among the arrangements. */
export const wholeOf = ({ before, after }: Pick<LayPuzzle, 'before' | 'after'>, ids: readonly string[]): string[] => [
  ...(before.length ? [BEFORE] : []),
  ...ids,
  ...(after.length ? [AFTER] : []),
];

/** Cells as strokes with times; an unfinished bar ends in rests. */
export function performCells(
  cells: readonly PuzzleCell[],
  { meter, grid }: Pick<LayPuzzle, 'meter' | 'grid'>,
): Timeline {
  const read = readPhrase({ cells, meter, grid, fill: 'rests' });
  if (!read.ok) throw new RangeError(`cells do not make a phrase: ${read.fault.message}`);
  return perform(read.phrase);
}

/** The slot of a stroke, counted from the start of the first bar; all bars of a puzzle are alike. */
export const slotOver = ({ barSlots }: Pick<LayPuzzle, 'barSlots'>, { bar, slot }: Stroke): number =>
  (bar - 1) * barSlots + slot;

/** The most strokes in a row by one hand, grace notes left out. */
export function longestRun(played: Timeline): number {
  const lengthOf = (hand: Hand): number => longestRuns(played, hand).longestRun?.length ?? 0;
  return Math.max(lengthOf('R'), lengthOf('L'));
}

/** Texts of one slot each as strokes with times. */
export const performTexts = (texts: readonly string[]): Timeline =>
  performCells(
    texts.map((text, i) => ({ id: String(i), text, slots: 1 })),
    { meter: '4/4', grid: 4 },
  );
