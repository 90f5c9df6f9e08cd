import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { softClipCurve, KNEE, INPUT_RANGE, softClip } from '../../src/audio/engine/soft-clip.ts';

describe('the soft clip', () => {
  it('lets everything up to the knee pass unchanged', () => {
    fc.assert(fc.property(fc.double({ min: -KNEE, max: KNEE, noNaN: true }), (sample) => softClip(sample) === sample));
  });

  it('never passes full scale, and louder is never softer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: INPUT_RANGE, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (sample, more) => {
          expect(softClip(sample)).toBeLessThanOrEqual(1);
          expect(softClip(sample + more)).toBeGreaterThanOrEqual(softClip(sample));
          expect(softClip(-sample)).toBe(-softClip(sample));
        },
      ),
    );
  });

  it('is a curve with silence in its middle and a straight line to the knee', () => {
    const curve = softClipCurve();
    const middle = (curve.length - 1) / 2;
    expect(curve[middle]).toBe(0);
    const steps = Math.floor((KNEE / INPUT_RANGE) * middle);
    for (let i = 1; i <= steps; i += 1) expect(curve[middle + i]).toBeCloseTo((i * INPUT_RANGE) / middle, 6);
  });
});
