import { describe, expect, it } from 'vitest';
import { beatsOf, hasBrackets, markAt, rowsOf, STEPS, type RulerDrawing } from '../../src/bar-math/ruler.ts';
import { marksOf } from '../../src/bar-math/marks.ts';
import { stickingOf } from '../helpers/phrases.ts';

const counts = '1 e & a 2 e & a 3 e & a 4 e & a'.split(' ');
const cell = (name: string, text: string) => ({
  name,
  slots: text.split(' ').length,
  marks: marksOf(stickingOf(text)),
});
const drags: RulerDrawing = {
  counts,
  grid: 4,
  cells: [
    ...Array.from({ length: 5 }, () => cell('flam drag', '>lR LL R')),
    { slots: 1, kind: 'left', name: '1 left, the a of 4', short: '1' },
  ],
};

describe('a bar as a ruler', () => {
  it('is drawn beat by beat, with every count once', () => {
    const beats = beatsOf(drags);
    expect(beats.map(({ slot, first, last }) => [slot, first, last])).toEqual([
      [0, true, false],
      [4, false, false],
      [8, false, false],
      [12, false, true],
    ]);
    expect(beats.flatMap((beat) => beat.counts.map(({ text }) => text))).toEqual(counts);
  });

  it('has every stroke over its slot, the second of a diddle between two', () => {
    const [first] = beatsOf(drags);
    expect(first.marks.map(({ letter, x }) => [letter, x])).toEqual([
      ['R', markAt(0, 4)],
      ['L', markAt(1, 4)],
      ['L', markAt(1.5, 4)],
      ['R', markAt(2, 4)],
      ['R', markAt(3, 4)],
    ]);
    expect(first.marks[0]).toMatchObject({ graces: 'L', accent: '>' });
  });

  it('cuts a bracket where a beat ends, and opens and closes it once', () => {
    const spans = beatsOf(drags).flatMap((beat) => beat.spans);
    expect(spans.filter(({ opens }) => opens)).toHaveLength(6);
    expect(spans.filter(({ closes }) => closes)).toHaveLength(6);
  });

  it('names each cell once, whether the bar is one line or broken', () => {
    const names = beatsOf(drags).flatMap(({ spans }) => spans.flatMap((span) => span.names));
    const shown = (when: string) => names.filter((name) => !name.when || name.when === when);
    for (const when of ['one-line', 'broken'])
      expect(shown(when).filter(({ text }) => text === 'flam drag')).toHaveLength(5);
    expect(names.every(({ from, until }) => STEPS.includes(from) && (!until || STEPS.includes(until)))).toBe(true);
  });

  it('leaves out what lies beyond its bars', () => {
    const beats = beatsOf({ counts, grid: 4, cells: [{ slots: 40, name: 'long' }] });
    expect(beats).toHaveLength(4);
    expect(beats.at(-1)!.spans[0]).toMatchObject({ closes: false, x2: '100%' });
  });

  it('keeps rows apart: hands that sound together, and feet below them', () => {
    const marks = (text: string, apart = false) => [
      { slots: 1, kind: 'bare' as const, marks: marksOf(stickingOf(text), apart) },
    ];
    expect(rowsOf({ counts, grid: 4, cells: marks('R+L') })).toBe(2);
    expect(rowsOf({ counts, grid: 4, cells: marks('L', true) })).toBe(2);
    expect(rowsOf({ counts, grid: 4, cells: marks('R L\nfeet: K -') })).toBe(2);
    expect(hasBrackets({ counts, grid: 4, cells: marks('R') })).toBe(false);
  });
});
