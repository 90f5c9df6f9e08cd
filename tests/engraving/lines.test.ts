import { describe, expect, it } from 'vitest';
import { engrave } from '../../src/engraving/index.ts';
import { layoutsOf } from '../../src/engraving/layout/lines.ts';
import { costOf, inTwo, nameWidth, placeNames } from '../../src/engraving/layout/names.ts';
import { CASES, rudimentCases, type Case } from './cases.ts';
import { layoutsOf as layoutsIn, shownIn } from './read-svg.ts';

const wordsOf = (name: string): string[] => name.split(/[ -]/).filter(Boolean);

const UNIT = 10080;
const bar = (number: number, widths: number[]) => ({
  number,
  fragments: widths.map((width, index) => ({
    tick: 0,
    ticks: width * UNIT,
    bar: number,
    index,
    last: index === widths.length - 1,
  })),
});
const choices = (...bars: ReturnType<typeof bar>[]): string[] =>
  layoutsOf(bars, UNIT).map(({ kind, columns, starts }) => `${kind} ${columns}: ${[...starts].join(' ')}`);

describe('whole beats a line', () => {
  it('breaks four beats into one, two or four', () => {
    expect(choices(bar(1, [1, 1, 1, 1]))).toEqual(['least 1: 0 1 2 3', 'fits 2: 0 2', 'fits 4: 0']);
  });

  it('breaks five beats into three and two', () => {
    expect(choices(bar(1, [1, 1, 1, 1, 1]))).toContain('fits 3: 0 3');
  });

  it('breaks 2+2+3 between its groups', () => {
    expect(choices(bar(1, [2, 2, 3]))).toEqual(['least 3: 0 1 2', 'fits 4: 0 2', 'fits 7: 0']);
  });

  it('begins each bar on a line of its own, or two alike on one', () => {
    const four = [1, 1, 1, 1];
    expect(choices(bar(1, four), bar(2, four)).slice(2)).toEqual(['fits 4: 0 4', 'pairs 8: 0']);
    expect(choices(bar(1, four), bar(2, [1, 1, 1]))).not.toContain('pairs 8: 0');
    const kinds = (tens: number) => layoutsOf([bar(1, four), bar(2, four)], UNIT, tens).map(({ kind }) => kind);
    expect([kinds(10).includes('pairs'), kinds(12).includes('pairs')]).toEqual([true, false]);
  });

  it('hangs a pickup before bar 1', () => {
    expect(choices(bar(0, [1]), bar(1, [1, 1, 1, 1])).slice(-1)).toEqual(['hangs 5: 0']);
  });

  it('names each half of a bracket where a line breaks it, and the whole one where none does', () => {
    const { html } = engrave(CASES.course71().timeline, CASES.course71().options);
    expect(html).toMatch(/<text class="name" data-at="2 4" x="[^"]*" y="[^"]*">flam drag</);
    expect(html).toMatch(/<text class="name" data-at="1" x="[^"]*" y="[^"]*">flam drag</);
  });
});

describe('names over brackets', () => {
  const named = (left: number, right: number, name: string, must = true) => ({ left, right, name, must });
  /** The rows of each name, the upper one first. */
  const rows = (all: ReturnType<typeof named>[], width = 400): string[][] =>
    placeNames(all, [0, width]).map((own) =>
      own.toSorted((a, b) => b.row - a.row).map(({ text, row }) => `${row} ${text}`),
    );

  it('takes narrow letters for narrow', () => {
    expect(nameWidth('ill', 13)).toBeLessThan(nameWidth('mow', 13) / 2);
  });

  it('breaks a name between words, where its rows are most alike', () => {
    expect(inTwo('groove, kick early, none on 1', 13)).toEqual(['groove, kick', 'early, none on 1']);
    expect(inTwo('paradiddle-diddle', 13)).toEqual(['paradiddle-', 'diddle']);
    expect(inTwo('landing', 13)).toBeUndefined();
  });

  it('stand on their brackets, else out over the ends where nothing is in their way', () => {
    expect(rows([named(0, 24, 'kick'), named(28, 200, 'flam drag')])).toEqual([['0 kick'], ['0 flam drag']]);
  });

  it('take two rows, or are raised, where there is no room in one', () => {
    const drag = named(34, 120, 'flam drag');
    expect(rows([named(0, 30, 'doubled kick'), drag])[0]).toEqual(['1 doubled', '0 kick']);
    expect(rows([named(44, 120, 'paradiddle'), named(124, 150, 'landing')])[1]).toEqual(['1 landing']);
  });

  it('are left out where the part of a bracket is not the one to say them', () => {
    expect(rows([named(0, 30, 'doubled kick', false)])).toEqual([[]]);
    expect(rows([named(0, 30, 'paradiddle', false), named(34, 60, 'kick')])).toEqual([[], ['0 kick']]);
  });

  it('stand within their line', () => {
    const [[{ x }]] = placeNames([named(80, 98, 'kick')], [0, 100]);
    expect(x + nameWidth('kick', 13) / 2).toBeLessThanOrEqual(100);
    expect(rows([named(0, 98, 'a name that has no room in the line')], 100)).toEqual([[]]);
  });

  it('cost something where they are not in one row on their bracket', () => {
    const all = [named(0, 30, 'doubled kick'), named(34, 120, 'flam drag')];
    expect(costOf(all, placeNames(all, [0, 400]))).toBe(1);
  });

  const pieces: [string, Case][] = [
    ...Object.entries(CASES).map(([name, make]): [string, Case] => [name, make()]),
    ...rudimentCases(),
  ].filter(([name, { options }]) => name !== 'names' && options.names?.some((name) => name !== null));

  it.each(pieces)('%s: every cell is named whole in every layout', (_, { timeline, options }) => {
    const { html } = engrave(timeline, options);
    const said = (columns: string): string[] =>
      [...shownIn(html, columns).matchAll(/<text class="name[^>]*>([^<]*)</g)].flatMap(([, text]) => wordsOf(text));
    const all = options.names!.flatMap((name) => wordsOf(name ?? ''));
    const times = (words: string[], word: string): number => words.filter((one) => one === word).length;
    for (const columns of layoutsIn(html))
      for (const word of new Set(all)) expect(times(said(columns), word)).toBeGreaterThanOrEqual(times(all, word));
  });
});
