import type { PuzzleCell } from './bank.ts';
import type { Uses } from './types.ts';

/** One slot at a time would fill any bar, so the shelf has only so many of a cell of one slot. */
const MOST_OF_ONE_SLOT = 2;

/** How often the cells of a shelf may be used, where no rule says it. */
export const shelfLimits = (shelf: readonly PuzzleCell[]): Uses[] =>
  shelf.filter(({ slots }) => slots === 1).map(({ id }) => ({ cell: id, min: 0, max: MOST_OF_ONE_SLOT }));

/** Whether a number of uses is a rule of the puzzle, and not only what the shelf has. */
export const isRule = ({ min }: Uses): boolean => min > 0;
