import { expect, test } from 'vitest';
import { MAX_COLUMNS } from '../../src/engraving/layout/lines.ts';
import { MOST_TENS } from '../../src/engraving/layout/spacing.ts';
import { MOST_COLUMNS, MOST_UNIT, scoreLists } from '../../src/styles/score-lists.ts';

test('style sheet and drawing agree on how wide columns and lines may be', async () => {
  expect([MOST_COLUMNS, MOST_UNIT]).toEqual([MAX_COLUMNS, MOST_TENS]);
  await expect(scoreLists()).toMatchFileSnapshot('../../src/styles/score-lists.css');
});
