import type { WhichPuzzle } from '../../core/index.ts';
import type { record } from '../../core/puzzle/kinds/which.ts';
import { BAR_WORD } from '../site.ts';
import { leadNote, theCell, type NameOf, type WordsFor } from './say.ts';

/** What is said of the kind `which`. */
export const words: WordsFor<typeof record> = {
  title: 'Which is which',
  idea: `Hear two ${BAR_WORD}s and tell them apart.`,
  how: 'Headphones help: the right hand sounds from the right, the left from the left.',
  card: (puzzle, nameOf) => ({ task: taskSays(puzzle, nameOf), rules: [] }),
  answer: (_puzzle, answer) => (answer === 1 ? 'the first' : 'the second'),
  wrong: ({ about }) => `That is the other one. ${LISTEN_FOR[about]}`,
};

const LISTEN_FOR: Record<WhichPuzzle['about'], string> = {
  width: 'A closed flam is nearly one stroke; an open one is two.',
  lead: 'Listen for the side the first main stroke of each cell comes from.',
  cells: 'Count the strokes of one beat, and listen for what falls between them.',
};

function taskSays({ about, ask, heard: [{ text }] }: WhichPuzzle, nameOf: NameOf): string {
  if (about === 'width') return `One plays its flams closed, the other open. Which has the ${ask} ones?`;
  if (about === 'cells') return `Which of the two is made of ${theCell(nameOf(ask))}?`;
  return `One is led by the right hand, the other by the left. Which is led by the ${ask}?${leadNote(text)}`;
}
