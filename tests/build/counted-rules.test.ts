import { expect, test } from 'vitest';
import { numbersIn } from '../../src/build/counted-rules.ts';
import { writtenOut } from '../helpers/expanded-css.ts';

const written = async (sheet: string): Promise<string> => (await writtenOut(sheet)).replace(/\s+/g, ' ').trim();

test('rules are written out once for each number, in order, where they stand', async () => {
  expect(
    await written('a { b: c } @for $n from 2 to 4 step 2 { .span-$n { grid-column-end: span $n; } } d { e: f }'),
  ).toBe('a { b: c } .span-2 { grid-column-end: span 2; } .span-4 { grid-column-end: span 4; } d { e: f }');
  expect(
    await written('@media print { @for $w in 50 75 { @container (width < $wpx) { .from-$w { top: 0 } } } }'),
  ).toMatch(/^@media print \{ ?@container \(width < 50px\) \{ ?\.from-50 .*@container \(width < 75px\) \{ ?\.from-75 /);
});

test.each(['$n', 'n from 1 to 2', '$n from 2 to 1', '$n in', '$n from 1 to 4 step 0'])(
  '@for %s is refused',
  async (what) => {
    await expect(written(`@for ${what} { a { b: c } }`)).rejects.toThrow(/can stand there/);
  },
);

test('numbers are counted from one to another, or listed', () => {
  expect(numbersIn('from 2 to 6 step 2')).toEqual([2, 4, 6]);
  expect(numbersIn('from 3 to 3')).toEqual([3]);
  expect(numbersIn('in 50 75 100')).toEqual([50, 75, 100]);
});
