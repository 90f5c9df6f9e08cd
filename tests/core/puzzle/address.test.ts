import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dailyPuzzle,
  dayOf,
  LEVELS,
  levelOf,
  MAX_SEED,
  nextLevel,
  printPuzzleAddress,
  PUZZLE_KINDS,
  readPuzzleAddress,
  seedFor,
  type Outcome,
} from '../../../src/core/index.ts';

describe('the number in an address', () => {
  it('is read as it was written', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: MAX_SEED }), (seed) => {
        expect(readPuzzleAddress(printPuzzleAddress(seed))).toEqual({ ok: true, seed });
      }),
    ));

  it('never throws, and says what could stand there', () =>
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^\d{0,4}-?\d{0,14}$/)), (text) => {
        const read = readPuzzleAddress(text);
        if (read.ok) expect(printPuzzleAddress(read.seed)).toMatch(/^1-[1-9]/);
        else {
          expect(read.fault.at).toBeLessThanOrEqual(text.length);
          expect(read.fault.expected).not.toBe('');
        }
      }),
    ));

  it('tells a long one in a sentence of readable length', () => {
    const read = readPuzzleAddress('x'.repeat(5000));
    expect(read.ok ? '' : read.fault.message).toBe(
      `"${'x'.repeat(24)} …" is no number of a puzzle; one looks like 1-4182`,
    );
  });

  it.each(['', '4182', '1-', '1-0', '2-1', '1-x', '1-1000000000', '1--1'])('refuses "%s"', (text) =>
    expect(readPuzzleAddress(text).ok).toBe(false),
  );
});

describe('levels', () => {
  it('can all be had by chance', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...LEVELS),
        fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
        (level, unit) => {
          const seed = seedFor(level, () => unit);
          expect(levelOf(seed)).toBe(level);
          expect(readPuzzleAddress(printPuzzleAddress(seed)).ok).toBe(true);
        },
      ),
    ));

  const easy: Outcome = { right: true, misses: 0, hints: 0 };
  const hard: Outcome = { right: false, misses: 3, hints: 0 };

  it.each([
    [2, [easy, easy], 3],
    [2, [easy, hard], 2],
    [2, [hard, hard], 1],
    [1, [hard, hard], 1],
    [5, [easy, easy], 5],
    [3, [hard, easy, easy], 4],
    [3, [easy], 3],
    [3, [], 3],
    [3, [easy, { right: true, misses: 1, hints: 0 }], 3],
  ] as const)('%i after %j is %i', (level, last, next) => expect(nextLevel(level, last)).toBe(next));
});

function caught(run: () => unknown): unknown {
  try {
    run();
  } catch (thrown) {
    return thrown;
  }
  return undefined;
}

describe('the puzzle of a day', () => {
  it.each([
    { year: 2026, month: 13, day: 1 },
    { year: NaN, month: 1, day: 1 },
    { year: 2026, month: 1, day: 0 },
    { year: 2026, month: 2, day: 29 },
    { year: 2026, month: 2, day: 31 },
    { year: 2026, month: 4, day: 31 },
    { year: 1900, month: 2, day: 29 },
  ])('throws for what is no day: %j', (day) => expect(() => dailyPuzzle(day)).toThrow(RangeError));

  it('is there on every day of the calendar, and on no other', () => {
    for (let year = 1996; year <= 2104; year += 1)
      for (let month = 1; month <= 12; month += 1)
        for (let day = 1; day <= 31; day += 1) {
          const date = new Date(Date.UTC(year, month - 1, day));
          const real = date.getUTCMonth() === month - 1;
          const there = caught(() => dailyPuzzle({ year, month, day })) === undefined;
          if (there !== real) expect.fail(`${year}-${month}-${day} ${there ? 'has a puzzle' : 'has none'}`);
        }
  });

  it('has stayed what it was before kinds were added', () => {
    const days = [1, 40, 80, 120, 200, 300, 364].map((n) => dayOf(new Date(2026, 0, 1 + n)));
    expect(days.map((day) => dailyPuzzle(day).kind)).toEqual([
      'resolves',
      'start',
      'fix',
      'start',
      'which',
      'start',
      'ear',
    ]);
  });

  it('is one for every day, and another kind the next day of a month', () => {
    const week = [1, 2, 3, 4, 5, 6, 7].map((day) => dailyPuzzle({ year: 2026, month: 11, day }));
    expect(new Set(week.map(({ kind }) => kind)).size).toBe(PUZZLE_KINDS.length);
    expect(week.map(({ seed }) => seed)).toEqual([1, 2, 3, 4, 5, 6, 7].map((day) => 20261100 + day));
  });
});
