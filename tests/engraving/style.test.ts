import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MAX_COLUMNS } from '../../src/engraving/layout/lines.ts';
import { SIZE } from '../../src/engraving/layout/sizes.ts';
import { MOST_TENS } from '../../src/engraving/layout/spacing.ts';
import { MOST_COLUMNS, MOST_UNIT, scoreLists } from '../../src/styles/score-lists.ts';

const sheet = readFileSync(new URL('../../src/styles/score.css', import.meta.url), 'utf8');

/** The font size that the style sheet gives a kind of text, in drawing pixels. */
const sizeOf = (type: string): number =>
  Number(new RegExp(`\\.score \\.${type.replace('.', '\\.')} \\{\\s*font-size: ([\\d.]+)px`).exec(sheet)?.[1]);

/** CSS pixels to a drawing pixel at the least: a column of `--unit` tens is never narrower than half a rem for each. */
const LEAST = 8 / 10;

describe('the style sheet and the drawing', () => {
  it.each([
    ['hand', SIZE.letter],
    ['grace', SIZE.graceLetter],
    ['count', SIZE.count],
    ['beat-count', SIZE.beat],
    ['name', SIZE.name],
    ['name.small', SIZE.smallName],
  ] as const)('agree on the size of %s', (type, size) => {
    expect(sizeOf(type)).toBe(size);
  });

  it('agree on how wide columns and lines may be', async () => {
    expect([MOST_COLUMNS, MOST_UNIT]).toEqual([MAX_COLUMNS, MOST_TENS]);
    await expect(scoreLists()).toMatchFileSnapshot('../../src/styles/score-lists.css');
  });

  it('keep letters at 12 pixels and grace letters at 9 on the narrowest screen', () => {
    expect(sheet).toContain('font-size: calc(var(--unit) * 0.5rem)');
    expect(sheet).toMatch(/--u: clamp\(\s*1em,/);
    expect(sizeOf('hand') * LEAST).toBeGreaterThanOrEqual(12);
    expect(sizeOf('name.small') * LEAST).toBeGreaterThanOrEqual(9);
    expect(sizeOf('grace') * LEAST).toBeGreaterThanOrEqual(9);
  });
});
