import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlayRequest, Position } from '../../src/audio/index.ts';
import { Scheduler, type Instrument } from '../../src/audio/scheduler/scheduler.ts';
import type { Note } from '../../src/audio/sequence/sequence.ts';
import { runs } from '../helpers/arbitrary.ts';
import { requestOf } from './requests.ts';

interface Triggered {
  note: Note;
  when: number;
}

/** A instrument whose clock is set by hand and which writes down what was ordered and not taken back. */
class TestInstrument implements Instrument {
  time = 0;
  triggered: Triggered[] = [];

  now(): number {
    return this.time;
  }

  trigger(note: Note, when: number): { cancel(): void } {
    const entry = { note, when };
    if (when < this.time) throw new Error(`ordered for ${when} at ${this.time}`);
    this.triggered.push(entry);
    return {
      cancel: () => {
        if (entry.when < this.time) throw new Error('taken back after it sounded');
        this.triggered = this.triggered.filter((other) => other !== entry);
      },
    };
  }

  get strokes(): { name: string; when: number }[] {
    return this.triggered
      .flatMap(({ note, when }) => ('stroke' in note ? [{ name: note.stroke.id, when }] : []))
      .sort((a, b) => a.when - b.when);
  }
}

/** Plays on a clock that steps as the page's timer does; requests take over at their times. */
function playThrough(request: PlayRequest, seconds: number, changes: { at: number; request: PlayRequest }[] = []) {
  const instrument = new TestInstrument();
  const scheduler = new Scheduler(instrument);
  scheduler.start(request);
  const steps = Array.from({ length: Math.ceil(seconds / 0.2) }, (_, i) => i * 0.2);
  const moments = [...steps.map((at) => ({ at, request: undefined })), ...changes].sort((a, b) => a.at - b.at);
  for (const moment of moments) {
    instrument.time = moment.at;
    if (moment.request) scheduler.change(moment.request);
    scheduler.scheduleAhead(1.5);
  }
  return { instrument, scheduler };
}

const SIXTEEN = '{R L}8';
const sixteenths = (rest: Partial<PlayRequest> = {}): PlayRequest =>
  requestOf(SIXTEEN, { meter: '4/4', grid: 4 }, { bpm: 120, ...rest });

/** Slots of a bar of sixteen in the order they were played: a run without gap or double counts up and wraps. */
const slots = (instrument: TestInstrument): number[] =>
  instrument.strokes.map(({ name }) => Number(name.split('.')[1]));
const isUnbroken = (played: number[], of = 16): boolean =>
  played.every((slot, i) => i === 0 || slot === (played[i - 1] + 1) % of);

describe('the scheduler', () => {
  it('begins 0.2 s after the press and nothing earlier, grace notes included', () => {
    const { instrument } = playThrough(requestOf('lR L R L', { meter: '4/4', grid: 1 }, { flamMs: 80 }), 1);
    expect(instrument.strokes[0]).toEqual({ name: '1.0.0g0', when: expect.closeTo(0.2, 9) });
    expect(instrument.strokes[1].when).toBeCloseTo(0.28, 9);
  });

  it('goes round without a gap', () => {
    const { instrument } = playThrough(sixteenths(), 20);
    const { strokes } = instrument;
    expect(isUnbroken(slots(instrument))).toBe(true);
    strokes.forEach(({ when }, i) => expect(when).toBeCloseTo(0.2 + i * 0.125, 9));
  });

  it('tells when it is over', () => {
    const { scheduler, instrument } = playThrough(sixteenths({ loop: false }), 6);
    expect(instrument.strokes).toHaveLength(16);
    expect(scheduler.end).toBeCloseTo(2.2, 9);
    expect(playThrough(sixteenths(), 6).scheduler.end).toBeUndefined();
  });

  it('leaves out what a page that stood still could not order in time', () => {
    const instrument = new TestInstrument();
    const scheduler = new Scheduler(instrument);
    scheduler.start(sixteenths());
    scheduler.scheduleAhead(1.5);
    instrument.time = 10;
    scheduler.scheduleAhead(1.5);
    const late = instrument.strokes.filter(({ when }) => when > 1.6);
    expect(late[0].when).toBeGreaterThanOrEqual(10);
    expect(late[0].when).toBeLessThan(10.125);
  });
});

describe('a change', () => {
  const spacing = (instrument: TestInstrument): number[] =>
    instrument.strokes.slice(1).map(({ when }, i) => when - instrument.strokes[i].when);

  it('of tempo goes on with the next stroke, none missing, none twice', () => {
    const { instrument } = playThrough(sixteenths(), 8, [{ at: 3.01, request: sixteenths({ bpm: 60 }) }]);
    expect(isUnbroken(slots(instrument))).toBe(true);
    const gaps = spacing(instrument).map((gap) => Math.round(gap * 1e6) / 1e6);
    expect(new Set(gaps)).toEqual(new Set([0.125, 0.25]));
    const first = gaps.indexOf(0.25);
    expect(instrument.strokes[first].when, 'soon after the change').toBeLessThan(3.25);
    expect(gaps.slice(first).every((gap) => gap === 0.25)).toBe(true);
  });

  it('of flam width breaks no flam in two', () => {
    const flams = (flamMs: number): PlayRequest => requestOf('{lR}16', { meter: '4/4', grid: 4 }, { bpm: 60, flamMs });
    for (let at = 2; at < 2.5; at += 0.01) {
      const { instrument } = playThrough(flams(30), 4, [{ at, request: flams(80) }]);
      const names = instrument.strokes.map(({ name }) => name);
      names.forEach((name, i) => expect(name.endsWith('g0'), `${at} s, ${name}`).toBe(i % 2 === 0));
      expect(isUnbroken(slots(instrument).filter((_, i) => i % 2 === 1))).toBe(true);
    }
  });

  it('of swing leaves the beats where they are', () => {
    const eighths = (swing: number): PlayRequest =>
      requestOf('{R L}4', { meter: '4/4', grid: 2 }, { bpm: 120, swing, click: 'beats' });
    const { instrument } = playThrough(eighths(1), 8, [{ at: 3.1, request: eighths(3) }]);
    const clicks = instrument.triggered.filter(({ note }) => 'click' in note).map(({ when }) => when);
    clicks.sort((a, b) => a - b).forEach((when, i) => expect(when).toBeCloseTo(0.2 + i * 0.5, 9));
    expect(isUnbroken(slots(instrument), 8)).toBe(true);
  });

  it('of the check keeps the place in the pattern, and in the check where there is none any more', () => {
    const checked = requestOf(SIXTEEN, { meter: '4/4', grid: 4, checked: 1 }, { bpm: 120 });
    const on = playThrough(sixteenths(), 12, [{ at: 3.3, request: checked }]);
    const off = playThrough(checked, 12, [{ at: 1.1, request: sixteenths() }]);
    for (const { instrument } of [on, off]) expect(isUnbroken(slots(instrument))).toBe(true);
    expect(off.scheduler.positionAt(11)?.phase).toBe('pattern');
    const phases = [4.5, 6.5, 8.5, 10.5].map((at) => on.scheduler.positionAt(at)?.phase);
    expect(new Set(phases).size, 'remembered for two seconds').toBeGreaterThan(1);
  });

  it('in the count-in goes on counting in', () => {
    const { instrument } = playThrough(sixteenths({ countIn: true }), 8, [
      { at: 1, request: sixteenths({ bpm: 240 }) },
    ]);
    const clicks = instrument.triggered.filter(({ note }) => 'click' in note);
    expect(clicks).toHaveLength(4);
    expect(slots(instrument)[0]).toBe(0);
  });

  it('of lead keeps the place', () => {
    const left = requestOf(SIXTEEN, { meter: '4/4', grid: 4, lead: 'left' }, { bpm: 120 });
    const { instrument } = playThrough(sixteenths(), 6, [{ at: 2.01, request: left }]);
    expect(isUnbroken(slots(instrument))).toBe(true);
  });

  it('to a loop that comes in the last beat still goes round', () => {
    const { instrument } = playThrough(sixteenths({ loop: false }), 6, [{ at: 2.08, request: sixteenths() }]);
    expect(instrument.strokes.length).toBeGreaterThan(40);
    expect(isUnbroken(slots(instrument))).toBe(true);
  });

  it('away from a loop ends with this pass', () => {
    const { instrument, scheduler } = playThrough(sixteenths(), 8, [{ at: 3, request: sixteenths({ loop: false }) }]);
    expect(instrument.strokes).toHaveLength(32);
    expect(scheduler.end).toBeCloseTo(4.2, 6);
  });

  it('whatever it is and however many follow each other: no stroke is missing or doubled', () => {
    const change = fc.record({
      at: fc.double({ min: 0, max: 10, noNaN: true }),
      request: fc
        .record({
          bpm: fc.integer({ min: 40, max: 300 }),
          swing: fc.constantFrom(1, 2, 3),
          flamMs: fc.integer({ min: 10, max: 80 }),
          click: fc.constantFrom('off' as const, 'beats' as const, 'slots' as const),
          countIn: fc.boolean(),
        })
        .map((rest) => requestOf('{lR rL}8', { meter: '4/4', grid: 4 }, rest)),
    });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 12 }), (changes) => {
        const start = requestOf('{lR rL}8', { meter: '4/4', grid: 4 }, { bpm: 120 });
        const { instrument } = playThrough(
          start,
          10,
          changes.sort((a, b) => a.at - b.at),
        );
        const strokes = instrument.strokes.filter(({ name }) => !name.endsWith('g0'));
        const played = strokes.map(({ name }) => Number(name.split('.')[1]));
        expect(isUnbroken(played)).toBe(true);
        instrument.strokes.forEach(({ name }, i) => expect(name.endsWith('g0')).toBe(i % 2 === 0));
      }),
      runs(60),
    );
  });
});

describe('positions', () => {
  const at = (request: PlayRequest, seconds: number, moment: number): Position | undefined =>
    playThrough(request, seconds).scheduler.positionAt(moment);

  it('count up to bar 1 in the count-in, in beats', () => {
    const request = sixteenths({ countIn: true });
    expect(at(request, 1, 0.1)).toBeUndefined();
    expect(at(request, 1, 0.2 + 0.625)).toMatchObject({
      phase: 'count-in',
      pass: 1,
      bar: 0,
      tick: -60480 + 5040,
      count: '2',
      lit: [],
    });
  });

  it('give bar, tick, count and pass in the pattern', () => {
    expect(at(sixteenths(), 4, 2.2 + 0.25 + 0.0625)).toMatchObject({ phase: 'pattern', pass: 2, bar: 1, count: '&' });
    expect(at(sixteenths(), 4, 2.2 + 0.3125)?.tick).toBeCloseTo(2.5 * 5040, 3);
  });

  it('follow the swing', () => {
    const request = requestOf('R L', { meter: '1/4', grid: 2 }, { bpm: 60, swing: 3 });
    expect(at(request, 1, 0.2 + 0.375)?.tick).toBeCloseTo(5040, 3);
    expect(at(request, 1, 0.2 + 0.75)?.tick).toBeCloseTo(10080, 3);
  });

  it('light a stroke from its onset for 0.12 s, and no longer than it lasts', () => {
    expect(at(sixteenths({ bpm: 300 }), 1, 0.2 + 0.02)?.lit).toEqual(['1.0.0']);
    expect(at(sixteenths({ bpm: 300 }), 1, 0.2 + 0.06)?.lit).toEqual(['1.1.0']);
    expect(at(sixteenths({ bpm: 60 }), 1, 0.2 + 0.11)?.lit).toEqual(['1.0.0']);
    expect(at(sixteenths({ bpm: 60 }), 1, 0.2 + 0.13)?.lit).toEqual([]);
  });

  it('do not light the hand that is not heard', () => {
    expect(at(sixteenths({ heard: 'L' }), 1, 0.22)?.lit).toEqual([]);
  });

  it('show a pickup as bar 0 of the pattern, over the count-in too', () => {
    const request = requestOf('L R {R L}8', { meter: '4/4', grid: 4, pickup: 2 }, { bpm: 60, countIn: true });
    expect(at(request, 5, 0.2 + 3.4)).toMatchObject({ phase: 'count-in', count: '4' });
    expect(at(request, 5, 0.2 + 3.51)).toMatchObject({ phase: 'pattern', bar: 0, count: '&', lit: ['0.14.0'] });
  });

  it('count as the request says', () => {
    const request = requestOf('R L R', { meter: '1/4', grid: 3 }, { bpm: 60, countSystem: '1 ka di mi' });
    expect(at(request, 1, 0.2 + 0.4)?.count).toBe('ki');
  });
});
