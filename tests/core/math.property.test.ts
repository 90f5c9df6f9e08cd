import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  against,
  againstText,
  cellStarts,
  COUNT_SYSTEMS,
  countNames,
  evenBars,
  fit,
  gapsBetween,
  gcd,
  handSpeed,
  parseSticking,
  quartersPerMinute,
  resolution,
  sameSpeed,
  saySlot,
  slotMs,
  slotOfCount,
  slotOfTick,
  slotsOf,
  slotTicks,
  spread,
  turned,
  turnsOf,
  type HandWay,
} from '../../src/core/index.ts';

const slots = fc.integer({ min: 1, max: 64 });
const few = fc.integer({ min: 1, max: 16 });
const grids = fc.integer({ min: 1, max: 8 });
const meters = fc.constantFrom('4/4', '3/4', '5/4', '6/8', '12/8', '2+2+3/8', '7/16', '2/2');
const accented = slots.chain((n) => fc.tuple(fc.integer({ min: 1, max: n }), fc.constant(n)));

describe('fit', () => {
  it('leaves less than a cell, and with what is left makes the whole', () => {
    fc.assert(
      fc.property(slots, fc.integer({ min: 0, max: 512 }), (cell, all) => {
        const { times, left, from } = fit(cell, all);
        expect(left).toBeLessThan(cell);
        expect([times * cell + left, from + left]).toEqual([all, all]);
      }),
    );
  });

  it.each([
    [0, 16],
    [-3, 16],
    [1.5, 16],
    [3, -1],
    [NaN, 16],
  ])('refuses a cell of %d in %d', (cell, all) => expect(() => fit(cell, all)).toThrow(RangeError));
});

describe('starts of a cell', () => {
  it('are as many as it takes to come home, all different, the first on beat 1', () => {
    fc.assert(
      fc.property(few, slots, (cell, bar) => {
        const starts = cellStarts(cell, bar);
        const { bars, cells } = resolution(cell, bar);
        const places = starts.map((start) => (start.bar - 1) * bar + start.slot);
        expect(starts[0]).toEqual({ bar: 1, slot: 0 });
        expect([starts.length, new Set(starts.map(({ slot }) => slot)).size]).toEqual([cells, cells]);
        expect(places.at(-1)! + cell).toBe(bars * bar);
      }),
    );
  });
});

describe('an even spread', () => {
  it('has so many accents, the first on the first slot, and gaps that differ by at most one', () => {
    fc.assert(
      fc.property(accented, ([accents, n]) => {
        const onsets = spread(accents, n);
        const gaps = gapsBetween(onsets, n);
        expect([onsets.length, new Set(onsets).size, onsets[0]]).toEqual([accents, accents, 0]);
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
        expect(gaps.reduce((a, b) => a + b)).toBe(n);
      }),
    );
  });

  it('has as many different turns as it says, and then begins again', () => {
    fc.assert(
      fc.property(accented, ([accents, n]) => {
        const onsets = spread(accents, n);
        const turns = turnsOf(accents, n);
        const all = Array.from({ length: turns }, (_, by) => turned(onsets, n, by).join());
        expect(new Set(all).size).toBe(turns);
        expect(turned(onsets, n, turns).join()).toBe(all[0]);
      }),
    );
  });

  it.each([
    [0, 8],
    [9, 8],
    [2.5, 8],
    [3, 0],
  ])('refuses %d accents in %d slots', (accents, n) => expect(() => spread(accents, n)).toThrow(RangeError));
});

describe('two against each other', () => {
  it('have a + b − gcd onsets, each row even, on the coarsest grid', () => {
    fc.assert(
      fc.property(few, few, (a, b) => {
        const { slots: all, first, second, onsets } = against(a, b);
        expect(onsets.length).toBe(a + b - gcd(a, b));
        expect([first.length, second.length]).toEqual([a, b]);
        expect(new Set([...gapsBetween(first, all), ...gapsBetween(second, all)]).size).toBeLessThanOrEqual(2);
        expect([...first, ...second].every(Number.isInteger)).toBe(true);
      }),
    );
  });

  it('are one line that the parser reads, with as many strokes by each hand', () => {
    fc.assert(
      fc.property(few, few, (a, b) => {
        const text = againstText(a, b);
        expect([text.match(/R/g)!.length, text.match(/L/g)!.length]).toEqual([a, b]);
        if (text.split(' ').length <= 128) expect(parseSticking(text).ok).toBe(true);
      }),
    );
  });
});

describe('bars of equal beats', () => {
  it('hold exactly the slots asked for', () => {
    fc.assert(
      fc.property(slots, (n) => {
        for (const { meter, grid } of evenBars(n)) expect(slotsOf(meter, grid)).toBe(n);
        const prime = Array.from({ length: n }, (_, i) => i).every((i) => i < 2 || n % i !== 0);
        if (n > 15 && prime) expect(evenBars(n)).toEqual([]);
      }),
    );
  });
});

describe('speed', () => {
  it('is the same on another grid at the tempo that says so', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 400 }), grids, grids, (tempo, grid, other) => {
        expect(slotMs('4/4', other, sameSpeed(tempo, grid, other))).toBeCloseTo(slotMs('4/4', grid, tempo), 9);
      }),
    );
  });

  it('is that of ticks and seconds', () => {
    fc.assert(
      fc.property(meters, grids, fc.integer({ min: 20, max: 400 }), (meter, grid, tempo) => {
        const compound = /^(6|9|12)\/8$/.test(meter);
        const quarters = slotTicks(meter, grid) / 20160;
        expect(slotMs(meter, grid, tempo)).toBeCloseTo((quarters * 60_000) / (compound ? tempo * 1.5 : tempo), 9);
      }),
    );
  });

  it.each([0, -60, NaN, Infinity])('refuses a tempo of %d', (tempo) => {
    expect(() => slotMs('4/4', 4, tempo)).toThrow(RangeError);
    expect(() => quartersPerMinute('4/4', tempo)).toThrow(RangeError);
  });

  it('refuses a way to play that does not exist', () =>
    expect(() => handSpeed('toes' as HandWay, 125)).toThrow('way is "toes"; one of singles'));
});

describe('what would never end', () => {
  it.each([
    ['two rows', () => against(1e9, 1e9 - 1)],
    ['a spread', () => spread(1e9, 1e9)],
    ['the starts of a cell', () => cellStarts(1, 1e9)],
    ['bars of no number', () => evenBars(NaN)],
  ])('is refused at once: %s', (_, asked) => expect(asked).toThrow(/; a whole number from 1/));
});

describe('counts as they are typed', () => {
  it('come back as the slot they name, however they are said', () => {
    fc.assert(
      fc.property(meters, grids, fc.nat(200), fc.constantFrom(...COUNT_SYSTEMS), (meter, grid, any, system) => {
        const slot = any % slotsOf(meter, grid);
        const name = countNames(meter, grid, system)[slot];
        for (const typed of [
          name,
          name.replace(' ', ''),
          saySlot(meter, grid, slot, system),
          ` ${name.toUpperCase()} `,
        ])
          expect(slotOfCount(meter, grid, typed, system)).toEqual({ ok: true, slot });
        expect(slotOfTick(meter, grid, slot * slotTicks(meter, grid))).toEqual({ slot, after: 0 });
      }),
    );
  });

  it('never throw, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = slotOfCount('4/4', 4, text);
        if (!read.ok) expect(read.fault.message).not.toMatch(/NaN|undefined/);
      }),
    );
  });
});
