import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DEFAULT_LIMITS,
  hands,
  isHand,
  layPhrase,
  LIMBS,
  mirror,
  motions,
  otherHand,
  perform,
  type Gap,
  type HandsReport,
  type Limb,
  type LimbReport,
  type Sticking,
  type Timeline,
} from '../../src/core/index.ts';
import { grid, runs, sticking } from '../helpers/arbitrary.ts';
import { timelineOf } from '../helpers/phrases.ts';

const of = (text: string, how = { meter: '4/4', grid: 4 }): ReturnType<typeof timelineOf> =>
  timelineOf(text, { ...how, fill: 'rests' });

describe('runs of one hand', () => {
  it.each([
    ['R L L R', 'L', 2, 2],
    ['R L L lR', 'L', 2, 3],
    ['R K R K R L', 'R', 3, 3],
    ['R - R L', 'R', 2, 2],
    ['R R+L L', 'R', 2, 2],
    ['R R+L L', 'L', 2, 2],
    ['RR LL RR', 'R', 2, 2],
    ['lR lR lR', 'R', 3, 1],
  ] as const)('%s: %s', (text, hand, main, withGraces) => {
    const report = hands(of(text), 60).limbs[hand]!;
    expect([report.longestRun!.length, report.longestRunWithGraces!.length]).toEqual([main, withGraces]);
  });

  it('go over the seam only where the phrase goes round', () => {
    const bar = of('R L R L R L R L R L R L R L R R');
    expect(hands(bar, 60).limbs.R!.longestRun!.length).toBe(2);
    expect(hands(bar, 60, { loop: true }).limbs.R!.longestRun!.length).toBe(3);
  });
});

describe('gaps', () => {
  it('are in slots, ticks and milliseconds, with a place', () => {
    const { gaps } = hands(of('R L L R'), 60).limbs.R!;
    expect(gaps).toEqual([
      { kind: 'single', from: '1.0.0', to: '1.3.0', ticks: 15120, slots: 3, ms: 750, bar: 1, count: '1' },
    ]);
  });

  it('tell a rebound, a grace note and a doubled kick from single strokes', () => {
    const kinds = (text: string, limb: 'R' | 'L' | 'K'): string[] =>
      hands(of(text), 60).limbs[limb]!.gaps.map((g) => g.kind);
    expect(kinds('R LL R', 'L')).toEqual(['rebound']);
    expect(kinds('R L L R', 'L')).toEqual(['rebound']);
    expect(kinds('L R R R L', 'R')).toEqual(['single', 'single']);
    expect(kinds('R R - - R R - -', 'R')).toEqual(['rebound', 'single', 'rebound']);
    expect(kinds('lR L', 'L')).toEqual(['grace']);
    expect(kinds('KK R K', 'K')).toEqual(['doubleFoot', 'foot']);
  });

  it('find a double at either end, over the seam only where the phrase goes round', () => {
    const kinds = (loop: boolean): string[] =>
      hands(timelineOf('R R L R', { meter: '4/4', grid: 1 }), 60, { loop }).limbs.R!.gaps.map((g) => g.kind);
    expect(kinds(false)).toEqual(['rebound', 'single']);
    expect(kinds(true)).toEqual(['single', 'single', 'single']);
  });

  it('tell a double whatever the other hand does at the same time', () => {
    expect(hands(of('R R+L'), 60).limbs.R!.gaps[0].kind).toBe('rebound');
    expect(hands(of('L R+L'), 60).limbs.L!.gaps[0].kind).toBe('rebound');
  });

  it('are no double of a foot that strikes once, time after time', () => {
    const { gaps } = hands(timelineOf('-K - - -', { meter: '4/4', grid: 1 }), 60, { loop: true }).limbs.K!;
    expect(gaps.map((g) => [g.kind, g.ms])).toEqual([['foot', 4000]]);
  });

  it('count a grace note where it sounds', () => {
    const { gaps } = hands(of('lR L'), 60, { flamMs: 40 }).limbs.L!;
    expect(gaps[0].ms).toBeCloseTo(290, 9);
  });

  it('go round from the last stroke, past a pickup that the last bar leaves no room for', () => {
    const early = timelineOf('R R L R R', { meter: '4/4', grid: 1, pickup: 1 });
    const gaps = hands(early, 60, { loop: true }).limbs.R!.gaps;
    expect(gaps.map((g) => g.ms)).toEqual([1000, 2000, 1000, 1000]);
    expect(gaps.at(-1)!.to).toBe('1.0.0');
  });

  it('bind at the tempo where the tightest meets its limit', () => {
    const report = hands(of('R L R L'), 60, { limits: { single: 125 } });
    const right = report.limitingTempos.find((b) => b.limb === 'R' && b.kind === 'single')!;
    expect(right.bpm).toBeCloseTo(240, 9);
    expect(report.limit!.bpm).toBeCloseTo(240, 9);
  });

  it('bind earlier where a grace note takes a part of the gap', () => {
    const bar = of('L L lR L');
    const { limitingTempos } = hands(bar, 60, { flamMs: 30, limits: { single: 154, grace: 90 } });
    const left = Object.fromEntries(limitingTempos.filter((b) => b.limb === 'L').map((b) => [b.kind, b]));
    expect(left.single.bpm).toBeCloseTo(15_000 / 184, 9);
    expect(left.single.gap.to).toBe('1.2.0g0');
    expect(left.grace.bpm).toBeCloseTo(15_000 / 60, 9);
    const there = hands(bar, left.single.bpm, { flamMs: 30 }).limbs.L!.gaps.find((g) => g.to === '1.2.0g0')!;
    expect(there.ms).toBeCloseTo(154, 9);
  });

  it('bind where a stroke just before narrows the flam', () => {
    const [bar, how] = [of('R RR lR L'), { limits: { grace: 90 }, flamMs: 30 }];
    const { bpm } = hands(bar, 60, how).limitingTempos.find((b) => b.kind === 'grace')!;
    expect(bpm).toBeCloseTo(15_000 / 72, 9);
    expect(hands(bar, bpm, how).limbs.L!.tightest.grace!.ms).toBeCloseTo(90, 9);
  });

  it('are as short as their limit at the tempo where they bind, whatever it is', () => {
    const slot = fc.constantFrom('R', 'L', 'lR', 'rL', 'llR', 'rlrL', 'RR', 'LL', 'R+L', 'K', 'KK', '-', 'RL');
    const bars = fc.array(slot, { minLength: 16, maxLength: 16 });
    fc.assert(
      fc.property(bars, fc.boolean(), fc.integer({ min: 0, max: 80 }), (slots, loop, flamMs) => {
        const bar = of(slots.join(' '));
        for (const { limb, kind, bpm } of hands(bar, 60, { loop, flamMs }).limitingTempos)
          expect(hands(bar, bpm, { loop, flamMs }).limbs[limb]!.tightest[kind]!.ms).toBeCloseTo(
            DEFAULT_LIMITS[kind],
            6,
          );
      }),
      runs(60),
    );
  });

  it('are tightest between figures: what is inside one is as wide at every tempo', () => {
    const { gaps, tightest } = hands(of('llR R L R'), 60).limbs.L!;
    expect(gaps.map((g) => g.ticks)).toEqual([0, 10080]);
    expect(tightest.grace!.ticks).toBe(10080);
  });

  it('throw for no tempo and no limit', () => {
    expect(() => hands(of('R'), 0)).toThrow(RangeError);
    expect(() => hands(of('R'), 60, { limits: { single: NaN } })).toThrow('limit of single is NaN; more than 0');
  });
});

/** What is said of a limb, but for the ids of its strokes: two hands at once have theirs by the order of the chord. */
function said(report: LimbReport | undefined): unknown {
  if (!report) return undefined;
  const bare = ({ from: _from, to: _to, ...rest }: Gap): unknown => rest;
  const { gaps, tightest, longestRun, longestRunWithGraces, ...counts } = report;
  return {
    ...counts,
    gaps: gaps.map(bare),
    tightest: Object.fromEntries(Object.entries(tightest).map(([kind, gap]) => [kind, bare(gap)])),
    runs: [longestRun?.length, longestRunWithGraces?.length],
  };
}

const swap = (limb: Limb): Limb => (isHand(limb) ? otherHand(limb) : limb);

describe('hands of a mirrored phrase', () => {
  const played = (one: Sticking, m: string, g: number, flams: 'grace' | 'before' | 'on'): Timeline | undefined => {
    const ruler = one.hands[0].kind === 'head' ? {} : { meter: m, grid: g };
    const laid = layPhrase({ cells: [{ id: 'one', sticking: one }], ...ruler, fill: 'rests' });
    return laid.ok ? perform(laid.phrase, { flams }) : undefined;
  };

  it('are those of the phrase with the hands exchanged', () => {
    const flams = fc.constantFrom('grace', 'before', 'on');
    fc.assert(
      fc.property(sticking, fc.constantFrom('4/4', '6/8', '5/8'), grid, flams, fc.boolean(), (one, m, g, how, loop) => {
        const timeline = played(one, m, g, how);
        fc.pre(timeline !== undefined);
        const [plain, turned] = [timeline, played(mirror(one), m, g, how)!].map((each) => hands(each, 90, { loop }));
        for (const limb of LIMBS) expect(said(turned.limbs[swap(limb)])).toEqual(said(plain.limbs[limb]));
        const tempos = ({ limitingTempos }: HandsReport, turn: (limb: Limb) => Limb): string[] =>
          limitingTempos.map(({ limb, kind, bpm }) => `${turn(limb)} ${kind} ${bpm}`).sort();
        expect(tempos(turned, swap)).toEqual(tempos(plain, (limb) => limb));
        expect([turned.limit?.bpm, turned.limit?.kind]).toEqual([plain.limit?.bpm, plain.limit?.kind]);
      }),
      runs(200),
    );
  });

  it('are limited by the other hand', () => {
    expect(hands(of('R L R L'), 60).limit!.limb).toBe('R');
    expect(hands(of('L R L R'), 60).limit!.limb).toBe('L');
  });
});

describe('motions', () => {
  it('follow from a stroke and the next of the same hand', () => {
    const timeline = timelineOf('>R >R >R R R R R >R', { meter: '4/4', grid: 2 });
    expect([...motions(timeline).values()]).toEqual(['full', 'full', 'down', 'tap', 'tap', 'tap', 'up', 'full']);
  });

  it('count a grace note as a low stroke', () => {
    const motion = motions(timelineOf('{>lR L R >rL R L}2', { meter: '4/4', grid: 3 }));
    expect([motion.get('1.0.0'), motion.get('1.2.0'), motion.get('1.3.0g0')]).toEqual(['down', 'tap', 'tap']);
    expect(motion.get('1.1.0')).toBe('up');
  });
});
