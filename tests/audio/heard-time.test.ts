import { describe, expect, it } from 'vitest';
import { heardTime, type Clock } from '../../src/audio/engine/heard-time.ts';

const clock = (contextTime?: number, performanceTime?: number, rest: Partial<Clock> = {}): Clock => ({
  currentTime: 10,
  baseLatency: 0.01,
  outputLatency: 0.04,
  getOutputTimestamp: () => ({ contextTime, performanceTime }),
  ...rest,
});

describe('what is heard now', () => {
  it('goes by the output timestamp, moved on by the time since', () => {
    expect(heardTime(clock(9.9, 5000), 5020)).toBeCloseTo(9.92, 9);
  });

  it('takes no delay off a timestamp, which has it in itself', () => {
    expect(heardTime(clock(9.9, 5000, { outputLatency: 0.3 }), 5000)).toBe(9.9);
  });

  it('takes the delay off the time of the context where there is no timestamp', () => {
    expect(heardTime(clock(undefined, undefined, { getOutputTimestamp: undefined }), 5000)).toBeCloseTo(9.96, 9);
    expect(heardTime(clock(0, 0), 5000), 'before the first sound').toBeCloseTo(9.96, 9);
  });

  it('does with what Safari has: no output latency', () => {
    const bare = clock(undefined, undefined, { getOutputTimestamp: undefined, outputLatency: undefined });
    expect(heardTime(bare, 5000)).toBeCloseTo(9.99, 9);
  });

  it('believes no timestamp from the future or from long ago', () => {
    expect(heardTime(clock(9.9, 5000), 9000), 'the context stood still').toBeCloseTo(9.96, 9);
    expect(heardTime(clock(3, 5000), 5000)).toBeCloseTo(9.96, 9);
  });
});
