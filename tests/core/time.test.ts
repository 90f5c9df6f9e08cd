import { describe, expect, it } from 'vitest';
import {
  countName,
  countNames,
  countSyllables,
  COUNT_SYSTEMS,
  meterOf,
  quartersPerMinute,
  readMeter,
  resolution,
  sayCount,
  saySlot,
  slotNames,
  slotsOf,
  slotTicks,
} from '../../src/core/index.ts';
import { claimOf } from '../../src/words/proof.ts';

const GRIDS = [1, 2, 3, 4, 5, 6, 7, 8];

describe('meters', () => {
  it.each([
    ['4/4', 4, 20160, [4]],
    ['6/8', 2, 30240, [3, 3]],
    ['9/8', 3, 30240, [3, 3, 3]],
    ['12/8', 4, 30240, [3, 3, 3, 3]],
    ['3/8', 3, 10080, [3]],
    ['15/16', 15, 5040, [15]],
    ['2+2+3/8', 7, 10080, [2, 2, 3]],
    ['3+3/8', 6, 10080, [3, 3]],
    ['3/2', 3, 40320, [3]],
  ])('%s has %i beats of %i ticks', (text, beats, beatTicks, groups) => {
    expect(meterOf(text)).toMatchObject({ beats, beatTicks, groups, barTicks: beats * beatTicks });
  });

  it.each(['', '4', '4/', '/4', '0/4', '16/4', '4/3', '4/32', '8+8/4', '2+/8', ' 4/4', '04/4', '1e1/4', '4/04'])(
    'refuses %j',
    (text) => expect(readMeter(text).ok).toBe(false),
  );

  it('counts its tempo in dotted quarters where it is compound', () => {
    expect([quartersPerMinute('6/8', 60), quartersPerMinute('7/8', 60), quartersPerMinute('4/4', 60)]).toEqual([
      90, 60, 60,
    ]);
  });

  it('has whole ticks for every grid', () => {
    for (const lower of [2, 4, 8, 16])
      for (let upper = 1; upper <= 15; upper += 1)
        for (const grid of GRIDS) {
          const meter = `${upper}/${lower}`;
          expect(Number.isInteger(slotTicks(meter, grid))).toBe(true);
          expect(slotsOf(meter, grid) * slotTicks(meter, grid)).toBe(meterOf(meter).barTicks);
        }
  });

  it('throws for a grid that does not exist', () => {
    for (const grid of [0, 9, 2.5, NaN]) expect(() => slotsOf('4/4', grid)).toThrow(RangeError);
  });
});

describe(claimOf('counting'), () => {
  it.each([
    ['4/4', 1, '1 2 3 4'],
    ['2/4', 2, '1 & 2 &'],
    ['2/4', 3, '1 trip let 2 trip let'],
    ['2/4', 4, '1 e & a 2 e & a'],
    ['6/8', 3, '1 trip let 2 trip let'],
  ])('%s in %i: %s', (meter, grid, said) => expect(countSyllables(meter, grid).join(' ')).toBe(said));

  it('goes by eighths in 6/8 where that is wanted', () => {
    expect(countSyllables('6/8', 3, '1 2 3 4 5 6').join(' ')).toBe('1 2 3 4 5 6');
    expect(countNames('6/8', 6, '1 2 3 4 5 6').slice(0, 4)).toEqual(['1', '1 &', '2', '2 &']);
    expect(countSyllables('4/4', 2, '1 2 3 4 5 6')).toEqual(countSyllables('4/4', 2));
  });

  it('says one syllable a slot, a number on each beat, in every system', () => {
    for (const system of COUNT_SYSTEMS)
      for (const grid of GRIDS) {
        const syllables = countSyllables('3/4', grid, system);
        expect(syllables).toHaveLength(3 * grid);
        expect([0, 1, 2].map((beat) => syllables[beat * grid])).toEqual(['1', '2', '3']);
        expect(syllables.every((s) => /^(\d+|&|[a-z]+)$/.test(s))).toBe(true);
      }
  });

  it('names each slot of a bar once, in every system', () => {
    for (const system of COUNT_SYSTEMS)
      for (const grid of GRIDS) expect(new Set(countNames('4/4', grid, system)).size).toBe(4 * grid);
  });

  it('has names that are found once, and are nobody else’s to change', () => {
    const names = countNames('4/4', 4);
    names[0] = 'spoiled';
    expect(countNames('4/4', 4)[0]).toBe('1');
    for (const grid of ['4', NaN, 9]) expect(() => countName('4/4', grid as number, 0)).toThrow(RangeError);
  });

  it('throws for a system that does not exist', () => {
    expect(() => countNames('4/4', 4, null as unknown as undefined)).toThrow('system is null; one of "1 e & a"');
    expect(() => countSyllables('4/4', 4, 'do re mi' as (typeof COUNT_SYSTEMS)[number])).toThrow(RangeError);
  });

  it('is said as a teacher says it', () => expect([sayCount('2 &'), sayCount('3')]).toEqual(['the & of 2', 'beat 3']));

  it('tells syllables of a beat that are alike apart', () => {
    expect(saySlot('4/4', 4, 7, '1 ta te ta')).toBe('the second ta of 2');
    expect(saySlot('4/4', 6, 9, '1 ta te ta')).toBe('the second ta of 2');
    expect(saySlot('4/4', 3, 5, '1 ta te ta')).toBe('the li of 2');
  });

  it.each([
    ['4/4', 4, 'sixteenths'],
    ['4/4', 3, 'triplets'],
    ['6/8', 3, 'eighths'],
    ['6/8', 6, 'sixteenths'],
    ['7/8', 2, 'sixteenths'],
    ['3/2', 1, 'halves'],
    ['4/4', 8, 'thirty-seconds'],
  ])('the slots of %s in %i are %s', (meter, grid, many) => expect(slotNames(meter, grid).many).toBe(many));
});

describe('resolution', () => {
  it('throws for what is no number of slots', () => {
    for (const bad of [0, -3, 1.5, NaN]) {
      expect(() => resolution(bad, 16)).toThrow(RangeError);
      expect(() => resolution(3, bad)).toThrow(RangeError);
    }
  });
});
