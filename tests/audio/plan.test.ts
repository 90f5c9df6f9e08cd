import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { schedule, secondsAt } from '../../src/core/index.ts';
import type { PlayRequest } from '../../src/audio/index.ts';
import { openingTurn, turnAfter, type Turn } from '../../src/audio/conductor/turns.ts';
import { planOf, type Hit, type Pass } from '../../src/audio/plan/plan.ts';
import { runs } from '../helpers/arbitrary.ts';
import { ms, nameOf, requestOf } from './requests.ts';

const SIXTEEN = '{R L}8';
const IN_FOUR = { meter: '4/4', grid: 4 };

/** The first passes of a request, fewer where it ends before. */
function take(request: PlayRequest, passes: number): Turn[] {
  const turns = [openingTurn(planOf(request), 0)];
  for (let next = turnAfter(turns[0]); next && turns.length < passes; next = turnAfter(next)) turns.push(next);
  return turns;
}

const timesOf = ({ start, pass }: Turn): [string, number][] =>
  pass.hits.map((hit) => [nameOf(hit), ms(start + hit.seconds)]);

const strokesOf = (pass: Pass): Hit[] => pass.hits.filter(({ sound }) => 'stroke' in sound);

/** Phases of the bars of a pass in order, a letter a bar. */
function barsOf({ places }: Pass): string {
  const letters = { 'count-in': 'i', check: 'c', pattern: 'p' };
  return places
    .filter(
      ({ own, bar, phase }, i) =>
        i === 0 || bar !== places[i - 1].bar || phase !== places[i - 1].phase || own < places[i - 1].own,
    )
    .map(({ phase, bar }) => (phase === 'pattern' && bar === 0 ? 'u' : letters[phase]))
    .join('');
}

describe('a pass', () => {
  it('begins with the first bar where there is no count-in', () => {
    const [first, second] = take(requestOf('R L R L', { meter: '4/4', grid: 1 }), 2);
    expect(timesOf(first).map(([, at]) => at - ms(first.pass.places[0].seconds))).toEqual([0, 1000, 2000, 3000]);
    expect(ms(second.start - first.pass.places[0].seconds)).toBe(4000);
  });

  it('is counted in by a bar of clicks, the first one apart', () => {
    const [first] = take(requestOf('R L R L', { meter: '4/4', grid: 1 }, { countIn: true }), 1);
    expect(timesOf(first)).toEqual([
      ['bar', 0],
      ['beat', 1000],
      ['beat', 2000],
      ['beat', 3000],
      ['R', 4000],
      ['L', 5000],
      ['R', 6000],
      ['L', 7000],
    ]);
  });

  it('ends where it does not loop', () => {
    expect(take(requestOf(SIXTEEN, IN_FOUR, { loop: false }), 2)).toHaveLength(1);
    expect(take(requestOf(SIXTEEN, IN_FOUR), 2)).toHaveLength(2);
  });

  it('has its grace notes before its beginning in every round, within half the gap to the stroke before', () => {
    const [first, second, third] = take(requestOf('lR L rL R', { meter: '4/4', grid: 1 }, { flamMs: 40, bpm: 240 }), 3);
    const from = first.pass.places[0].seconds;
    const graces = [first, second, third].map((turn) => ms(turn.start + turn.pass.hits[0].seconds - from));
    expect(graces).toEqual([-40, 960, 1960]);
    const [tight, next] = take(requestOf('lR L R L', { meter: '1/4', grid: 4 }, { flamMs: 80, bpm: 300 }), 2);
    expect(ms(next.pass.hits[0].seconds)).toBe(-25);
    expect(ms(tight.pass.hits[0].seconds - tight.pass.places[0].seconds)).toBe(-80);
  });
});

describe('check and pattern', () => {
  it.each([
    [1, 'cp'],
    [2, 'ccpp'],
    [4, 'ccccpppp'],
  ] as const)('take turns, %i bars at a time: %s', (bars, order) => {
    const [first, second] = take(requestOf(SIXTEEN, { ...IN_FOUR, checked: bars }), 2);
    expect(barsOf(first.pass)).toBe(order);
    expect(barsOf(second.pass)).toBe(order);
  });

  it('let a pattern of more bars play whole', () => {
    const [first] = take(requestOf('{R L}24', { ...IN_FOUR, checked: 1 }), 1);
    expect(barsOf(first.pass)).toBe('cppp');
  });

  it('count in what comes first', () => {
    const [first] = take(requestOf(SIXTEEN, { ...IN_FOUR, checked: 1 }, { countIn: true }), 1);
    expect(barsOf(first.pass)).toBe('icp');
  });
});

describe('a pickup', () => {
  const PICKUP = 'L R {R L}8';
  const laid = { ...IN_FOUR, pickup: 2 };
  const early = (pass: Pass): string[] =>
    strokesOf(pass)
      .filter(({ sound }) => 'stroke' in sound && sound.stroke.bar === 0)
      .map(nameOf);

  it('sounds at the end of the count-in', () => {
    const [first, second] = take(requestOf(PICKUP, laid, { countIn: true }), 2);
    expect(barsOf(first.pass)).toBe('iup');
    expect(timesOf(first).slice(3, 7)).toEqual([
      ['beat', 3000],
      ['L', 3500],
      ['R', 3750],
      ['R', 4000],
    ]);
    expect(early(second.pass), 'where the bar before is full').toEqual([]);
  });

  it('comes before bar 1 where nobody counts in', () => {
    const [first] = take(requestOf(PICKUP, laid), 1);
    expect(first.pass.hits[0].seconds).toBe(first.pass.places[0].seconds);
    expect(barsOf(first.pass)).toBe('up');
    expect(first.pass.places[0].own).toBe(-10080);
  });

  it('takes the place of the end of the check', () => {
    const [first, second] = take(requestOf(PICKUP, { ...laid, checked: 1 }, { countIn: true }), 2);
    expect(barsOf(first.pass)).toBe('icup');
    expect(barsOf(second.pass)).toBe('cup');
    for (const { pass } of [first, second]) {
      expect(early(pass)).toEqual(['L', 'R']);
      expect(strokesOf(pass)).toHaveLength(14 + 2 + 16);
    }
  });

  it('comes again at the end of a bar that leaves room for it', () => {
    const [, second] = take(requestOf('L R {R L}7 - -', laid), 2);
    expect(early(second.pass)).toEqual(['L', 'R']);
    expect(barsOf(second.pass)).toBe('pu');
  });
});

describe('grace notes that were written out', () => {
  it('sound before the first beat, also from the end of each round', () => {
    const [first, second] = take(requestOf('lR L R L', { meter: '4/4', grid: 1, flams: 'before' }), 2);
    const from = first.pass.places[0].seconds;
    expect(timesOf(first).map(([name, at]) => [name, at - ms(from)])).toEqual([
      ['L', -500],
      ['R', 0],
      ['L', 1000],
      ['R', 2000],
      ['L', 3000],
      ['L', 3500],
    ]);
    expect(timesOf(second).at(-1)).toEqual(['L', ms(second.start) + 3500]);
  });
});

describe('the metronome', () => {
  const clicks = (request: PlayRequest): [string, number][] =>
    timesOf(take(request, 2)[1]).filter(([name]) => ['bar', 'beat', 'slot'].includes(name));

  it('gives the beats', () => {
    expect(clicks(requestOf(SIXTEEN, IN_FOUR, { click: 'beats' })).map(([name]) => name)).toEqual([
      'bar',
      'beat',
      'beat',
      'beat',
    ]);
  });

  it('gives every slot, swung as the strokes are', () => {
    const request = requestOf('R L R L', { meter: '2/4', grid: 2 }, { click: 'slots', swing: 2 });
    const [, { start, pass }] = take(request, 2);
    const times = (hits: Hit[]): number[] => hits.map(({ seconds }) => ms(start + seconds));
    expect(times(pass.hits.filter(({ sound }) => 'click' in sound))).toEqual(times(strokesOf(pass)));
    expect(strokesOf(pass).map(({ seconds }) => ms(seconds))).toEqual([0, 666.667, 1000, 1666.667]);
  });

  it('stresses the groups of an uneven meter', () => {
    const request = requestOf('{R}7', { meter: '2+2+3/8', grid: 1 }, { click: 'beats' });
    expect(clicks(request).map(([name]) => name)).toEqual(['bar', 'slot', 'beat', 'slot', 'beat', 'slot', 'slot']);
  });

  it('goes by dotted quarters in 6/8', () => {
    const request = requestOf('{R}6', { meter: '6/8', grid: 3 }, { click: 'beats' });
    expect(clicks(request).map(([name]) => name)).toEqual(['bar', 'beat']);
  });
});

describe('one hand alone', () => {
  it('is that hand and nothing else but the metronome, where it would sound with all of them', () => {
    const request = requestOf('lR L R+K H', { meter: '4/4', grid: 1 }, { click: 'beats' });
    const alone = planOf({ ...request, heard: 'L' }).again.hits;
    expect(new Set(alone.map(nameOf))).toEqual(new Set(['l', 'L', 'bar', 'beat']));
    const all = planOf(request).again.hits.map((hit) => `${nameOf(hit)} ${hit.seconds}`);
    for (const hit of alone) expect(all).toContain(`${nameOf(hit)} ${hit.seconds}`);
  });
});

const hand = fc.constantFrom('R', 'L', 'lR', 'rL', 'llR', 'RR', 'LL', '-', 'K', 'R+K', '>R', '(L)');
const request: fc.Arbitrary<PlayRequest> = fc
  .record({
    grid: fc.integer({ min: 1, max: 8 }),
    bars: fc.integer({ min: 1, max: 3 }),
    pickup: fc.nat(3),
    flams: fc.constantFrom('grace' as const, 'before' as const, 'on' as const),
    checked: fc.constantFrom(undefined, 1 as const, 2 as const, 4 as const),
    strokes: fc.array(hand, { minLength: 99, maxLength: 99 }),
    rest: fc.record({
      bpm: fc.integer({ min: 30, max: 300 }),
      swing: fc.constantFrom(1, 1.5, 2, 3),
      flamMs: fc.integer({ min: 10, max: 80 }),
      loop: fc.boolean(),
      countIn: fc.boolean(),
      click: fc.constantFrom('off' as const, 'beats' as const, 'slots' as const),
    }),
  })
  .map(({ grid, bars, pickup, flams, checked, strokes, rest }) => {
    const text = ['R', ...strokes].slice(0, bars * 4 * grid + Math.min(pickup, 4 * grid - 1)).join(' ');
    return requestOf(text, { meter: '4/4', grid, pickup: Math.min(pickup, 4 * grid - 1), flams, checked }, rest);
  });

describe('every plan', () => {
  it('takes its times from core alone: within a run they are those of the timeline by itself', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const { timeline, bpm, swing, flamMs } = asked;
        const alone = new Map(schedule(timeline, { bpm, swing, flamMs }).map(({ id, seconds }) => [id, seconds]));
        const at = secondsAt(timeline, { bpm, swing });
        const { places, hits } = planOf(asked).again;
        const bar1 = places.find(({ phase, own }) => phase === 'pattern' && own === 0)!;
        const inside = hits.filter(
          ({ sound, home, lit }) =>
            'stroke' in sound &&
            lit?.phase === 'pattern' &&
            home > bar1.seconds + at(timeline.bars[0].tick + 1) &&
            home < bar1.seconds + at(timeline.ticks - 1),
        );
        // Before the first stroke of bar 1 another one stands in a plan that leaves the pickup out, so its grace notes may differ.
        const first = timeline.strokes.find((s) => s.kind !== 'grace' && s.tick >= 0)?.tick;
        for (const { sound, seconds } of inside) {
          if (!('stroke' in sound) || sound.stroke.tick < 0) continue;
          if (sound.stroke.kind === 'grace' && sound.stroke.tick === first) continue;
          expect(seconds - bar1.seconds).toBeCloseTo(alone.get(sound.stroke.id)!, 9);
        }
      }),
      runs(150),
    );
  });

  it('lets no limb strike twice at a time, in one pass and over the seam', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const seen = new Set<string>();
        for (const { start, pass } of take(asked, 3))
          for (const { sound, seconds } of strokesOf(pass)) {
            if (!('stroke' in sound)) continue;
            const key = `${sound.stroke.limb} ${(start + seconds).toFixed(7)}`;
            expect(seen).not.toContain(key);
            seen.add(key);
          }
      }),
      runs(150),
    );
  });

  it('joins its passes without a gap: every pass ends where the next one begins, on a beat', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const [first, second] = take({ ...asked, loop: true }, 2);
        expect(second.start).toBeCloseTo(first.start + first.pass.end, 9);
        const { places } = second.pass;
        expect(places[0].seconds).toBe(0);
        expect(places.every(({ seconds }, i) => i === 0 || seconds > places[i - 1].seconds)).toBe(true);
        expect(second.pass.end).toBeGreaterThan(places.at(-1)!.seconds);
      }),
      runs(150),
    );
  });
});
