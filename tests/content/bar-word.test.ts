import { expect, test } from 'vitest';
import { barMathWords } from '../../src/words/bar-math.ts';
import { pageWords } from '../../src/words/index.ts';
import { playerLabels } from '../../src/words/player.ts';
import { puzzleWords } from '../../src/words/puzzles.ts';

const BAR = /.{0,30}\b[Bb]ars?\b(?! lines?\b|-).{0,20}/g;

/** Every sentence in a value, however deep. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** Where a bar is named in a value. */
const barsIn = (value: unknown): string[] => textsIn(value).flatMap((text) => text.match(BAR) ?? []);

test.each([
  ['the pages', pageWords],
  ['the player', playerLabels],
  ['the calculators', barMathWords],
  ['the puzzles', puzzleWords],
])('%s say measure throughout, and bar where that is the word', (_, words) => {
  expect(barsIn(words('measure'))).toEqual([]);
  expect(barsIn(words('bar'))).not.toEqual([]);
});

/** Files whose sentences are turned where they are shown. */
const TURNED_LATER: Record<string, string> = {
  'write.ts': 'the page for authors shows how things are typed',
  'questions.ts': 'a question turns all its sentences at once',
  'index.ts': 'the other files again',
};
/** The masthead turns it. */
const NAME_OF_PAGE = 'Bar math';

const MODULES: Record<string, Record<string, unknown>> = import.meta.glob('../../src/words/*.ts', { eager: true });
const files = Object.entries(MODULES)
  .map(([path, module]) => ({ name: path.split('/').at(-1)!, module }))
  .filter(({ name }) => !(name in TURNED_LATER));

test.each(files)('what $name says at every school names no bar', ({ module }) => {
  const constants = Object.values(module).filter((value) => typeof value !== 'function');
  expect(barsIn(constants).filter((text) => text !== NAME_OF_PAGE)).toEqual([]);
});
