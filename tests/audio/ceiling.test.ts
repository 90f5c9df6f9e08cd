import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingCurve, KNEE, REACH, soften } from '../../src/audio/stage/ceiling.ts';

describe('the ceiling', () => {
  it('lets everything up to the knee pass unchanged', () => {
    fc.assert(fc.property(fc.double({ min: -KNEE, max: KNEE, noNaN: true }), (sample) => soften(sample) === sample));
  });

  it('never passes full scale, and louder is never softer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: REACH, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (sample, more) => {
          expect(soften(sample)).toBeLessThanOrEqual(1);
          expect(soften(sample + more)).toBeGreaterThanOrEqual(soften(sample));
          expect(soften(-sample)).toBe(-soften(sample));
        },
      ),
    );
  });

  it('is a curve with silence in its middle and a straight line to the knee', () => {
    const curve = ceilingCurve();
    const middle = (curve.length - 1) / 2;
    expect(curve[middle]).toBe(0);
    const steps = Math.floor((KNEE / REACH) * middle);
    for (let i = 1; i <= steps; i += 1) expect(curve[middle + i]).toBeCloseTo((i * REACH) / middle, 6);
  });
});
