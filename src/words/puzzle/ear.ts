import type { record } from '../../core/puzzle/kinds/ear.ts';
import { BAR_WORD } from '../site.ts';
import { CELLS_WORDS, rulesSay, wholeSays } from './cells.ts';
import { slotsSay, type WordsFor } from './say.ts';

/** What is said of the kind `ear`. */
export const words: WordsFor<typeof record> = {
  ...CELLS_WORDS,
  title: 'By ear',
  idea: `Hear a ${BAR_WORD} and lay the cells it is made of.`,
  how: 'Listen for what only one cell of the shelf has: an accent, a flam, a doubled stroke, the kick. Which hand plays is not asked for.',
  card: (puzzle, nameOf) => ({
    task: `${wholeSays(puzzle)}, ${slotsSay(puzzle, puzzle.slots)}. Hear it, and lay what you hear.`,
    rules: rulesSay(puzzle, nameOf),
  }),
};
