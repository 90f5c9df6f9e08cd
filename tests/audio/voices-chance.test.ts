import { describe, expect, test } from 'vitest';
import { hash, rng, xoshiro128 } from '../../src/audio/voices/index.ts';

describe('chance', () => {
  test('xoshiro128++ gives the values of its reference implementation', () => {
    // From the tests of the rand_xoshiro crate (read), which took them from xoshiro128plusplus.c of the authors.
    const expected = [641, 1573767, 3222811527, 3517856514, 836907274, 4247214768, 3867114732, 1355841295, 495546011];
    const next = xoshiro128([1, 2, 3, 4]);
    expect(expected.map(() => next())).toEqual(expected);
  });

  test('FNV-1a gives its published values', () => {
    // Test vectors of the FNV pages by L. C. Noll, as other implementations quote them (read).
    expect([hash(''), hash('a'), hash('abc'), hash('foobar')]).toEqual([
      0x811c9dc5, 0xe40c292c, 0x1a47e90b, 0xbf9cf968,
    ]);
  });

  test('a seed gives one sequence, another seed another', () => {
    const take = (seed: string) => Array.from({ length: 50 }, rng(seed));
    expect(take('snare 3')).toEqual(take('snare 3'));
    expect(take('snare 3').filter((value, i) => value === take('snare 4')[i])).toEqual([]);
  });

  test('values lie in [0, 1) and are spread evenly', () => {
    const random = rng('even');
    const counts = new Array<number>(10).fill(0);
    for (let i = 0; i < 100_000; i++) counts[Math.floor(random() * 10)] += 1;
    expect(counts).toHaveLength(10);
    // Five standard deviations of a fair count of 10,000 are 474.
    for (const count of counts) expect(Math.abs(count - 10_000)).toBeLessThan(474);
  });
});
