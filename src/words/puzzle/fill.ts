import type { record } from '../../core/puzzle/kinds/fill.ts';
import { BAR_WORD } from '../site.ts';
import { CELLS_WORDS, rightSays, rulesSay, wholeSays } from './cells.ts';
import { slotsSay, type WordsFor } from './say.ts';

/** What is said of the kind `fill`. */
export const words: WordsFor<typeof record> = {
  ...CELLS_WORDS,
  title: `Fill the ${BAR_WORD}`,
  idea: `Lay cells until the ${BAR_WORD} is full and everything the card asks for holds.`,
  how: 'Every order that keeps to the card is right, and there is mostly more than one. Count as you lay: where does the next cell start, and how much is left?',
  card: (puzzle, nameOf) => ({
    task: `${wholeSays(puzzle)}: ${slotsSay(puzzle, puzzle.slots)}. Fill ${puzzle.slots > puzzle.barSlots ? 'them' : 'it'} from the shelf.`,
    rules: rulesSay(puzzle, nameOf),
  }),
  right: rightSays,
};
