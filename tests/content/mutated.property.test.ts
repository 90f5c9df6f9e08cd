import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkContent } from '../../src/build/check-content.ts';
import { runs } from '../helpers/arbitrary.ts';
import { GOOD, planted, type Tree } from './plant.ts';

/** What people and programs leave in files. */
const SCRAPS = [
  '{',
  '}',
  '<',
  '>',
  '/>',
  '"',
  "'",
  ':',
  '- ',
  '&a',
  '*a',
  '|',
  '---\n',
  '\t',
  '\r',
  '\n',
  '\0',
  '[',
  '@',
  '`',
  '![](',
  '<Bar',
  '{>lR}9',
  '\u{1f941}',
  '\ud800',
  '<<: ',
];

const scrap = fc.oneof(
  fc.constantFrom(...SCRAPS),
  fc.string({ maxLength: 8 }),
  fc.string({ unit: 'binary', maxLength: 8 }),
);
const edit = fc.record({ at: fc.nat({ max: 2000 }), out: fc.nat({ max: 20 }), put: scrap });
type Edit = { at: number; out: number; put: string };

/** A text with some of it cut out and something else put there. */
const edited = (text: string, edits: readonly Edit[]): string =>
  edits.reduce((now, { at, out, put }) => {
    const from = at % (now.length + 1);
    return now.slice(0, from) + put + now.slice(from + out);
  }, text);

const paths = Object.keys(GOOD);
const mutated = fc
  .array(fc.tuple(fc.constantFrom(...paths), fc.array(edit, { minLength: 1, maxLength: 4 })), {
    minLength: 1,
    maxLength: 3,
  })
  .map((changes) => Object.fromEntries(changes.map(([path, edits]) => [path, edited(GOOD[path] as string, edits)])));

const bytes = fc
  .tuple(fc.constantFrom(...paths), fc.uint8Array({ maxLength: 60 }))
  .map(([path, content]) => ({ [path]: content }) as Tree);

test('whatever stands in the files, there are faults with places or none, never an exception', () => {
  fc.assert(
    fc.property(fc.oneof({ arbitrary: mutated, weight: 3 }, { arbitrary: bytes, weight: 1 }), (changes) => {
      for (const { file, line, column, message } of planted({ ...GOOD, ...changes }, checkContent)) {
        expect(file).toMatch(/^content\//);
        expect([line, column].every((one) => Number.isInteger(one) && one >= 1)).toBe(true);
        expect(message).not.toBe('');
      }
    }),
    runs(120),
  );
});
