import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { schedule, secondsAt } from '../../src/core/index.ts';
import type { PlayRequest } from '../../src/audio/index.ts';
import { openingPass, passAfter, type ScheduledPass } from '../../src/audio/scheduler/passes.ts';
import { sequenceOf, type NoteEvent, type PassTimes } from '../../src/audio/sequence/sequence.ts';
import { runs } from '../helpers/arbitrary.ts';
import { ms, nameOf, requestOf } from './requests.ts';

const SIXTEEN = '{R L}8';
const IN_FOUR = { meter: '4/4', grid: 4 };

/** The first passes of a request, fewer where it ends before. */
function take(request: PlayRequest, passes: number): ScheduledPass[] {
  const taken = [openingPass(sequenceOf(request), 0)];
  for (let next = passAfter(taken[0]); next && taken.length < passes; next = passAfter(next)) taken.push(next);
  return taken;
}

const timesOf = ({ start, times }: ScheduledPass): [string, number][] =>
  times.events.map((event) => [nameOf(event), ms(start + event.seconds)]);

const strokesOf = (pass: PassTimes): NoteEvent[] => pass.events.filter(({ note }) => 'stroke' in note);

/** Phases of the bars of a pass in order, a letter a bar. */
function barsOf({ slots }: PassTimes): string {
  const letters = { 'count-in': 'i', check: 'c', pattern: 'p' };
  return slots
    .filter(
      ({ ownTick, bar, phase }, i) =>
        i === 0 || bar !== slots[i - 1].bar || phase !== slots[i - 1].phase || ownTick < slots[i - 1].ownTick,
    )
    .map(({ phase, bar }) => (phase === 'pattern' && bar === 0 ? 'u' : letters[phase]))
    .join('');
}

describe('a pass', () => {
  it('begins with the first bar where there is no count-in', () => {
    const [first, second] = take(requestOf('R L R L', { meter: '4/4', grid: 1 }), 2);
    expect(timesOf(first).map(([, at]) => at - ms(first.times.slots[0].seconds))).toEqual([0, 1000, 2000, 3000]);
    expect(ms(second.start - first.times.slots[0].seconds)).toBe(4000);
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
    const from = first.times.slots[0].seconds;
    const graces = [first, second, third].map((pass) => ms(pass.start + pass.times.events[0].seconds - from));
    expect(graces).toEqual([-40, 960, 1960]);
    const [tight, next] = take(requestOf('lR L R L', { meter: '1/4', grid: 4 }, { flamMs: 80, bpm: 300 }), 2);
    expect(ms(next.times.events[0].seconds)).toBe(-25);
    expect(ms(tight.times.events[0].seconds - tight.times.slots[0].seconds)).toBe(-80);
  });
});

describe('check and pattern', () => {
  it.each([
    [1, 'cp'],
    [2, 'ccpp'],
    [4, 'ccccpppp'],
  ] as const)('take turns, %i bars at a time: %s', (bars, order) => {
    const [first, second] = take(requestOf(SIXTEEN, { ...IN_FOUR, checked: bars }), 2);
    expect(barsOf(first.times)).toBe(order);
    expect(barsOf(second.times)).toBe(order);
  });

  it('let a pattern of more bars play whole', () => {
    const [first] = take(requestOf('{R L}24', { ...IN_FOUR, checked: 1 }), 1);
    expect(barsOf(first.times)).toBe('cppp');
  });

  it('count in what comes first', () => {
    const [first] = take(requestOf(SIXTEEN, { ...IN_FOUR, checked: 1 }, { countIn: true }), 1);
    expect(barsOf(first.times)).toBe('icp');
  });
});

describe('a pickup', () => {
  const PICKUP = 'L R {R L}8';
  const laid = { ...IN_FOUR, pickup: 2 };
  const early = (pass: PassTimes): string[] =>
    strokesOf(pass)
      .filter(({ note }) => 'stroke' in note && note.stroke.bar === 0)
      .map(nameOf);

  it('sounds at the end of the count-in', () => {
    const [first, second] = take(requestOf(PICKUP, laid, { countIn: true }), 2);
    expect(barsOf(first.times)).toBe('iup');
    expect(timesOf(first).slice(3, 7)).toEqual([
      ['beat', 3000],
      ['L', 3500],
      ['R', 3750],
      ['R', 4000],
    ]);
    expect(early(second.times), 'where the bar before is full').toEqual([]);
  });

  it('comes before bar 1 where nobody counts in', () => {
    const [first] = take(requestOf(PICKUP, laid), 1);
    expect(first.times.events[0].seconds).toBe(first.times.slots[0].seconds);
    expect(barsOf(first.times)).toBe('up');
    expect(first.times.slots[0].ownTick).toBe(-10080);
  });

  it('takes the place of the end of the check', () => {
    const [first, second] = take(requestOf(PICKUP, { ...laid, checked: 1 }, { countIn: true }), 2);
    expect(barsOf(first.times)).toBe('icup');
    expect(barsOf(second.times)).toBe('cup');
    for (const { times } of [first, second]) {
      expect(early(times)).toEqual(['L', 'R']);
      expect(strokesOf(times)).toHaveLength(14 + 2 + 16);
    }
  });

  it('comes again at the end of a bar that leaves room for it', () => {
    const [, second] = take(requestOf('L R {R L}7 - -', laid), 2);
    expect(early(second.times)).toEqual(['L', 'R']);
    expect(barsOf(second.times)).toBe('pu');
  });
});

describe('grace notes that were written out', () => {
  it('sound before the first beat, also from the end of each round', () => {
    const [first, second] = take(requestOf('lR L R L', { meter: '4/4', grid: 1, flams: 'before' }), 2);
    const from = first.times.slots[0].seconds;
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
    const [, { start, times }] = take(request, 2);
    const played = (events: NoteEvent[]): number[] => events.map(({ seconds }) => ms(start + seconds));
    expect(played(times.events.filter(({ note }) => 'click' in note))).toEqual(played(strokesOf(times)));
    expect(strokesOf(times).map(({ seconds }) => ms(seconds))).toEqual([0, 666.667, 1000, 1666.667]);
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
    const alone = sequenceOf({ ...request, heard: 'L' }).again.events;
    expect(new Set(alone.map(nameOf))).toEqual(new Set(['l', 'L', 'bar', 'beat']));
    const all = sequenceOf(request).again.events.map((event) => `${nameOf(event)} ${event.seconds}`);
    for (const event of alone) expect(all).toContain(`${nameOf(event)} ${event.seconds}`);
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

describe('every sequence', () => {
  it('takes its times from core alone: within a run they are those of the timeline by itself', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const { timeline, bpm, swing, flamMs } = asked;
        const alone = new Map(schedule(timeline, { bpm, swing, flamMs }).map(({ id, seconds }) => [id, seconds]));
        const at = secondsAt(timeline, { bpm, swing });
        const { slots, events } = sequenceOf(asked).again;
        const bar1 = slots.find(({ phase, ownTick }) => phase === 'pattern' && ownTick === 0)!;
        const inside = events.filter(
          ({ note, anchor, lit }) =>
            'stroke' in note &&
            lit?.phase === 'pattern' &&
            anchor > bar1.seconds + at(timeline.bars[0].tick + 1) &&
            anchor < bar1.seconds + at(timeline.ticks - 1),
        );
        // Before the first stroke of bar 1 another one stands in a sequence that leaves the pickup out, so its grace notes may differ.
        const first = timeline.strokes.find((s) => s.kind !== 'grace' && s.tick >= 0)?.tick;
        for (const { note, seconds } of inside) {
          if (!('stroke' in note) || note.stroke.tick < 0) continue;
          if (note.stroke.kind === 'grace' && note.stroke.tick === first) continue;
          expect(seconds - bar1.seconds).toBeCloseTo(alone.get(note.stroke.id)!, 9);
        }
      }),
      runs(150),
    );
  });

  it('lets no limb strike twice at a time, in one pass and over the seam', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const seen = new Set<string>();
        for (const { start, times } of take(asked, 3))
          for (const { note, seconds } of strokesOf(times)) {
            if (!('stroke' in note)) continue;
            const key = `${note.stroke.limb} ${(start + seconds).toFixed(7)}`;
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
        expect(second.start).toBeCloseTo(first.start + first.times.end, 9);
        const { slots } = second.times;
        expect(slots[0].seconds).toBe(0);
        expect(slots.every(({ seconds }, i) => i === 0 || seconds > slots[i - 1].seconds)).toBe(true);
        expect(second.times.end).toBeGreaterThan(slots.at(-1)!.seconds);
      }),
      runs(150),
    );
  });
});
