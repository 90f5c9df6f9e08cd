import { describe, expect, it } from 'vitest';
import * as core from '../../src/core/index.ts';
import * as puzzle from '../../src/core/puzzle/index.ts';
import * as written from '../../src/core/written/index.ts';
import { phraseOf, stickingOf } from '../helpers/phrases.ts';

const text = '>lR LL@tom1 R+K -';
const sticking = stickingOf(text);
const phrase = phraseOf(text, { meter: '4/4', grid: 1 });
const timeline = core.perform(phrase);
const played = { bpm: 90, swing: 2, flamMs: 30, loop: true };
const cells = [
  { id: 'a', slots: 2, sticking: stickingOf('>R L'), times: { min: 0, max: 4 } },
  { id: 'b', slots: 1, sticking: stickingOf('K'), times: 2 },
];
const rules = { first: 'a', accentOn: [0], noJoins: [['b', 'b']], maxRun: 2, lead: 'written', barSlots: 2 };
const { barSlots, ...kept } = rules;
const arranging = { cells, slots: 4, barSlots, rules: kept, mostStates: 1000 };
const looping = { cells, slots: 4, rules: { maxRun: 2, noJoins: [['b', 'b']] } };
const laying = { cells: [{ id: 'a', sticking }], meter: '4/4', grid: 1, lead: 'written', pickup: 0, fill: 'exact' };
const reading = { ...laying, cells: [{ id: 'a', text }] };
const orchestration = [{ when: { accent: true, place: 'first', limb: 'R' }, to: ['tom1', 'floor'] }];
const orders = [
  ['a', 'b', 'c'],
  ['c', 'b', 'a'],
  ['b', 'a', 'c'],
];

/** What each function of core takes where everything is right; nested values are damaged one by one. */
const RIGHT: Record<string, unknown[]> = {
  against: [4, 3],
  againstText: [3, 2],
  arrangements: [arranging],
  barOfBeats: [12, 3],
  cellStarts: [3, 16],
  cellsOf: [stickingOf('{R L}2\nfeet: K - {K}2')],
  checkPhrase: [phrase, 'R'],
  compareTiming: [
    timeline,
    [{ seconds: 0.01, limb: 'R', level: 0.5 }, { seconds: 3 }],
    { ...played, bpm: [{ tick: 0, bpm: 90 }], passes: 2, window: 0.15 },
  ],
  countName: ['4/4', 4, 15, '1 e & a'],
  countNames: ['4/4', 4, '1 e & a'],
  countSyllables: ['4/4', 4, '1 e & a'],
  evenBars: [8],
  expand: [sticking.hands],
  faultText: ['R rR', { at: 2, found: 'r', expected: 'l', message: 'no' }],
  findSticking: [stickingOf('R L'), sticking, { rotated: true, mirrored: true, repeats: true }],
  fit: [3, 16],
  gapsBetween: [[0, 3, 6], 8],
  gapsOf: [timeline, 'R', { bpm: 90, flamMs: 30, loop: true }],
  gcd: [12, 16],
  handSpeed: ['singles', 125],
  hands: [timeline, 90, { limits: { single: 154 }, flamMs: 30, loop: true }],
  isGrid: [4],
  isHand: ['R'],
  isHigh: [timeline.strokes[0]],
  isSlot: [sticking.hands[0]],
  layPhrase: [laying],
  longestRuns: [timeline, 'R', true],
  loopArrangements: [looping],
  meterOf: ['4/4'],
  mirror: [sticking, { tom1: 'floor' }],
  motions: [timeline],
  neighbors: [['a', 'a', 'b']],
  otherHand: ['R'],
  parseSticking: [text],
  perform: [phrase, { flams: 'before', orchestration, counts: '1 e & a' }],
  placeOf: [18, 16],
  practicePath: [orders],
  printItems: [sticking.hands],
  printSlot: [sticking.hands[0]],
  printSticking: [sticking],
  quartersPerMinute: ['6/8', 60],
  rankArrangements: [
    { ...arranging, mostStates: 1000 },
    { order: 'easiest', take: 1 },
  ],
  readMeter: ['4/4'],
  readPhrase: [reading],
  resolution: [3, 16],
  sameSpeed: [120, 4, 3],
  sayCount: ['4 a'],
  saySlot: ['4/4', 4, 31, '1 e & a'],
  schedule: [timeline, played],
  scoreOrder: [arranging, ['a', 'b']],
  secondsAt: [timeline, { ...played, bpm: [{ tick: 0, bpm: 90 }] }],
  slotCount: [sticking.hands],
  slotMs: ['4/4', 4, 120],
  slotNames: ['4/4', 4],
  slotOfCount: ['4/4', 4, 'the a of 4', '1 e & a'],
  slotOfTick: ['4/4', 4, 75600],
  slotTicks: ['4/4', 4],
  slotsOf: ['4/4', 4],
  slotsOfCounts: ['4/4', 4, '1, 2 & and 4', '1 e & a'],
  slotsOnly: [sticking.hands],
  spread: [3, 8],
  swapChain: [orders[0], orders[1]],
  swapDistance: [orders[0], orders[1]],
  tempoAtRebound: ['4/4', 4, 'diddles', 62.5],
  tempoAtTurns: ['4/4', 4, 'singles', 6],
  thirtySecondMs: ['4/4', 120],
  turned: [[0, 3, 6], 8, 1],
  turnsOf: [4, 8],
  writtenNotes: [timeline, { staff: 'kit', diddles: 'slash' }],
};

/** They answer for any value: with a result, a fault or no. */
const TOTAL = ['parseSticking', 'isGrid', 'isHand'];

const WRONG: unknown[] = [
  undefined, null, NaN, -1, 0.5, Infinity, -Infinity, 5e-324, 1e308, 2 ** 53, '', 'nonsense', '\ud800', true, 7n, [], [null], {},
  { length: 1e9 }, Object.create(null), () => undefined, Symbol('none'),
]; // prettier-ignore

type Path = (string | number)[];

/** Every place in nested lists and objects. */
function places(value: unknown, depth = 6): Path[] {
  if (depth === 0 || typeof value !== 'object' || value === null) return [[]];
  const inner = Object.entries(value).flatMap(([key, one]) => places(one, depth - 1).map((path) => [key, ...path]));
  return [[], ...inner];
}

function damaged(value: unknown, [key, ...rest]: Path, wrong: unknown): unknown {
  if (key === undefined) return wrong;
  const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<string | number, unknown>;
  copy[key] = damaged(copy[key], rest, wrong);
  return copy;
}

/** Whether a number that is none stands anywhere in an answer that does not merely repeat what was given. */
function hasNaN(value: unknown, depth = 6): boolean {
  if (typeof value === 'number') return Number.isNaN(value);
  if (depth === 0 || typeof value !== 'object' || value === null) return false;
  const inner = value instanceof Map ? [...value.values()] : Object.values(value);
  return inner.some((one) => hasNaN(one, depth - 1));
}

function answerTo(name: string, given: unknown[]): { thrown?: unknown; found?: unknown } {
  try {
    const found = (core as unknown as Record<string, (...given: unknown[]) => unknown>)[name](...given);
    return { found: typeof found === 'function' ? found(5040) : found };
  } catch (thrown) {
    return { thrown };
  }
}

const told = (value: unknown): string => (typeof value === 'string' ? JSON.stringify(value) : typeof value === 'object' ? JSON.stringify(value) : String(value)); // prettier-ignore

/** Puzzles, and the steps by which notes are written, are not for callers from outside. */
const inside = (name: string): boolean => name in puzzle || (name in written && name !== 'writtenNotes');
const named = Object.entries(core).filter(([name, one]) => typeof one === 'function' && !inside(name));
const functions = named.map(([name]) => name).filter((name) => name !== 'TooLarge');

describe('malformed arguments', () => {
  it('are tried for every function there is', () => expect(Object.keys(RIGHT).sort()).toEqual(functions.sort()));

  it.each(functions)('of %s throw RangeError and nothing else, at any depth', (name) => {
    const right = RIGHT[name];
    expect(answerTo(name, right).thrown).toBeUndefined();
    const failures: string[] = [];
    for (const path of places(right).filter((each) => each.length > 0))
      for (const wrong of WRONG) {
        const { thrown, found } = answerTo(name, damaged(right, path, wrong) as unknown[]);
        if (thrown !== undefined && !(thrown instanceof RangeError && thrown.message.length > 3))
          failures.push(`${path.join('.')} = ${told(wrong)}: ${String(thrown)}`);
        else if (thrown instanceof RangeError && thrown.message.includes('call stack'))
          failures.push(`${path.join('.')} = ${told(wrong)}: ${thrown.message}`);
        else if (hasNaN(found)) failures.push(`${path.join('.')} = ${told(wrong)}: gives NaN`);
      }
    expect(failures).toEqual([]);
  });

  it.each(functions.filter((name) => !TOTAL.includes(name)))('of %s that cannot stand there are refused', (name) => {
    RIGHT[name].forEach((_, i) => {
      const given = damaged(RIGHT[name], [i], Symbol('none')) as unknown[];
      const { thrown, found } = answerTo(name, given);
      const refused = thrown instanceof RangeError || (found as { ok?: boolean } | undefined)?.ok === false;
      expect([i, refused]).toEqual([i, true]);
    });
  });
});
