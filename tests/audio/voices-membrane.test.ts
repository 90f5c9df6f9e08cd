import { describe, expect, test } from 'vitest';
import { besselJ, MODES, ratioOf, strikeShare } from '../../src/audio/voices/membrane.ts';
import { claimOf } from '../../src/words/proof.ts';

describe(claimOf('drum-modes'), () => {
  test('the Bessel functions have their tabulated values', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.1 (recalled).
    expect(besselJ(0, 1)).toBeCloseTo(0.7651976866, 9);
    expect(besselJ(1, 1)).toBeCloseTo(0.4400505857, 9);
    expect(besselJ(2, 2)).toBeCloseTo(0.3528340286, 9);
    expect(besselJ(0, 10)).toBeCloseTo(-0.2459357645, 9);
  });

  test('every mode stands still at the edge', () => {
    for (const mode of MODES) expect(strikeShare(mode, 1)).toBeLessThan(1e-6);
  });

  test('modes come in the order of their ratios', () => {
    // Ideal circular membrane, zeros of the Bessel functions (computed apart, by a power series and bisection).
    const expected = [1, 1.593, 2.136, 2.295, 2.653, 2.917, 3.155, 3.5, 3.598, 3.647];
    MODES.forEach((mode, i) => expect(ratioOf(mode)).toBeCloseTo(expected[i], 2));
  });

  test('a stroke in the middle wakes only modes without diameters', () => {
    const woken = MODES.filter((mode) => strikeShare(mode, 0) > 0);
    expect(woken.map(({ diameters }) => diameters)).toEqual([0, 0, 0]);
  });
});
