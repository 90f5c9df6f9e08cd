import { describe, expect, test } from 'vitest';
import { checkOf, timelineOf } from '../../components/islands/player/engine.ts';
import { stepTo } from '../../components/islands/player/playhead.ts';
import { tipPath } from '../../components/islands/player/heights.ts';
import { leadsOf, type PlayerProps } from '../../components/islands/player/props.ts';
import { tapped, type Taps } from '../../components/islands/player/tap.ts';
import { soundSays } from '../../src/words/player.ts';

const player = (texts: string[], more: Partial<PlayerProps> = {}): PlayerProps => ({
  id: 'a',
  cells: texts.map((each, index) => ({ id: `c${index}`, text: each })),
  meter: '4/4',
  grid: 4,
  compound: false,
  slots: 'sixteenths',
  graces: true,
  tempo: { from: 60, to: 90 },
  leads: ['right', 'left', 'alternating'],
  ...more,
});

const FIVE_AND_ONE = player(['{>lR LL R}5', 'L']);
const limbs = (strokes: { limb: string }[]) => strokes.map(({ limb }) => limb).join('');

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
  const REASONS = ['no-output', 'loading', 'sounds', 'suspended', 'no-device', 'closed', 'failed', undefined] as const;

  test('a sentence for every trouble, with what to do', () => {
    for (const reason of REASONS) expect(soundSays({ state: 'silent', reason })).toMatch(/\. Press again .*\.$/);
    expect(soundSays({ state: 'interrupted', reason: 'suspended' })).toMatch(/press to begin again\.$/);
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
