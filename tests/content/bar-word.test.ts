import { describe, expect, it } from 'vitest';
import { makePuzzle, PUZZLE_KINDS } from '../../src/core/index.ts';
import { atSchool } from '../helpers/at-school.ts';

const BAR = /.{0,30}\b[Bb]ars?\b(?! lines?\b|-).{0,20}/g;

/** Every sentence in a value, however deep. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** Where a bar is named in the constants of a module. */
const barsIn = (module: object): string[] =>
  textsIn(Object.values(module).filter((value) => typeof value !== 'function')).flatMap(
    (text) => text.match(BAR) ?? [],
  );

/** Files whose sentences are turned where they are shown. */
const TURNED_LATER: Record<string, string> = {
  'write.ts': 'the page for authors shows how things are typed',
};
/** The masthead turns it. */
const NAME_OF_PAGE = 'Bar math';

const FILES = Object.entries(import.meta.glob<Record<string, unknown>>('../../src/words/**/*.ts'))
  .map(([path, load]) => ({ name: path.split('/').at(-1)!, load }))
  .filter(({ name }) => !(name in TURNED_LATER));

describe('where a school says measure', () => {
  it.each(FILES)('no constant in $name says bar', async ({ load }) => {
    expect(barsIn(await atSchool({ barWord: 'measure' }, load)).filter((text) => text !== NAME_OF_PAGE)).toEqual([]);
  });

  it.each(['pages.ts', 'player.ts', 'bar-math.ts', 'lessons.ts', 'proof.ts'])(
    '%s says it, and bar elsewhere',
    async (name) => {
      const { load } = FILES.find((file) => file.name === name)!;
      const textsOf = (module: object) => textsIn(Object.values(module)).join(' ');
      expect(textsOf(await atSchool({ barWord: 'measure' }, load))).toMatch(/\bmeasures?\b/i);
      expect(barsIn(await load())).not.toEqual([]);
    },
  );

  it('no puzzle says bar', async () => {
    const load = () => import('../../src/words/puzzle/index.ts');
    const saidOf = ({ cardSays, PUZZLE_WORDS }: Awaited<ReturnType<typeof load>>) => [
      PUZZLE_WORDS,
      PUZZLE_KINDS.flatMap((kind) => [1, 2, 3, 4, 5].map((seed) => cardSays(makePuzzle(kind, seed), (cell) => cell))),
    ];
    expect(barsIn(saidOf(await atSchool({ barWord: 'measure' }, load)))).toEqual([]);
    expect(barsIn(saidOf(await load()))).not.toEqual([]);
  });
});
