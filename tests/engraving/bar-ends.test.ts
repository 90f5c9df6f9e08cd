import { expect, it } from 'vitest';
import { perform, readPhrase, type Timeline } from '../../src/core/index.ts';
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

function timelineOf(text: string): Timeline {
  const read = readPhrase({ cells: [{ id: '', text }], meter: '4/4', grid: 4 });
  if (!read.ok) throw new Error(read.fault.message);
  return perform(read.phrase);
}

/** How far the ruler stands beyond each picture that ends a bar. */
const overs = (text: string): number[] => {
  const one: Case = { timeline: timelineOf(text), options: {} };
  const ends = barEnds(one);
  const last = pictures(drawn(one).html).filter(({ tick, ticks }) => ends.includes(tick + ticks));
  return last.map(({ markup, width }) => rulerEnd(markup) - width);
};

it('stands at one place on all lines, where one bar needs more room at its end than another', () => {
  const found = overs('{R L}8 {R L}7 RR KK {R L}8');
  expect(found[1]).toBeGreaterThan(0);
  expect(new Set(found).size).toBe(1);
});

it('draws no staff line twice, but where a line of the page ends under the last head', () => {
  const { html } = engrave(timelineOf('R L R LL {R L}6'));
  const [{ markup, width }] = pictures(html);
  const lines = [...markup.matchAll(/(<g data-at="1">)?<path class="staff" d="M([\d.]+) 0H([\d.]+)"/g)];
  expect(lines.map(([, at, from, to]) => [at !== undefined, Number(from), Number(to) > width])).toEqual([
    [false, 0, false],
    [true, width, true],
  ]);
});

/** The class that says how wide a beat is, in tens of pixels. */
const unitOf = (text: string): number => Number(/ unit-(\d+)/.exec(engrave(timelineOf(text)).html)?.[1]);

it('is not stretched for a diddle before the bar line and a flam behind it', () => {
  const plain = unitOf('lR L R L R L R L R L R L R L R KK');
  expect(unitOf('{lR L R L R L R L R L R L R L R KK}2')).toBe(plain);
  expect(unitOf('{lR L R L R L R L R L R L R LL lR L}2')).toBeGreaterThan(plain);
});

it('hangs a pickup before bar 1 with a gap between them, and is not stretched for it', () => {
  const bar = '{lR LL R}5 L';
  const pickup = readPhrase({ cells: [{ id: '', text: `KK ${bar}` }], meter: '4/4', grid: 4, pickup: 1 });
  if (!pickup.ok) throw new Error(pickup.fault.message);
  const { html } = engrave(perform(pickup.phrase));
  expect(Number(/ unit-(\d+)/.exec(html)?.[1])).toBeLessThan(unitOf(bar) + 2);
  expect(html).toMatch(/ gap-[12] .* hangs-5"/);
  expect(engrave(timelineOf('{R L}8')).html).not.toContain('gap-');
});
