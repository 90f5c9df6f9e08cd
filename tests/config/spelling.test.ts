import { readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const ROOT = new URL('../../', import.meta.url);
const PLACES = ['src', 'components', 'tests', 'content', 'README.md', 'DEVELOPERS.md'];
const TEXT = /\.(ts|js|mjs|svelte|astro|css|mdx?|yaml|json|vtt|txt|svg|webmanifest)$/;

/** British forms wherever they stand, inside a name too. American English has another form for each (common practice). */
const PARTS = [
  'colour|neighbour|behaviour|favour|flavour|honour|humour|labour|rigour|vigour|centre|centring|metre|theatre|fibre',
  'calibre|grey|practis|licenc|defence|offence|pretence|analogue|judgement|artefact|aluminium|sceptic|skilful',
  'labell(ed(?!by)|ing)|(travel|cancel|model|level|signal|channel|tunnel)l(ed|er|ing)|whilst|amongst|towards|afterwards',
  '(recogn|organ|normal|synthes|summar|minim|maxim|optim|initial|serial|memor|emphas|apolog|special|general)is(e|ing|ation)',
  '(visual|random|standard|token|sanit|capital|harmon|util|priorit|categor|local|stabil|final)is(e[ds]?\\b|ing|ation)',
];
/** British forms that are only a part of other words in American English. */
const WHOLE = [
  'learnt|spelt|spoilt|burnt|dreamt|leant|maths|litres?|programmes?|fulfil|enrol|cheques?|tyres?|cosy|ageing|kerb',
  'realis(e[ds]?|ing|ation)|(anal|paral|catal)ys(e[dr]?|ing)|moulds?|ploughs?|draughts?|storeys?|aeroplanes?',
];
const BRITISH = new RegExp(`${PARTS.join('|')}|\\b(${WHOLE.join('|')})\\b`, 'gi');

/** Where a form may stand all the same: the setting of content/site.yaml by the name it had first, which schools have. */
const ALLOWED: Record<string, string> = {
  'src/curriculum/site.ts': 'colours',
  'src/build/content/check-slips.ts': 'colours',
  'tests/content/site.test.ts': 'colours',
  'tests/content/planted/site.ts': 'colours',
};

const britishIn = (text: string): string[] => [...text.matchAll(BRITISH)].map(([form]) => form);

/** Every file of a place, by its path from the root. */
const filesOf = (place: string): string[] =>
  statSync(new URL(place, ROOT)).isFile()
    ? [place]
    : readdirSync(new URL(`${place}/`, ROOT), { withFileTypes: true }).flatMap(({ name }) =>
        filesOf(`${place}/${name}`),
      );
const FILES = PLACES.flatMap(filesOf).filter((path) => path !== 'tests/config/spelling.test.ts');
const textOf = (path: string): string => readFileSync(new URL(path, ROOT), 'utf8');

describe('American spelling', () => {
  it('is in every file, and in its name', () => {
    const found = FILES.flatMap((path) => {
      const lines = TEXT.test(path) ? textOf(path).split('\n') : [];
      const allowed = (line: string) => (ALLOWED[path] ? line.replaceAll(ALLOWED[path], '') : line);
      const inText = lines.flatMap((line, index) =>
        britishIn(allowed(line)).map((form) => `${path}:${index + 1} ${form}`),
      );
      return [...britishIn(path).map((form) => `${path} ${form}`), ...inText];
    });
    expect(found).toEqual([]);
  });

  it.each(Object.entries(ALLOWED))('%s still needs its exception', (path, form) => {
    expect(textOf(path)).toContain(form);
  });

  it.each([
    ['lessonNeighbours', 'Neighbour'],
    ['Practise the join.', 'Practis'],
    ['a sound that is synthesised', 'synthesise'],
    ['the two are levelled', 'levelled'],
    ['it is realised', 'realised'],
    ['a programme of music', 'programme'],
  ])('a slip in "%s" is found', (text, form) => {
    expect(britishIn(text)).toEqual([form]);
  });

  it.each(['an exercise, otherwise a promise', 'a programmer', 'aria-labelledby', 'the final issue', 'finalist'])(
    '"%s" may stand',
    (text) => {
      expect(britishIn(text)).toEqual([]);
    },
  );
});
