import type { record } from '../../core/puzzle/kinds/missing.ts';
import { BAR_WORD } from '../site.ts';
import { CELLS_WORDS, rightSays, rulesSay, wholeSays } from './cells.ts';
import { slotsSay, type WordsFor } from './say.ts';

/** What is said of the kind `missing`. */
export const words: WordsFor<typeof record> = {
  ...CELLS_WORDS,
  title: 'What is missing',
  idea: `A ${BAR_WORD} with a hole in it. Find the cells that fill it.`,
  how: 'What stands on both sides stays. Listen over the joins: a run of one hand does not stop where a cell does.',
  card: (puzzle, nameOf) => ({
    task: `${wholeSays(puzzle)} with a hole of ${slotsSay(puzzle, puzzle.gap)}. Fill it from the shelf.`,
    rules: rulesSay(puzzle, nameOf),
  }),
  right: rightSays,
};
