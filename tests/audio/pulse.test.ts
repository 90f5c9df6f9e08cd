import { describe, expect, it } from 'vitest';
import { PATIENCE, pulseOf } from '../../src/audio/pulse.ts';

describe('the pulse of a context', () => {
  it('is there while its time moves', () => {
    const context = { currentTime: 0, state: 'running' as const };
    const feel = pulseOf(context, 0);
    for (let now = 500; now < 3 * PATIENCE; now += 500) {
      context.currentTime += 0.5;
      expect(feel(now, true)).toBeUndefined();
    }
  });

  it('is lost after two seconds without a device', () => {
    const feel = pulseOf({ currentTime: 0, state: 'running' }, 0);
    expect(feel(PATIENCE - 1, true)).toBeUndefined();
    expect(feel(PATIENCE, true)).toBe('no-device');
  });

  it('is not there yet where the visitor has touched nothing', () => {
    expect(pulseOf({ currentTime: 0, state: 'suspended' }, 0)(PATIENCE, false)).toBe('suspended');
    expect(pulseOf({ currentTime: 0, state: 'suspended' }, 0)(PATIENCE, true)).toBe('no-device');
  });

  it('comes back', () => {
    const context = { currentTime: 1, state: 'running' as const };
    const feel = pulseOf(context, 0);
    expect(feel(PATIENCE, true)).toBe('no-device');
    context.currentTime = 2;
    expect(feel(PATIENCE + 500, true)).toBeUndefined();
  });
});
