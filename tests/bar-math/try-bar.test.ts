import { expect, test } from 'vitest';
import { ON_PAGE } from '../../src/bar-math/limits.ts';
import { TooLarge, type Timeline } from '../../src/core/index.ts';
import { tryBar } from '../../src/bar-math/try-bar.ts';
import { barAttributes } from '../../src/curriculum/vocabulary.ts';

test('a sticking that fills its bar says so, and gives the line for a lesson', () => {
  const now = tryBar(' {>lR LL R}5 (L) ', '4/4', 4);
  expect(now).toMatchObject({
    ok: true,
    says: 'Fills one bar: 16 sixteenths.',
    source: '<Bar sticking="{>lR LL R}5 (L)" meter="4/4" grid={4} />',
  });
  expect(barAttributes.safeParse({ sticking: '{>lR LL R}5 (L)', meter: '4/4', grid: 4 }).success).toBe(true);
});

test('of many bars the first are drawn, and what is too long is not played', () => {
  const now = tryBar('{lR+K+H lR+K+H}1920', '15/4', 8);
  expect(now).toMatchObject({
    ok: true,
    bars: 32,
    says: 'Fills 32 bars: 3840 thirty-seconds.',
  });
  const { drawn, timeline } = now as { drawn: Timeline; timeline?: Timeline };
  expect(timeline).toBeUndefined();
  expect([drawn.bars.length, drawn.ticks, drawn.strokes.length]).toEqual([1, 15 * 20160, 480]);
  expect(() => tryBar('{lR}3840', '15/4', 8, ON_PAGE)).toThrow(TooLarge);
});

test('several bars are counted', () => {
  expect(tryBar('{R L R L}8', '4/4', 4).says).toBe('Fills 2 bars: 32 sixteenths.');
});

test('one that is short says where it stops', () => {
  expect(tryBar('{>lR LL R}5', '4/4', 4)).toEqual({
    ok: false,
    says: 'stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths',
  });
});

test('a letter that is none is shown in its place', () => {
  const now = tryBar('R L X L', '4/4', 1);
  expect(now.ok).toBe(false);
  expect((now as { place?: string }).place).toBe('  R L X L\n      ^');
});

test.each([
  ['', '4/4', 4],
  ['R', '', 4],
  ['R', 'x', 4],
  ['R', '4/4/4', 4],
  ['R', '99999/4', 4],
  ['R', '4/16', 7],
  ['{', '4/4', 4],
  ['[3/4:2] R L R L R L', '4/4', 4],
])('%j in %j with %i never throws, and says something', (text, meter, grid) => {
  const now = tryBar(text, meter, grid);
  expect(now.ok).toBe(false);
  expect(now.says).not.toBe('');
});
