/**
 * Counts from outside the project. Rows marked with an OEIS number were compared with the text of that sequence (A000930,
 * A182097, A017817, A013979, A007040, A047996) or are well known under it (A000045, A000073, A000078); the others were computed by
 * three methods that agree: by recurrence, by a sum over multisets, by listing.
 */
import { describe, expect, it } from 'vitest';
import { arrangements, loopArrangements } from '../../src/core/index.ts';
import { claimOf } from '../../src/words/proof.ts';
import { stickingOf } from '../helpers/phrases.ts';

const any = (lengths: number[]): { id: string; slots: number }[] =>
  lengths.map((slots) => ({ id: `of ${slots}`, slots }));

describe(`${claimOf('orders-counted')} Cells of given lengths, any number of each`, () => {
  it.each([
    [[1, 2], [34, 233, 1597, 75025, 3524578]], // A000045
    [[1, 2, 3], [81, 927, 10609, 1389537, 181997601]], // A000073
    [[1, 3], [13, 60, 277, 5896, 125491]], // A000930
    [[2, 3], [4, 12, 37, 351, 3329]], // A182097
    [[3, 4], [1, 2, 6, 37, 172]], // A017817
    [[2, 3, 4], [8, 36, 165, 3505, 74594]], // A013979
    [[1, 2, 3, 4], [108, 1490, 20569, 3919944, 747044834]], // A000078
    [[3, 5], [2, 1, 6, 21, 80]],
    [[3, 4, 5], [3, 8, 24, 224, 2121]],
  ])('of %j', (lengths, counts) => {
    const found = [8, 12, 16, 24, 32].map((slots) => arrangements({ cells: any(lengths), slots }).count);
    expect(found).toEqual(counts.map(BigInt));
  }); // prettier-ignore
});

describe(`${claimOf('orders-counted')} The largest bar that cannot be filled`, () => {
  it.each([
    [[3, 4], 5],
    [[3, 5], 7],
    [[5, 7], 23],
  ])('by %j is %i', (lengths, slots) => {
    expect(arrangements({ cells: any(lengths), slots }).count).toBe(0n);
    for (let more = slots + 1; more < slots + 40; more += 1)
      expect(arrangements({ cells: any(lengths), slots: more }).count).toBeGreaterThan(0n);
  });
});

describe(`${claimOf('orders-counted')} A fixed number of each`, () => {
  it.each([
    [[3, 2, 1], 60],
    [[2, 2, 2], 90],
    [[4, 4], 70],
    [[4, 2, 1, 1], 840],
    [[8, 8], 12870],
  ])('%j: %i', (uses, count) => {
    const cells = uses.map((times, i) => ({ id: `c${i}`, slots: 1, times }));
    expect(arrangements({ cells, slots: uses.reduce((a, b) => a + b) }).count).toBe(BigInt(count));
  });
});

describe(`${claimOf('runs')} R and L with no three in a row by one hand`, () => {
  const cells = ['R', 'L'].map((id) => ({ id, slots: 1, sticking: stickingOf(id) }));
  const count = (slots: number, loop: boolean): number =>
    Number(arrangements({ cells, slots, rules: { maxRun: 2, loop } }).count);

  it('that loop: 2, 6, 6, 10, 20, 28, 46 for 2 to 8 strokes (A007040)', () => {
    expect([2, 3, 4, 5, 6, 7, 8].map((n) => count(n, true))).toEqual([2, 6, 6, 10, 20, 28, 46]);
  });

  it('that are played once: twice a Fibonacci number', () => {
    expect([4, 8, 12, 16].map((n) => count(n, false))).toEqual([10, 68, 466, 3194]);
  });
});

describe(`${claimOf('runs')} A kick, three flam drags and two R L L`, () => {
  const cells = [
    { id: 'kick', slots: 1, times: 1, sticking: stickingOf('K') },
    { id: 'flam drag', slots: 3, times: 3, sticking: stickingOf('>lR LL R') },
    { id: 'R L L', slots: 3, times: 2, sticking: stickingOf('R L L') },
  ];
  const count = (rules = {}): bigint => arrangements({ cells, slots: 16, rules }).count;

  it('have sixty orders, six of which never ask one hand for three in a row, grace notes counted', () => {
    expect([count(), count({ maxRun: 2, graces: true })]).toEqual([60n, 6n]);
  });
});

describe(`${claimOf('necklaces')} Onsets and rests, a cell of one slot each`, () => {
  const count = (slots: number, onsets: number): number => {
    const cells = [
      { id: 'onset', slots: 1, times: onsets },
      { id: 'rest', slots: 1, times: slots - onsets },
    ];
    return Number(loopArrangements({ cells, slots }).count);
  };

  it('of eight slots, by number of onsets (A047996)', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7, 8].map((onsets) => count(8, onsets))).toEqual([1, 1, 4, 7, 10, 7, 4, 1, 1]);
  });

  it('of sixteen slots with five onsets: 273', () => expect(count(16, 5)).toBe(273));
});
