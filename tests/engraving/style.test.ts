import { expect, test } from 'vitest';
import { STEPS } from '../../src/bar-math/ruler.ts';
import { MAX_COLUMNS } from '../../src/engraving/layout/lines.ts';
import { MOST_TENS } from '../../src/engraving/layout/spacing.ts';
import { expandedCss } from '../helpers/expanded-css.ts';

/** The numbers of a family of classes in a style sheet, such as 2 to 16 for `.span-2` to `.span-16`. */
const numbersOf = (sheet: string, family: string): number[] => [
  ...new Set([...sheet.matchAll(new RegExp(`\\.${family}-(\\d+)`, 'g'))].map(([, number]) => Number(number))),
];

test('style sheet and drawing agree on how wide columns and lines may be', async () => {
  const sheet = await expandedCss('src/styles/score-lists.css');
  expect(Math.max(...numbersOf(sheet, 'span'))).toBe(MAX_COLUMNS);
  expect(numbersOf(sheet, 'least')).toHaveLength(MAX_COLUMNS);
  expect(Math.max(...numbersOf(sheet, 'unit'))).toBe(MOST_TENS);
});

test('the style of a ruler knows every width at which a name is shown', async () => {
  const sheet = await expandedCss('components/controls/bar-ruler.css');
  for (const family of ['from', 'until']) expect(numbersOf(sheet, family)).toEqual(STEPS);
});
