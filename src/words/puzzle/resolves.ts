import type { ResolvesPuzzle, ResolvesWrong } from '../../core/index.ts';
import type { record } from '../../core/puzzle/kinds/resolves.ts';
import { capital } from '../grammar.ts';
import { spell } from '../numbers.ts';
import { BAR_WORD } from '../site.ts';
import { barsSay, slotsSay, theCell, times, tupletsSay, type NameOf, type WordsFor } from './say.ts';

/** What is said of the kind `resolves`. */
export const words: WordsFor<typeof record> = {
  title: 'Home again',
  idea: `A cell is played over and over. After how many ${BAR_WORD}s does it start on beat 1 again?`,
  how: `Take away whole cells from the ${BAR_WORD} and see what is left over; the leftovers have to add up to a whole cell.`,
  card(puzzle, nameOf) {
    const cell = `${capital(theCell(nameOf(puzzle.cell.id)))}, ${slotsSay(puzzle, puzzle.cell.slots)} long,`;
    const round = `goes round and round in ${puzzle.meter}${tupletsSay(puzzle)}`;
    return { task: `${cell} ${round}. After how many ${BAR_WORD}s does it start on beat 1 again?`, rules: [] };
  },
  answer: (_puzzle, bars) => barsSay(bars),
  wrong: (puzzle, wrong, nameOf) =>
    wrong.wrong === 'resolved-before'
      ? 'It starts on beat 1 then, but it has done so before.'
      : leftOverSays(puzzle, wrong, nameOf),
};

function leftOverSays(
  puzzle: ResolvesPuzzle,
  { bars, cells, over }: Extract<ResolvesWrong, { over: number }>,
  nameOf: NameOf,
): string {
  const all = `After ${barsSay(bars)} there are ${slotsSay(puzzle, bars * puzzle.barSlots)}`;
  const fits = `${theCell(nameOf(puzzle.cell.id))} fits in ${times(cells)}`;
  return `${all}: ${fits} and ${spell(over, 'counted')} ${over === 1 ? 'is' : 'are'} over, so beat 1 falls inside a cell.`;
}
