import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { schedule, secondsAt } from '../../src/core/index.ts';
import { runs } from '../helpers/arbitrary.ts';
import { timelineOf } from '../helpers/phrases.ts';

const bar = timelineOf('{>lR LL R}4', { meter: '4/4', grid: 3 });
const at = (timeline = bar, options: Parameters<typeof schedule>[1]): Record<string, number> =>
  Object.fromEntries(schedule(timeline, options).map((s) => [s.id, s.seconds]));

describe('schedule', () => {
  it('is exact: a tick is 60 / (bpm × 20160) seconds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 300 }), (bpm) => {
        const seconds = at(bar, { bpm });
        for (const s of bar.strokes.filter((x) => x.kind !== 'grace'))
          expect(seconds[s.id]).toBeCloseTo((s.tick * 60) / (bpm * 20160), 12);
      }),
      runs(100),
    );
  });

  it('puts grace notes a flam width before, the first one before zero', () => {
    const seconds = at(bar, { bpm: 60, flamMs: 40 });
    expect(seconds['1.0.0g0']).toBeCloseTo(-0.04, 12);
    expect(seconds['1.3.0'] - seconds['1.3.0g0']).toBeCloseTo(0.04, 12);
  });

  it('never opens a flam beyond half the gap to the stroke before', () => {
    const seconds = at(bar, { bpm: 300, flamMs: 80, loop: true });
    const gap = 60 / 300 / 3;
    expect(seconds['1.3.0'] - seconds['1.3.0g0']).toBeCloseTo(gap / 2, 12);
    expect(seconds['1.0.0'] - seconds['1.0.0g0']).toBeCloseTo(gap / 2, 12);
  });

  it('leaves a pickup that begins with a flam its grace note in front, also where the phrase goes round', () => {
    const early = timelineOf('lR R L R L', { meter: '4/4', grid: 1, pickup: 1 });
    expect(at(early, { bpm: 60, loop: true })['0.3.0g0']).toBeCloseTo(-1.03, 12);
  });

  it('leaves a flam on beat 1 within half the gap to the last stroke of the round before, past a pickup', () => {
    const early = timelineOf('R lR L R LLLL', { meter: '4/4', grid: 1, pickup: 1 });
    const grace = (loop: boolean): number => at(early, { bpm: 300, flamMs: 80, loop })['1.0.0g0'];
    expect(grace(false)).toBeCloseTo(-0.08, 12);
    expect(grace(true)).toBeCloseTo(-0.025, 12);
  });

  it('spaces a drag evenly', () => {
    const drag = timelineOf('llR -', { meter: '2/4', grid: 1 });
    const seconds = at(drag, { bpm: 60, flamMs: 25 });
    expect(seconds['1.0.0g0']).toBeCloseTo(-0.05, 12);
    expect(seconds['1.0.0g1']).toBeCloseTo(-0.025, 12);
  });

  it('swings eighths and sixteenths by their ratio and leaves other grids alone', () => {
    const eighths = timelineOf('{RR L}4', { meter: '4/4', grid: 2 });
    const seconds = at(eighths, { bpm: 60, swing: 2 });
    expect(seconds['1.1.0']).toBeCloseTo(2 / 3, 12);
    expect(seconds['1.0.1']).toBeCloseTo(1 / 3, 12);
    expect(seconds['1.2.0']).toBeCloseTo(1, 12);
    expect(at(bar, { bpm: 60, swing: 3 })).toEqual(at(bar, { bpm: 60 }));
    const sixteenths = timelineOf('{R L R L}4', { meter: '4/4', grid: 4 });
    expect(at(sixteenths, { bpm: 60, swing: 3 })['1.1.0']).toBeCloseTo(0.375, 12);
  });

  it('follows tempo changes', () => {
    const seconds = at(bar, {
      bpm: [
        { tick: 0, bpm: 60 },
        { tick: 40320, bpm: 120 },
      ],
    });
    expect(seconds['1.6.0']).toBeCloseTo(2, 12);
    expect(seconds['1.9.0']).toBeCloseTo(2.5, 12);
  });

  it('counts from bar 1 also where a tempo is set before it', () => {
    const early = timelineOf('K R L R L', { meter: '4/4', grid: 1, pickup: 1 });
    const seconds = at(early, {
      bpm: [
        { tick: -20160, bpm: 120 },
        { tick: 0, bpm: 60 },
      ],
    });
    expect(seconds['0.3.0k']).toBeCloseTo(-0.5, 12);
    expect(seconds['1.1.0']).toBeCloseTo(1, 12);
  });

  it('is in order of time', () => {
    const order = schedule(bar, { bpm: 200, flamMs: 80 }).map((s) => s.seconds);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it.each([
    { bpm: 0 },
    { bpm: -60 },
    { bpm: NaN },
    { bpm: 5e-324 },
    { bpm: 1e300 },
    { bpm: [] },
    {
      bpm: [
        { tick: 5, bpm: 60 },
        { tick: 5, bpm: 70 },
      ],
    },
    { bpm: 60, swing: 0.5 },
    { bpm: 60, swing: 5 },
    { bpm: 60, flamMs: -1 },
    { bpm: 60, flamMs: NaN },
    { bpm: [{ tick: NaN, bpm: 60 }] },
    { bpm: [null as unknown as { tick: number; bpm: number }] },
    { bpm: 60, swing: '2' as unknown as number },
    { bpm: 60, flamMs: null as unknown as number },
  ])('throws for what cannot be played: %j', (options) => expect(() => schedule(bar, options)).toThrow(RangeError));

  it.each([{}, { bpm: '60' }, { bpm: null }])('throws for a tempo that is none: %j', (options) =>
    expect(() => schedule(bar, options as unknown as { bpm: number })).toThrow('a tempo or a list of changes'),
  );

  it('rises with the tick, swung or not', () => {
    const grid4 = timelineOf('{R L R L}4', { meter: '4/4', grid: 4 });
    fc.assert(
      fc.property(fc.nat(80640), fc.nat(5000), fc.double({ min: 1, max: 4, noNaN: true }), (tick, more, swing) => {
        const seconds = secondsAt(grid4, { bpm: 90, swing });
        expect(seconds(tick + more + 1)).toBeGreaterThan(seconds(tick));
      }),
      runs(500),
    );
  });
});
