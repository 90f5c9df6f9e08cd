import { describe, expect, it } from 'vitest';
import { chanceOf, splitMix64 } from '../../src/core/index.ts';
import { claimOf } from '../../src/words/proof.ts';

/**
 * SplitMix64: Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014. The numbers are those that
 * programmers compare implementations with (Rosetta Code, "Pseudo-random numbers/Splitmix64"; recalled).
 */
describe(`${claimOf('same-puzzle')} SplitMix64`, () => {
  it('gives the published numbers for the seed 1234567', () => {
    const next = splitMix64(1234567n);
    expect([next(), next(), next(), next(), next()]).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });

  it('spreads 100,000 numbers of the seed 987654321 over five as published', () => {
    const chance = chanceOf(987654321n);
    const counts = [0, 0, 0, 0, 0];
    for (let i = 0; i < 100_000; i += 1) counts[chance.below(5)] += 1;
    expect(counts).toEqual([20027, 19892, 20073, 19978, 20030]);
  });
});
