import { describe, expect, it } from 'vitest';
import { engrave } from '../../src/engraving/index.ts';
import { layoutsOf } from '../../src/engraving/layout/lines.ts';
import { fittedName, nameSize, nameWidth, wholeNames } from '../../src/engraving/layout/names.ts';
import { CASES } from './cases.ts';

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
  });

  it('puts no two bars on one line that are kept apart', () => {
    const bars = [bar(1, [1, 1, 1, 1]), bar(2, [1, 1, 1, 1])];
    expect(layoutsOf(bars, UNIT, true).map(({ kind }) => kind)).not.toContain('pairs');
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
  const named = (left: number, right: number, name: string) => ({ left, right, name, overhang: 14 });

  it('shortens a name, and leaves it out where four letters do not fit', () => {
    expect(fittedName('paradiddle', 200)).toBe('paradiddle');
    expect(fittedName('paradiddle', 50)).toBe('paradi…');
    expect(fittedName('six stroke roll', 60)).toBe('six stro…');
    expect(fittedName('paradiddle', 20)).toBe('');
  });

  it('takes narrow letters for narrow', () => {
    expect(nameWidth('ill', 13)).toBeLessThan(nameWidth('mow', 13) / 2);
  });

  it('are smaller, all of them, where that keeps one whole', () => {
    const room = nameWidth('paradiddle', 12) + 4 - 2 * 14;
    expect(nameSize([named(0, room, 'paradiddle')])).toBe(11.5);
    expect(nameSize([named(0, 2 * room, 'paradiddle')])).toBe(13);
    expect(nameSize([named(0, 30, 'paradiddle')])).toBe(13);
  });

  it('lets a short name stand out over its bracket where nothing is in its way', () => {
    expect(wholeNames([named(0, 24, 'kick'), named(28, 200, 'flam drag')])).toEqual(['kick', 'flam drag']);
    expect(wholeNames([named(0, 24, 'kick'), named(28, 48, 'kick')])).toEqual(['', '']);
  });
});
