/** What the pages of puzzles say around a puzzle. */
import { capital } from '../grammar.ts';
import { spell } from '../numbers.ts';
import { BAR_WORD } from '../site.ts';

/** What the pages of puzzles say. */
export const PUZZLE_PAGE = {
  title: 'Puzzles',
  description: `${capital(BAR_WORD)}s to fill, holes to find, cells to hear: made from a number, graded by what they ask for.`,
  idea: (kinds: number): string =>
    `${capital(spell(kinds, 'counted'))} ways to find out whether a ${BAR_WORD} adds up. There is no clock.`,
  today: 'Today’s puzzle',
  todaySays: 'The same one for everybody who has this date.',
  solved: 'What you have done',
  none: 'Nothing yet. What you answer is kept in this browser and nowhere else.',
  save: 'Save the list as a file',
  withoutOne: 'Puzzles need JavaScript, which is off or did not load. This one is printed with its answer.',
  showAnswer: 'Show an answer',
};

/** What stands on a puzzle's controls. */
export const PUZZLE_LABELS = {
  shelf: 'On the shelf',
  shelfHelp: `A press lays the cell at the end of the ${BAR_WORD}; with the mouse it can be dragged there.`,
  laid: 'Laid so far',
  laidHelp: 'Press a cell to move it or take it out.',
  earlier: 'Earlier',
  later: 'Later',
  takeOut: 'Take out',
  takeBack: 'Take one back',
  clear: `Clear the ${BAR_WORD}`,
  check: 'Is it right?',
  hear: 'Hear it',
  hearPuzzle: `Hear the ${BAR_WORD}`,
  hearFirst: 'Hear the first',
  hearSecond: 'Hear the second',
  first: 'the first',
  second: 'the second',
  hint: 'A hint',
  another: 'Another one',
  easier: 'An easier one',
  harder: 'A harder one',
  showOne: 'Show an answer',
  bars: `Your answer, in ${BAR_WORD}s`,
  fewer: `one ${BAR_WORD} fewer`,
  more: `one ${BAR_WORD} more`,
  early: `before ${BAR_WORD} 1`,
  pickCount: 'On which count?',
  pickStroke: 'Which stroke?',
  pickHeard: 'Which one is it?',
  forgetful: 'This browser does not let the site remember what you answered. It holds until you leave the page.',
  open: 'Solve it here',
  loading: 'Loading the puzzle …',
  failed: 'The puzzle did not load: the connection may be gone. Press again to try again.',
  right: 'Right.',
  nothingChosen: 'Choose an answer first.',
  anotherAnswer: 'Another:',
  instead: 'Here is another one instead.',
  stays: 'The puzzle that was open is still here.',
};

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
