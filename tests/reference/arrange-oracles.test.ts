/**
 * Arrangements against two packages that know nothing of them: exact covers by dancing-links (after D. Knuth, Dancing
 * Links, 2000), and the permutations of js-combinatorics.
 */
import { Permutation } from 'js-combinatorics';
import { describe, expect, it } from 'vitest';
import { arrangements, type ArrangeCell } from '../../src/core/index.ts';
import { claimOf } from '../../src/words/proof.ts';
import { countExactCovers, exactCovers } from '../helpers/exact-cover.ts';
import { lehmer } from '../helpers/lehmer.ts';

/** A hundred and twenty sets of one to four cells, some of exact uses, the same each time. */
function cellSets(): { cells: ArrangeCell[]; slots: number }[] {
  const random = lehmer(20_160);
  const upTo = (n: number): number => Math.floor(random() * n);
  return Array.from({ length: 120 }, () => {
    const cells = Array.from({ length: 1 + upTo(4) }, (_, i): ArrangeCell => {
      const exact = upTo(4) === 0 ? { times: upTo(4) } : {};
      return { id: `cell ${i}`, slots: 1 + upTo(5), ...exact };
    });
    return { cells, slots: 3 + upTo(10) };
  });
}

const written = ({ id, slots, times }: ArrangeCell): string => `${id}: ${slots} slots, ${String(times ?? 'any')} uses`;

describe(`${claimOf('orders-listed')} Orders of cells and exact covers`, () => {
  it.each(cellSets())('are equally many: set $#', ({ cells, slots }) => {
    expect(arrangements({ cells, slots }).count, cells.map(written).join('; ')).toBe(countExactCovers(cells, slots));
  });

  it('are not none at all', () => {
    const counts = cellSets().map(({ cells, slots }) => arrangements({ cells, slots }).count);
    expect(counts.filter((n) => n > 1n).length).toBeGreaterThan(50);
    expect(counts.filter((n) => n === 0n).length).toBeGreaterThan(5);
  });

  it('are the same orders', () => {
    const cells = [1, 2, 3, 5].map((slots) => ({ id: `${slots}`, slots }));
    const inOrder = (cover: string[]): string => [...cover].sort().join();
    const covers = exactCovers(cells, 12).map(inOrder).sort();
    expect([...arrangements({ cells, slots: 12 })].map(inOrder).sort()).toEqual(covers);
  });
});

describe(`${claimOf('orders-listed')} Orders of a multiset and permutations`, () => {
  it.each([[[3, 2, 1]], [[2, 2, 2]], [[4, 2, 1, 1]], [[1, 1, 1, 1, 1]], [[5, 3]]])('of %j are the same', (uses) => {
    const cells = uses.map((times, i) => ({ id: `c${i}`, slots: 1 + (i % 3), times }));
    const slots = cells.reduce((sum, cell) => sum + cell.slots * cell.times, 0);
    const all = new Permutation(cells.flatMap(({ id, times }) => Array.from({ length: times }, () => id)));
    const distinct = new Set([...all].map((order) => order.join()));
    expect(new Set([...arrangements({ cells, slots })].map((order) => order.join()))).toEqual(distinct);
    expect(arrangements({ cells, slots }).count).toBe(BigInt(distinct.size));
  });
});
