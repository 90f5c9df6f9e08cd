/** What the puzzles say on their pages; sentences about one puzzle stand in puzzle-sentences.ts. */
import { sayBars } from './labels.ts';

/** A kind of puzzle as its page tells it. */
export interface PuzzleKindWords {
  title: string;
  /** In a sentence: what one does. */
  idea: string;
  /** What is learnt, and how it is answered. */
  how: string;
}

const KINDS = {
  fill: {
    title: 'Fill the bar',
    idea: 'Lay cells until the bar is full and everything the card asks for holds.',
    how: 'Every order that keeps to the card is right, and there is mostly more than one. Count as you lay: where does the next cell start, and how much is left?',
  },
  missing: {
    title: 'What is missing',
    idea: 'A bar with a hole in it. Find the cells that fill it.',
    how: 'What stands on both sides stays. Listen over the joins: a run of one hand does not stop where a cell does.',
  },
  start: {
    title: 'Where does it start',
    idea: 'Cells in a row, and one of them is asked for: on which count does it begin?',
    how: 'Add up the slots of the cells before it. Take away whole beats as you count, and name the place where you stop.',
  },
  fix: {
    title: 'Fix the sticking',
    idea: 'A bar keeps to a rule, but for one stroke. Find it.',
    how: 'Say the sticking aloud, hand by hand, until the tongue trips. Where mending one stroke or another would do, both are right.',
  },
  ear: {
    title: 'By ear',
    idea: 'Hear a bar and lay the cells it is made of.',
    how: 'Listen for what only one cell of the shelf has: an accent, a flam, a doubled stroke, the kick. Which hand plays is not asked for.',
  },
  resolves: {
    title: 'Home again',
    idea: 'A cell is played over and over. After how many bars does it start on beat 1 again?',
    how: 'Take away whole cells from the bar and see what is left over; the leftovers have to add up to a whole cell.',
  },
  which: {
    title: 'Which is which',
    idea: 'Hear two bars and tell them apart.',
    how: 'Headphones help: the right hand sounds from the right, the left from the left.',
  },
} as const satisfies Record<string, PuzzleKindWords>;

const PAGE = {
  title: 'Puzzles',
  description: 'Bars to fill, holes to find, cells to hear: made from a number, graded by what they ask for.',
  idea: 'Seven ways to find out whether a bar adds up. There is no clock.',
  today: 'Today’s puzzle',
  todaySays: 'The same one for everybody who has this date.',
  solved: 'What you have done',
  none: 'Nothing yet. What you answer is kept in this browser and nowhere else.',
  save: 'Save the list as a file',
  withoutOne: 'Puzzles need JavaScript, which is off or did not load. This one is printed with its answer.',
  showAnswer: 'Show an answer',
};

const PLAY = {
  shelf: 'On the shelf',
  shelfHelp: 'A press lays the cell at the end of the bar; with the mouse it can be dragged there.',
  laid: 'Laid so far',
  laidHelp: 'Press a cell to move it or take it out.',
  earlier: 'Earlier',
  later: 'Later',
  takeOut: 'Take out',
  takeBack: 'Take one back',
  clear: 'Clear the bar',
  check: 'Is it right?',
  hear: 'Hear it',
  hearPuzzle: 'Hear the bar',
  hearFirst: 'Hear the first',
  hearSecond: 'Hear the second',
  first: 'the first',
  second: 'the second',
  hint: 'A hint',
  another: 'Another one',
  easier: 'An easier one',
  harder: 'A harder one',
  showOne: 'Show an answer',
  bars: 'Your answer, in bars',
  fewer: 'one bar fewer',
  more: 'one bar more',
  early: 'before bar 1',
  pickCount: 'On which count?',
  pickStroke: 'Which stroke?',
  pickHeard: 'Which one is it?',
  forgetful: 'This browser does not let the site remember what you answered. It holds until you leave the page.',
  open: 'Solve it here',
  loading: 'Loading the puzzle …',
  failed: 'The puzzle did not load: the connection may be gone. Press again to try again.',
  instead: 'Here is another one instead.',
  stays: 'The puzzle that was open is still here.',
};

/** What stands on a puzzle's controls. */
export type PuzzleLabels = typeof PLAY;

/**
 * Everything the pages of puzzles say.
 *
 * @example puzzleWords().kinds.fill.title // 'Fill the bar'
 */
export function puzzleWords() {
  const kinds = Object.fromEntries(Object.entries(KINDS).map(([kind, texts]) => [kind, sayBars(texts)]));
  return { kinds: kinds as Record<keyof typeof KINDS, PuzzleKindWords>, page: sayBars(PAGE), play: sayBars(PLAY) };
}

/**
 * Which puzzle it is.
 *
 * @example puzzleNumber(4182, 3) // 'Number 4182 · level 3 of 5'
 */
export const puzzleNumber = (seed: number, level: number): string => `Number ${seed} · level ${level} of 5`;

const times = (count: number, one: string, more: string): string => (count === 1 ? `one ${one}` : `${count} ${more}`);

/**
 * How a puzzle went.
 *
 * @example recordSays({ day: '2026-11-25', right: true, misses: 1, hints: 0 }) // '2026-11-25 · solved after one miss'
 */
export function recordSays(record: { day: string; right: boolean; misses: number; hints: number }): string {
  const { day, right, misses, hints } = record;
  const after = [misses && times(misses, 'miss', 'misses'), hints && times(hints, 'hint', 'hints')].filter(Boolean);
  const went = right ? (after.length ? `solved after ${after.join(' and ')}` : 'solved at once') : 'answer shown';
  return `${day} · ${went}`;
}
