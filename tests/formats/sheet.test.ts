import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LONGEST_TITLE, MOST, moved, printSheet, readSheet, type Sheet } from '../../src/formats/sheet.ts';
import { tempoBoxes } from '../../src/formats/sheet.ts';
import { unknownSays } from '../../src/words/sheet.ts';
import { runs } from '../helpers/arbitrary.ts';

const id = fc.stringMatching(/^[a-z][a-z0-9]{0,8}(-[a-z0-9]{1,8}){0,3}$/);
const sheet: fc.Arbitrary<Sheet> = fc.record({
  ids: fc.uniqueArray(id, { maxLength: MOST }),
  title: fc.string({ maxLength: LONGEST_TITLE }).map((title) => title.trim()),
  counts: fc.boolean(),
  paper: fc.constantFrom('a4' as const, 'letter' as const),
});
const everyId = () => true;

describe('a sheet in its address', () => {
  test('comes back as it was written', () => {
    fc.assert(
      fc.property(sheet, (made) => {
        expect(readSheet(printSheet(made), everyId)).toEqual({ sheet: made, unknown: [], beyond: 0 });
      }),
      runs(300),
    );
  });

  test('is readable', () => {
    const address = printSheet({ ids: ['flam-drag-slow', 'rll'], title: 'Week 3', counts: false, paper: 'letter' });
    expect(address).toBe('?x=flam-drag-slow,rll&title=Week+3&counts=off&paper=letter');
  });

  test('keeps what is known, once each, and tells what is not and what is too much', () => {
    const many = Array.from({ length: 33 }, (_, index) => `e${index}`);
    const read = readSheet(`?x=${['nope', 'e1', ...many].join(',')}&paper=A5&counts=maybe`, (one) => one !== 'nope');
    expect(read.sheet.ids).toHaveLength(MOST);
    expect(read.sheet).toMatchObject({ paper: 'a4', counts: true });
    expect(read).toMatchObject({ unknown: ['nope'], beyond: 3 });
  });

  test('never throws, whatever stands there', () => {
    fc.assert(
      fc.property(fc.string(), (search) => void readSheet(search, everyId)),
      runs(300),
    );
  });
});

describe('the order of a sheet', () => {
  test('changes by one place, and not beyond the ends', () => {
    expect(moved(['a', 'b', 'c'], 'c', -1)).toEqual(['a', 'c', 'b']);
    expect(moved(['a', 'b', 'c'], 'a', -1)).toEqual(['a', 'b', 'c']);
    expect(moved(['a', 'b', 'c'], 'a', 1)).toEqual(['b', 'a', 'c']);
    expect(moved(['a'], 'q', 1)).toEqual(['a']);
  });
});

describe('the tempos to fill in', () => {
  test('go from the first to the goal, upwards, in no more boxes than fit', () => {
    const tempos = fc.tuple(fc.integer({ min: 30, max: 300 }), fc.integer({ min: 30, max: 300 }));
    fc.assert(
      fc.property(tempos, fc.integer({ min: 2, max: 12 }), ([one, other], most) => {
        const [from, to] = [Math.min(one, other), Math.max(one, other)];
        const boxes = tempoBoxes({ from, to }, most);
        expect(boxes[0]).toBe(from);
        expect(boxes.at(-1)).toBe(to);
        expect(boxes.length).toBeLessThanOrEqual(most);
        expect(boxes).toEqual([...new Set(boxes)].sort((a, b) => a - b));
      }),
      runs(500),
    );
  });

  test('go in steps a teacher would write', () => {
    expect(tempoBoxes({ from: 50, to: 90 })).toEqual([50, 55, 60, 65, 70, 75, 80, 85, 90]);
    expect(tempoBoxes({ from: 60, to: 152 })).toEqual([60, 80, 100, 120, 140, 152]);
  });
});

test('many unknown exercises are told in one sentence', () => {
  expect(unknownSays(['a'])).toBe('There is no exercise “a”; it is left out.');
  expect(unknownSays(['a', 'b', 'c', 'd', 'e', 'f', 'g'])).toContain('“e” or 2 more; they are left out.');
});
