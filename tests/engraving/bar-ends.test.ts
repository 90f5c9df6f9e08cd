import { expect, it } from 'vitest';
import { perform, readPhrase } from '../../src/core/index.ts';
import { engrave } from '../../src/engraving/index.ts';
import { CASES, rudimentCases, type Case } from './cases.ts';
import { drawn, pictures, texts } from './read-svg.ts';

const ALL: [string, Case][] = [
  ...Object.entries(CASES).map(([name, make]): [string, Case] => [name, make()]),
  ...rudimentCases(),
];

/** Ticks at which a picture may end with a bar. */
const barEnds = ({ timeline: { bars, ticks } }: Case): number[] => [...bars.slice(1).map(({ tick }) => tick), ticks];

/** Where the ruler of a picture ends. */
const rulerEnd = (markup: string): number => Number(/<path class="rule" d="M[^H]*H([\d.]+)/.exec(markup)?.[1]);

it.each(ALL)('%s: a bar ends beyond its last count', (_, one) => {
  const { html } = drawn(one);
  const ends = barEnds(one);
  const last = pictures(html).filter(({ tick, ticks }) => ends.includes(tick + ticks));
  const counts = texts(html, 'count');
  for (const { tick, markup } of last)
    for (const { x } of counts.filter(({ picture }) => picture.tick === tick))
      expect(rulerEnd(markup) - x).toBeGreaterThan(8);
});

/** The class that says how wide a beat is, in tens of pixels. */
const unitOf = (text: string): number => {
  const read = readPhrase({ cells: [{ id: '', text }], meter: '4/4', grid: 4 });
  if (!read.ok) throw new Error(read.fault.message);
  return Number(/ unit-(\d+)/.exec(engrave(perform(read.phrase)).html)?.[1]);
};

it('is not stretched for a diddle before the bar line and a flam behind it', () => {
  const plain = unitOf('lR L R L R L R L R L R L R L R KK');
  expect(unitOf('{lR L R L R L R L R L R L R L R KK}2')).toBe(plain);
  expect(unitOf('{lR L R L R L R L R L R L R LL lR L}2')).toBeGreaterThan(plain);
});
