import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { neighbors, practicePath, swapChain, swapDistance } from '../../src/core/index.ts';
import { runs } from '../helpers/arbitrary.ts';

const order = fc.array(fc.constantFrom('a', 'b', 'c'), { maxLength: 6 });
const shuffled = (of: string[]): fc.Arbitrary<string[]> =>
  fc.shuffledSubarray([...of.keys()], { minLength: of.length }).map((places) => places.map((i) => of[i]));
const pair = order.chain((from) => fc.tuple(fc.constant(from), shuffled(from)));

/** Distances by looking in all directions at once, one swap after another. */
function byBreadth(from: string[], to: string[]): number {
  let layer = [from];
  const seen = new Set([from.join()]);
  for (let steps = 0; ; steps += 1) {
    if (layer.some((one) => one.join() === to.join())) return steps;
    layer = layer.flatMap((one) => neighbors(one)).filter((one) => !seen.has(one.join()) && seen.add(one.join()));
  }
}

describe('neighbors', () => {
  it('are all different, and one swap away', () => {
    fc.assert(
      fc.property(order, (from) => {
        const near = neighbors(from);
        expect(new Set([from, ...near].map((one) => one.join())).size).toBe(near.length + 1);
        for (const one of near) expect(swapDistance(from, one)).toBe(1);
      }),
      runs(200),
    );
  });
});

describe('a chain of swaps', () => {
  it('is as short as a search in all directions finds, each step one swap', () => {
    fc.assert(
      fc.property(pair, ([from, to]) => {
        const chain = swapChain(from, to);
        expect([chain[0], chain.at(-1)]).toEqual([from, to]);
        expect(chain.length - 1).toBe(byBreadth(from, to));
        expect(swapDistance(from, to)).toBe(chain.length - 1);
        chain.slice(1).forEach((next, i) => expect(neighbors(chain[i])).toContainEqual(next));
      }),
      runs(200),
    );
  });

  it.each([
    [['a'], ['b']],
    [['a'], ['a', 'a']],
    [
      ['a', 'a', 'b'],
      ['a', 'b', 'b'],
    ],
  ])('does not lead from %j to %j', (from, to) => {
    expect(() => swapChain(from, to)).toThrow(RangeError);
    expect(() => swapDistance(from, to)).toThrow('the same cells, equally often');
  });
});

describe('a practice path', () => {
  const lengthOf = (path: string[][]): number =>
    path.slice(1).reduce((sum, to, i) => sum + swapDistance(path[i], to), 0);
  const chosen = order.chain((one) => fc.array(shuffled(one), { maxLength: 8 }));

  it('goes through every chosen order once, from the first, and is never longer than the way given', () => {
    fc.assert(
      fc.property(chosen, (orders) => {
        const path = practicePath(orders);
        const sorted = (all: string[][]): string[] => all.map((one) => one.join()).sort();
        expect(sorted(path)).toEqual(sorted(orders));
        expect(path[0]).toEqual(orders[0]);
        expect(lengthOf(path)).toBeLessThanOrEqual(lengthOf(orders));
        expect(practicePath(orders)).toEqual(path);
      }),
      runs(200),
    );
  });

  it('takes smaller steps through all orders of four cells than the order of the alphabet does', () => {
    const all = [...permutations(['a', 'b', 'c', 'd'])];
    expect(lengthOf(all)).toBe(40);
    expect(lengthOf(practicePath(all))).toBeLessThan(30);
  });

  it('refuses orders of different cells, and too many', () => {
    const long = Array.from({ length: 257 }, (_, i) => `c${i}`);
    expect(() => swapChain(long, [...long].reverse())).toThrow('cells of an order is 257');
    expect(() => practicePath([['a'], ['b']])).toThrow(RangeError);
    expect(() => practicePath(Array.from({ length: 501 }, () => ['a']))).toThrow(
      'number of orders is 501; a whole number from 0 to 500',
    );
  });
});

function* permutations(of: string[]): Generator<string[]> {
  if (of.length === 0) yield [];
  for (const [i, first] of of.entries())
    for (const rest of permutations([...of.slice(0, i), ...of.slice(i + 1)])) yield [first, ...rest];
}
