import { describe, expect, it } from 'vitest';
import {
  cellsOf,
  hands,
  mirror,
  parseSticking,
  perform,
  printSticking,
  schedule,
  type Sticking,
} from '../../src/core/index.ts';
import { phraseOf, stickingOf } from '../helpers/phrases.ts';

/** A quiet machine takes under 50 ms for each; a busy one several times as much, and what is not linear took seconds. */
const MOST_MS = 400;

/** Processor time of the quickest of five runs, so that what else the machine does counts little. */
function quickest(run: () => unknown): number {
  const once = (): number => {
    const from = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1000;
  };
  return Math.min(...Array.from({ length: 5 }, once));
}

/** As many slots as 32 bars can hold; in each of them a flam, on cymbals with a kick, or many cells. */
const LONG = {
  flams: '{lR rL}1920',
  'cymbal flams': '{lr@choke:lR+K K}1920',
  cells: '{>lR LL R}1280',
  singles: '{R}3840',
};

describe.each(Object.entries(LONG))('the longest phrase of %s', (_, text) => {
  const phrase = phraseOf(text, { meter: '15/4', grid: 8 });
  const [closed, before] = [perform(phrase), perform(phrase, { flams: 'before' })];

  it.each([
    ['laid', () => phraseOf(text, { meter: '15/4', grid: 8, lead: 'alternating' })],
    ['performed', () => perform(phrase)],
    ['written out before the beat', () => perform(phrase, { flams: 'before' })],
    ['written out on the beat', () => perform(phrase, { flams: 'on' })],
    ['scheduled', () => schedule(closed, { bpm: 90, swing: 2, loop: true })],
    ['looked at for the hands', () => hands(closed, 90, { loop: true })],
    ['looked at for the hands, written out', () => hands(before, 90)],
  ])(`is %s in ${MOST_MS} ms`, (_how, run) => expect(quickest(run)).toBeLessThan(MOST_MS));
});

const LONGEST = {
  strokes: Array.from({ length: 2048 }, () => 'R').join(' '),
  holds: '{R}1 {_}4095',
  'holds of the feet': '{R}2 {R}4000\nfeet: K {_}4001',
  'one cell over many feet': '{{R}4000}1 L\nfeet: {K}4001',
  'holds in a group of a group': 'R {{_}3 {R L}1000}2',
  surfaces: Array.from({ length: 204 }, () => 'l@cowbell:R@rimshot').join(' '),
  'chords that need a colon when mirrored': Array.from({ length: 372 }, () => 'R@tom1+LR').join(' '),
  groups: '{{R}64}64',
};

describe.each(Object.entries(LONGEST))('the longest text of %s', (_, text) => {
  const readable = (sticking: Sticking): void => expect(stickingOf(printSticking(sticking))).toEqual(sticking);

  it('can be read again once it is printed, mirrored or cut', () => {
    const sticking = stickingOf(text);
    readable(sticking);
    readable(mirror(sticking));
    cellsOf(sticking).slice(0, 5).forEach(readable);
  });

  it(`is read, printed, mirrored and cut in ${MOST_MS} ms`, () => {
    expect(quickest(() => cellsOf(mirror(stickingOf(text))).map(printSticking))).toBeLessThan(MOST_MS);
  });
});

describe('a text at the limit of characters', () => {
  const chords = (n: number): string => Array.from({ length: n }, () => 'R@tom1+LR').join(' ');

  it('is refused where its mirror would print longer than a text may be', () => {
    expect(chords(409).length).toBeLessThan(4096);
    expect(parseSticking(chords(409)).ok).toBe(false);
  });

  it('throws for a kit whose names would make it longer than a text may be', () => {
    const sticking = stickingOf(LONGEST.strokes);
    expect(() => mirror(sticking, { snare: 'cowbell' })).toThrow('at most 4096 characters');
    expect(() => mirror(sticking, { snare: 'gong' as 'snare' })).toThrow(RangeError);
  });
});
