import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { about } from '../../components/islands/player/about.ts';
import { checkOf, timelineOf } from '../../components/islands/player/engine.ts';
import { stepTo } from '../../components/islands/player/follow.ts';
import { tipPath } from '../../components/islands/player/heights.ts';
import { leadsOf, type PlayerProps } from '../../components/islands/player/props.ts';
import { tapped, type Taps } from '../../components/islands/player/tap.ts';
import { perform, printSticking, readPhrase } from '../../src/core/index.ts';
import { soundSays } from '../../src/words/player.ts';
import { runs, sticking } from '../helpers/arbitrary.ts';

const player = (texts: string[], more: Partial<PlayerProps> = {}): PlayerProps => ({
  id: 'a',
  cells: texts.map((each, index) => ({ id: `c${index}`, text: each })),
  meter: '4/4',
  grid: 4,
  tempo: { from: 60, to: 90 },
  leads: ['right', 'left', 'alternating'],
  ...more,
});

const FIVE_AND_ONE = player(['{>lR LL R}5', 'L']);
const limbs = (strokes: { limb: string }[]) => strokes.map(({ limb }) => limb).join('');

describe('what the controls know before the text is parsed', () => {
  test('the meter and the subdivision, handed in or from the head of the text', () => {
    expect(about(FIVE_AND_ONE)).toMatchObject({ grid: 4, slots: 'sixteenths', graces: true });
    const headed = player(['[6/8:3] R L R L R L'], { meter: undefined, grid: undefined });
    expect(about(headed)).toMatchObject({ meter: { text: '6/8', compound: true }, grid: 3, slots: 'eighths' });
    expect(about({ ...headed, cells: [{ id: 'g', text: '{[3/4:2] R L R L R L}2' }] }).meter.text).toBe('3/4');
  });

  test('a surface is no grace note', () => {
    expect(about(player(['R@ride L@floor R@rim L@bell']))).toMatchObject({ graces: false });
    expect(about(player(['l@tom1:R@snare L']))).toMatchObject({ graces: true });
  });

  test('grace notes are told from the text as they are from its strokes', () => {
    fc.assert(
      fc.property(sticking, (written) => {
        const sticks = printSticking(written);
        const bar = sticks.includes('[') ? { meter: undefined, grid: undefined } : {};
        const props = player([sticks], bar);
        const read = readPhrase({ ...props, fill: 'rests' });
        fc.pre(read.ok);
        const { strokes, bars } = perform(read.phrase);
        expect(about(props)).toMatchObject({
          graces: strokes.some(({ kind }) => kind === 'grace'),
          meter: { text: bars[0].meter },
          grid: bars[0].grid,
        });
      }),
      runs(500),
    );
  });
});

describe('what a press plays', () => {
  test('the bar in the chosen lead', () => {
    const start = (lead: 'written' | 'left' | 'alternating') =>
      limbs(timelineOf(FIVE_AND_ONE, lead, 'grace').strokes).slice(0, 10);
    expect(start('written')).toBe('LRLLRLRLLR');
    expect(start('left')).toBe('RLRRLRLRRL');
    expect(start('alternating')).toBe('LRLLRRLRRL');
  });

  test('the same strokes whatever the lead, so that letters can be rewritten', () => {
    const ids = (lead: 'written' | 'left') => timelineOf(FIVE_AND_ONE, lead, 'grace').strokes.map(({ id }) => id);
    expect(ids('left')).toEqual(ids('written'));
  });

  test('a check bar of single strokes, led by the same hand', () => {
    expect(limbs(checkOf(FIVE_AND_ONE, 'written').strokes)).toBe('RLRLRLRLRLRLRLRL');
    expect(limbs(checkOf(FIVE_AND_ONE, 'left').strokes)).toBe('LRLRLRLRLRLRLRLR');
  });

  test('a text that is not one throws, and names the player', () => {
    expect(() => timelineOf(player(['Q']), 'written', 'grace')).toThrow(/player "a".*"Q"/s);
  });

  test('leads begin with the first one offered', () => {
    expect(leadsOf({ leads: ['left', 'right'] })).toEqual(['left', 'written']);
    expect(leadsOf({ leads: [] })).toEqual(['written']);
  });
});

describe('what is said of the sound', () => {
  const REASONS = ['no-device', 'suspended', 'hidden', 'failed', undefined] as const;

  test('a sentence for every trouble, with what to do', () => {
    for (const state of ['interrupted', 'silent'] as const)
      for (const reason of REASONS) expect(soundSays({ state, reason })).toMatch(/\. .*(press|again).*\.$/i);
  });

  test('nothing where it was stopped by hand', () => {
    expect(soundSays({ state: 'stopped' })).toBe('');
    expect(soundSays({ state: 'stopped', reason: 'hidden' })).toContain('page was left');
  });
});

describe('tapping a tempo', () => {
  const tapAll = (times: number[]) => times.reduce<Taps>((taps, time) => tapped(taps, time), { times: [] });

  test('takes the mean of the gaps', () => {
    expect(tapAll([0]).tempo).toBeUndefined();
    expect(tapAll([100, 600]).tempo).toBe(120);
    expect(tapAll([0, 480, 1000, 1500]).tempo).toBe(120);
  });

  test('begins anew after a pause, and never looks further back than two bars', () => {
    expect(tapAll([0, 500, 5000, 6000]).tempo).toBe(60);
    const slowThenFast = [
      ...Array.from({ length: 8 }, (_, i) => i * 1000),
      ...Array.from({ length: 8 }, (_, i) => 7500 + i * 500),
    ];
    expect(tapAll(slowThenFast).tempo).toBe(120);
  });
});

describe('what is drawn while it plays', () => {
  test('without gliding, the line stands on the stroke that began last', () => {
    expect(stepTo([-100, 0, 5040, 5040, 10080], 10079.5)).toBe(5040);
    expect(stepTo([5040], 0)).toBe(0);
  });

  test('a stick comes down from its height and goes to the next one', () => {
    const dips = [
      { x: 20, from: 'high', to: 'low' },
      { x: 60, from: 'low', to: 'high' },
    ] as const;
    expect(tipPath(dips, 'high', 100)).toBe('M0 2H16L20 20L24 13H56L60 20L64 2H100');
    expect(tipPath([], 'low', 50)).toBe('M0 13H50');
  });
});
