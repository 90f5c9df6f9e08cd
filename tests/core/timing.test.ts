import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareTiming,
  isHand,
  LIMBS,
  schedule,
  type Hit,
  type Limb,
  type Timeline,
  type Timing,
} from '../../src/core/index.ts';
import { align, type Event } from '../../src/core/timing/align.ts';
import { runs } from '../helpers/arbitrary.ts';
import { lehmer } from '../helpers/lehmer.ts';
import { timelineOf } from '../helpers/phrases.ts';

const quarters = { meter: '4/4', grid: 1 };
const four = timelineOf('R L R L', quarters);
const at60 = { bpm: 60 };
const hitsOf = (timing: Timing): (number | undefined)[] => timing.strokes.map((s) => s.hit);

/** A player who hits everything as it is asked for. */
const exact = (timeline: Timeline, bpm: number): Hit[] => {
  const limbs = new Map(timeline.strokes.map((s) => [s.id, s.limb]));
  return schedule(timeline, { bpm }).map(({ id, seconds }) => ({ seconds, limb: limbs.get(id)! }));
};

describe('hits held against strokes', () => {
  it('are late above 0 and early below, by stroke, in any order', () => {
    const hits = [{ seconds: 2.02 }, { seconds: -0.01 }, { seconds: 1 }];
    const { strokes, overall, extra } = compareTiming(four, hits, at60);
    expect(strokes.map((s) => [s.id, s.pass, s.limb, s.hit])).toEqual([
      ['1.0.0', 1, 'R', 1],
      ['1.1.0', 1, 'L', 2],
      ['1.2.0', 1, 'R', 0],
      ['1.3.0', 1, 'L', undefined],
    ]);
    expect(strokes[2].offset).toBeCloseTo(0.02, 12);
    expect([overall.strokes, overall.missed, extra]).toEqual([4, 1, []]);
    expect(overall.mean).toBeCloseTo(0.01 / 3, 12);
    expect(overall.sd).toBeCloseTo(Math.sqrt((0.01 ** 2 + 0 + 0.02 ** 2 - 3 * (0.01 / 3) ** 2) / 2), 12);
  });

  it('have no mean where nothing was hit and no deviation below two', () => {
    const none = compareTiming(four, [], at60);
    expect(none.overall).toEqual({ strokes: 4, missed: 4, mean: undefined, sd: undefined });
    expect([none.flams, none.drift]).toEqual([{ count: 0, mean: undefined, sd: undefined }, undefined]);
    expect(compareTiming(four, [{ seconds: 0 }], at60).overall).toEqual({
      strokes: 4,
      missed: 3,
      mean: 0,
      sd: undefined,
    });
  });

  it('match within the window, its edge included, and are extra beyond', () => {
    expect(hitsOf(compareTiming(four, [{ seconds: 0.15 }], at60))[0]).toBe(0);
    const far = compareTiming(four, [{ seconds: 0.151 }], at60);
    expect(hitsOf(far)[0]).toBeUndefined();
    expect(far.extra).toEqual([{ hit: 0, pass: 1, bar: 1, count: '1' }]);
    expect(hitsOf(compareTiming(four, [{ seconds: 0.4 }], { bpm: 60, window: 0.4 }))[0]).toBe(0);
  });

  it('go to the earlier stroke, and to the earlier of two hits, where it is all the same', () => {
    const wide = { bpm: 60, window: 0.5 };
    expect(hitsOf(compareTiming(four, [{ seconds: 0.5 }], wide))).toEqual([0, undefined, undefined, undefined]);
    expect(hitsOf(compareTiming(four, [{ seconds: 1.25 }, { seconds: 0.75 }], wide))[1]).toBe(1);
  });

  it('of a known limb match that limb only', () => {
    const chord = timelineOf('R+K - L -', quarters);
    expect(hitsOf(compareTiming(chord, [{ seconds: 0.01, limb: 'K' }], at60))).toEqual([undefined, 0, undefined]);
    expect(
      hitsOf(
        compareTiming(
          chord,
          [
            { seconds: 0.01, limb: 'R' },
            { seconds: 2, limb: 'R' },
          ],
          at60,
        ),
      ),
    ).toEqual([0, undefined, undefined]);
    expect(hitsOf(compareTiming(chord, [{ seconds: 0.01 }, { seconds: 0.01 }], at60))).toEqual([0, 1, undefined]);
  });

  it('leave an unknown hit to the limb whose own hit another stroke needs', () => {
    const close = timelineOf('RL - - -', quarters);
    const hits: Hit[] = [{ seconds: 0.45, limb: 'L' }, { seconds: 0.49 }];
    expect(hitsOf(compareTiming(close, hits, { bpm: 60, window: 0.6 }))).toEqual([1, 0]);
  });

  it('are told at the nearest slot of their pass, the earlier at a tie, a pickup only before the first', () => {
    const early = timelineOf('L R L R L', { ...quarters, pickup: 1 });
    const hits = [-0.8, 0.5, 3.6, 7.9].map((seconds) => ({ seconds }));
    const { extra, strokes } = compareTiming(early, hits, { bpm: 60, passes: 2, window: 0.05 });
    expect(extra).toEqual([
      { hit: 0, pass: 1, bar: 0, count: '4' },
      { hit: 1, pass: 1, bar: 1, count: '1' },
      { hit: 2, pass: 2, bar: 1, count: '1' },
      { hit: 3, pass: 2, bar: 1, count: '4' },
    ]);
    expect(strokes.map((s) => s.pass)).toEqual([1, 1, 1, 1, 1, 2, 2, 2, 2]);
  });
});

describe('what is told of a take', () => {
  it('pools passes by slot, and by cell where it begins', () => {
    const cells = [
      { id: 'a', text: 'lR L' },
      { id: 'b', text: 'K R' },
    ];
    const timeline = timelineOf(cells, quarters);
    const times = [0, 0.97, 1, 4.02, 5, 6.06];
    const {
      slots,
      cells: first,
      limbs,
    } = compareTiming(
      timeline,
      times.map((seconds) => ({ seconds })),
      { bpm: 60, passes: 2 },
    );
    expect(slots.map((s) => [s.strokes, s.missed])).toEqual([
      [2, 0],
      [2, 0],
      [2, 1],
      [2, 2],
    ]);
    expect(slots[0].mean).toBeCloseTo(0.01, 12);
    expect(first.map((s) => [s.strokes, s.missed])).toEqual([
      [2, 0],
      [2, 1],
    ]);
    expect(limbs.L).toMatchObject({ strokes: 4, missed: 2 });
    expect(limbs.H).toBeUndefined();
  });

  it('measures flams, and diddles against the stroke at the end of their slot', () => {
    const timeline = timelineOf('lR LL R RR', quarters);
    const hits = [-0.04, 0.01, 1, 1.6, 2, 3, 3.5].map((seconds) => ({ seconds }));
    const { flams, diddles } = compareTiming(timeline, hits, { bpm: 60, flamMs: 50 });
    expect([flams.count, diddles.count]).toEqual([1, 1]);
    expect(flams.mean).toBeCloseTo(0.05, 12);
    expect(diddles.mean).toBeCloseTo(0.4, 12);
    const round = compareTiming(timeline, [...hits, { seconds: 4 }], { bpm: 60, flamMs: 50, passes: 2 });
    expect(round.diddles.count).toBe(2);
    expect(round.diddles.mean).toBeCloseTo(0.45, 12);
  });

  it('finds the drift of a take that runs away, from its mean tempo where that changes', () => {
    const faster = (bpm: number): Hit[] => exact(four, bpm);
    expect(compareTiming(four, faster(62), at60).drift).toBeCloseTo(2, 9);
    expect(compareTiming(four, faster(58), at60).drift).toBeCloseTo(-2, 9);
    const changes = [
      { tick: 0, bpm: 60 },
      { tick: 80640, bpm: 120 },
    ];
    const hits = [0, 1, 2, 3, 4, 4.5, 5, 5.5].map((seconds) => ({ seconds }));
    const { strokes, drift } = compareTiming(four, hits, { bpm: changes, passes: 2 });
    expect(strokes.map((s) => s.offset)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
    expect(drift).toBeCloseTo(0, 9);
    const late = hits.map(({ seconds }) => ({ seconds: seconds * 1.01 }));
    expect(compareTiming(four, late, { bpm: changes, passes: 2 }).drift).toBeCloseTo(80 * (1 / 1.01 - 1), 9);
  });

  it('swings each pass by its own bars and places grace notes as in a loop', () => {
    const timeline = timelineOf('[2/4:2] lR L R L [1/4:1] R', {});
    const hits = schedule(timeline, { bpm: 60, swing: 2, loop: true });
    const both = [...hits, ...hits.map((s) => ({ seconds: s.seconds + 3 }))];
    const { overall, extra } = compareTiming(timeline, both, { bpm: 60, swing: 2, passes: 2 });
    expect([overall.missed, extra]).toEqual([0, []]);
    expect(overall.mean).toBeCloseTo(0, 12);
    expect(overall.sd).toBeCloseTo(0, 12);
  });
});

/** The least cost of all ways to match, in tenths of microseconds, by trying them all. */
function leastCost(strokes: readonly Event[], hits: readonly Event[], window: number, from = 0, used = 0): number {
  if (from === strokes.length) return 0;
  let best = leastCost(strokes, hits, window, from + 1, used);
  hits.forEach((hit, i) => {
    const offset = Math.abs(hit.seconds - strokes[from].seconds);
    const fits = (hit.limb === undefined || hit.limb === strokes[from].limb) && offset <= window + 1e-9;
    if (fits && (used & (1 << i)) === 0)
      best = Math.min(best, offset - window + leastCost(strokes, hits, window, from + 1, used | (1 << i)));
  });
  return best;
}

const limb = fc.constantFrom<Limb>(...LIMBS);
const tick = fc.nat(40).map((n) => n / 64);
const strokesIn = fc
  .uniqueArray(fc.record({ seconds: tick, limb }), { maxLength: 6, selector: (s) => `${s.seconds} ${s.limb}` })
  .map((all) => all.sort((a, b) => a.seconds - b.seconds || LIMBS.indexOf(a.limb) - LIMBS.indexOf(b.limb)));
const hitsIn = fc.array(fc.record({ seconds: tick, limb: fc.option(limb, { nil: undefined, freq: 1 }) }), {
  maxLength: 6,
});

describe('the match of least cost', () => {
  it('is as good as the best of all there are, in order within each limb', () => {
    fc.assert(
      fc.property(strokesIn, hitsIn, fc.constantFrom(0.0625, 0.15625, 0.25), (strokes, hits, window) => {
        const found = align(strokes, hits, window);
        const gains = found.map((hit, i) => (hit < 0 ? 0 : Math.abs(hits[hit].seconds - strokes[i].seconds) - window));
        expect(gains.every((gain) => gain <= 1e-9)).toBe(true);
        expect(gains.reduce((a, b) => a + b, 0)).toBeCloseTo(leastCost(strokes, hits, window), 9);
        const matched = found.filter((hit) => hit >= 0);
        expect(new Set(matched).size).toBe(matched.length);
        for (const one of LIMBS) {
          const times = found.flatMap((hit, i) => (hit >= 0 && strokes[i].limb === one ? [hits[hit].seconds] : []));
          expect(times).toEqual([...times].sort((a, b) => a - b));
        }
      }),
      runs(400),
    );
  });

  it('is that of the first strokes where several are as good', () => {
    const strokes: Event[] = [0, 1, 2].map((seconds) => ({ seconds, limb: 'R' }));
    expect(align(strokes, [{ seconds: 1 }, { seconds: 1 }], 1)).toEqual([0, 1, -1]);
    expect(align(strokes, [{ seconds: 0.5 }, { seconds: 1.5 }], 1)).toEqual([0, 1, -1]);
  });
});

/** A player of a bar: how late on average, how uneven, how often a stroke is missed or one too many is struck. */
function played(
  timeline: Timeline,
  passes: number,
  random: () => number,
  known: boolean,
): { hits: Hit[]; struck: number } {
  const hits: Hit[] = [];
  let struck = 0;
  const limbs = new Map(timeline.strokes.map((s) => [s.id, s.limb]));
  for (let pass = 0; pass < passes; pass += 1)
    for (const { id, seconds } of schedule(timeline, { bpm: 90, loop: true })) {
      if (random() < 0.05) continue;
      const who = limbs.get(id)!;
      const offset = 0.01 + 0.006 * (random() + random() - 1);
      hits.push({
        seconds: seconds + pass * (timeline.ticks / 20160) * (60 / 90) + offset,
        ...(known ? { limb: who } : {}),
      });
      struck += 1;
    }
  return { hits: hits.sort(() => random() - 0.5), struck };
}

describe('a made-up player', () => {
  const bar = timelineOf('{>lR LL R+K -}2 {R L}4', { meter: '4/4', grid: 4 });

  it.each([true, false])('is found out, limbs known: %s', (known) => {
    const { hits, struck } = played(bar, 40, lehmer(7), known);
    const { overall, extra, flams, drift } = compareTiming(bar, hits, { bpm: 90, passes: 40 });
    expect(overall.strokes - overall.missed).toBe(struck);
    expect(extra).toEqual([]);
    expect(overall.mean).toBeCloseTo(0.01, 3);
    expect(flams.mean).toBeCloseTo(0.03, 2);
    expect(drift).toBeCloseTo(0, 1);
  });

  it('takes time in proportion to the take, limbs known, unknown or known of the feet alone', () => {
    const msOf = (passes: number, keep: (one: Limb) => boolean): number => {
      const hits = played(bar, passes, lehmer(3), true).hits.map(({ limb: who, ...hit }) => ({
        ...hit,
        ...(who && keep(who) ? { limb: who } : {}),
      }));
      const from = process.cpuUsage();
      compareTiming(bar, hits, { bpm: 90, passes });
      const { user, system } = process.cpuUsage(from);
      return (user + system) / 1000;
    };
    for (const keep of [() => true, () => false, (one: Limb) => !isHand(one)]) {
      msOf(50, keep);
      const short = Math.min(...[1, 2, 3].map(() => msOf(50, keep)));
      expect(msOf(400, keep)).toBeLessThan(40 * short + 50);
    }
  });
});
