import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { countSyllables, meterOf } from '../../src/core/index.ts';
import { expandedCss } from '../helpers/expanded-css.ts';
import { glyphSprite, lettersOf } from '../../src/engraving/index.ts';
import table from '../../src/engraving/glyphs/table.json' with { type: 'json' };
import { CASES, rudimentCases, type Case } from './cases.ts';
import { drawn, layoutsOf, pictures, placesOf, shownIn, strokeGroups, texts } from './read-svg.ts';

const ALL: [string, Case][] = [
  ...Object.entries(CASES).map(([name, make]): [string, Case] => [name, make()]),
  ...rudimentCases(),
];

const isOpened = (one: Case): boolean => one.timeline.strokes.some((stroke) => stroke.opened);

const complain = (...words: unknown[]): never => {
  throw new Error(`the engraver said: ${words.join(' ')}`);
};
beforeEach(() => {
  vi.spyOn(console, 'warn').mockImplementation(complain);
  vi.spyOn(console, 'error').mockImplementation(complain);
});
afterEach(() => vi.restoreAllMocks());

describe.each(ALL)('%s', (_, one) => {
  const { html, glyphs } = drawn(one);
  const { strokes, bars } = one.timeline;

  it('draws every stroke once, however lines are broken', () => {
    for (const columns of layoutsOf(html)) {
      const ids = strokeGroups(shownIn(html, columns)).map(({ id }) => id);
      expect(ids.sort()).toEqual(strokes.map((stroke) => stroke.id).sort());
    }
  });

  it('writes a letter under every stroke, hands on one line and feet on one', () => {
    const letters = texts(html, 'letter');
    if (one.options.letters === false) return expect(letters).toEqual([]);
    expect(new Map(letters.map(({ of, says }) => [of, says]))).toEqual(lettersOf(one.timeline));
    expect(letters).toHaveLength(strokes.length);
    const tops = new Map(bars.map(({ tick }) => [tick, new Set<string>()]));
    for (const { says, y, picture } of letters.filter(({ picture: { tick } }) => tick >= 0))
      tops.get(bars.findLast(({ tick }) => tick <= picture.tick)!.tick)!.add(`${'RL'.includes(says)} ${y}`);
    for (const rows of tops.values()) expect(rows.size).toBeLessThanOrEqual(2);
  });

  it('counts every slot as the timeline does', () => {
    if (one.options.counts === false) return expect(texts(html, 'count')).toEqual([]);
    const expected = bars.flatMap((bar) => countSyllables(bar.meter, bar.grid));
    const drawnCounts = texts(html, 'count').filter(({ of }) => Number(of) >= 0);
    expect(drawnCounts.map(({ says }) => says)).toEqual(expected);
  });

  it('gives every tick the same room, over all pictures', () => {
    const perTick = new Set(pictures(html).map(({ width, ticks }) => (width / ticks).toFixed(8)));
    expect(perTick.size).toBe(1);
    for (const { pad, width } of pictures(html))
      expect(pad * width).toBeCloseTo(pictures(html)[0].pad * pictures(html)[0].width, 1);
  });

  it('places heads in proportion to time, to a tenth of a pixel', () => {
    const ticks = new Map(strokes.map((stroke) => [stroke.id, stroke.tick]));
    for (const { id, markup, picture } of strokeGroups(html)) {
      const heads = placesOf(markup, 'E0A4');
      if (heads.length !== 1) continue;
      const share = picture.pad + (ticks.get(id)! - picture.tick) / picture.ticks;
      const middle = heads[0].x + table.E0A4.width / 2;
      const doubled =
        strokes.filter((s) => s.tick === ticks.get(id) && s.kind !== 'grace' && s.surface === 'snare').length > 1;
      if (!doubled) expect(Math.abs(middle - share * picture.width)).toBeLessThan(0.1);
    }
  });

  it('slashes a grace note exactly where it stands alone', () => {
    if (isOpened(one)) return;
    const byId = new Map(strokes.map((stroke) => [stroke.id, stroke]));
    for (const { id, markup } of strokeGroups(html)) {
      const { primary } = byId.get(id)!;
      const alone = primary !== undefined && byId.get(primary)!.graces.length === 1;
      expect(markup.includes('stroke-width="1"')).toBe(alone);
    }
  });

  it('refers to known glyphs alone, and to no place that is not a number', () => {
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
    const used = new Set([...html.matchAll(/href="#g([0-9A-F]+)"/g)].map(([, code]) => code));
    expect([...used].sort()).toEqual(glyphs);
    expect(glyphSprite(glyphs).match(/<path /g)).toHaveLength(glyphs.length);
  });

  it('has no style and no color of its own', () => {
    expect(html).not.toMatch(/ (style|fill|stroke|color)=/);
  });

  it('is the same every time', () => {
    expect(drawn(one).html).toBe(html);
  });

  it('uses only classes that the style sheet knows', async () => {
    const sheet = await expandedCss('src/styles/score-lists.css');
    const [, classes] = /^<div class="([^"]*)"/.exec(html)!;
    const spans = [...html.matchAll(/span-\d+/g)].map(([name]) => name);
    const sized = classes.split(' ').filter((name) => /-\d/.test(name));
    for (const name of [...sized, ...spans]) expect(sheet).toMatch(new RegExp(`\\.${name}\\b`));
  });

  it('has pictures that fill the bars', () => {
    const inBars = pictures(html).filter(({ tick }) => tick >= 0);
    expect(inBars.reduce((sum, { ticks }) => sum + ticks, 0)).toBe(one.timeline.ticks);
    expect(inBars[0].ticks % (meterOf(bars[0].meter).beatTicks / bars[0].grid)).toBe(0);
  });
});

it('weighs no more than 2 kB a bar, compressed, for the densest bar of the course', () => {
  const { html } = drawn(CASES.course71());
  expect(gzipSync(html, { level: 9 }).length).toBeLessThan(2048);
});

it('refuses a glyph that is not in the table', () => {
  expect(() => glyphSprite(['E000'])).toThrow(/E000 is not in the table/);
});
