import { saySlot, type StartPuzzle } from '../../core/index.ts';
import type { record } from '../../core/puzzle/kinds/start.ts';
import { slotNames } from '../../core/time/slot-names.ts';
import { COUNTING } from '../site.ts';
import { ordinal, slotsSay, theCell, type WordsFor } from './say.ts';

/** What is said of the kind `start`. */
export const words: WordsFor<typeof record> = {
  title: 'Where does it start',
  idea: 'Cells in a row, and one of them is asked for: on which count does it begin?',
  how: 'Add up the slots of the cells before it. Take away whole beats as you count, and name the place where you stop.',
  card(puzzle, nameOf) {
    const { meter, grid, cells, ask, pickup } = puzzle;
    const cell = `the ${ordinal(ask + 1)} cell, ${theCell(nameOf(cells[ask].id))},`;
    const early = pickup ? ` The first cell starts ${slotsSay(puzzle, pickup)} before beat 1.` : '';
    const counted = `In ${meter}, counted in ${slotNames(meter, grid).many}`;
    return { task: `${counted}: on which count does ${cell} start?${early}`, rules: [] };
  },
  answer: ({ meter, grid }, slot) => saySlot(meter, grid, slot, COUNTING),
  wrong: (puzzle, { by }) => `${by < 0 ? 'Too early' : 'Too late'}. ${sumSays(puzzle)}.`,
};

function sumSays({ cells, ask, pickup }: StartPuzzle): string {
  const before = cells.slice(0, ask).map(({ slots }) => slots);
  const early = pickup ? `, and the first ${pickup === 1 ? 'one comes' : `${pickup} come`} before beat 1` : '';
  return `The cells before it take ${before.join(' + ')}${early}`;
}
