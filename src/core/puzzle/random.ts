import { checkSeed, PUZZLE_VERSION } from './address.ts';

const MASK = (1n << 64n) - 1n;

/**
 * SplitMix64 (Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014): whole numbers of 64 bits
 * that depend on the seed alone, on any machine.
 * @example
 * splitMix64(1234567n)() // → 6457827717110365317n
 */
export function splitMix64(seed: bigint): () => bigint {
  let state = seed & MASK;
  return () => {
    state = (state + 0x9e3779b97f4a7c15n) & MASK;
    let z = state;
    z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK;
    z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & MASK;
    return z ^ (z >> 31n);
  };
}

/** Chance that comes out the same for the same seed. */
export interface Chance {
  /** From 0 to below 1. */
  unit(): number;
  /** A whole number from 0 to below n. */
  below(n: number): number;
  /** From one to the other, both included. */
  between(low: number, high: number): number;
  pick<T>(list: readonly T[]): T;
  /** A new list in another order. */
  shuffle<T>(list: readonly T[]): T[];
}

/** Chance from a seed. */
export function chanceOf(seed: bigint): Chance {
  const next = splitMix64(seed);
  const unit = (): number => Number(next() >> 11n) / 2 ** 53;
  const below = (n: number): number => Math.floor(unit() * n);
  return {
    unit,
    below,
    between: (low, high) => low + below(high - low + 1),
    pick: (list) => list[below(list.length)],
    shuffle: (list) => {
      const left = [...list];
      return list.map(() => left.splice(below(left.length), 1)[0]);
    },
  };
}

/**
 * The chance behind a puzzle: the same for the same kind and seed, and no other puzzle's. `number` is the kind's own. Throws
 * RangeError for what is no seed.
 */
export function puzzleChance(number: number, seed: number): Chance {
  checkSeed(seed);
  return chanceOf((BigInt(PUZZLE_VERSION) << 48n) + (BigInt(number) << 40n) + BigInt(seed));
}
