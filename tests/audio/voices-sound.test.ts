import { describe, expect, test } from 'vitest';
import { soundOf, variantsOf, voiceOf, VOICES, voicesOf } from '../../src/audio/voices/index.ts';
import { SURFACES, type Stroke, type Timeline } from '../../src/core/index.ts';
import { timelineOf } from '../helpers/phrases.ts';

const bar = (text: string, grid: number) => timelineOf(text, { meter: '4/4', grid, fill: 'rests' });
const voices = (text: string) => bar(text, 4).strokes.map(voiceOf);
const gains = ({ strokes }: Timeline, pass = 0) => strokes.map((stroke) => 20 * Math.log10(soundOf(stroke, pass).gain));

/** Chance moves a level by half a decibel at most. */
const SPREAD = 0.51;

describe('which voice a stroke has', () => {
  test('on the snare by what it is', () => {
    expect(voices('>R L (R) Lz')).toEqual(['accent', 'tap', 'ghost', 'buzz']);
    expect(voices('>lR')).toEqual(['grace', 'accent']);
    expect(voices('K H')).toEqual(['kick', 'pedal']);
  });

  test('on the toms and the hats by accent', () => {
    expect(voices('>R@tom1 R@tom1 >R@hat L@hat')).toEqual(['tom1', 'tom1-tap', 'hat', 'hat-tap']);
    expect(voices('>l@floor:R@snare')).toEqual(['floor-tap', 'accent']);
  });

  test('every surface has a voice, struck any way', () => {
    const [stroke] = bar('R', 4).strokes as [Stroke];
    for (const surface of SURFACES) {
      for (const accent of [true, false]) expect(VOICES).toContain(voiceOf({ ...stroke, surface, accent }));
    }
  });

  test('a timeline names its voices once, in the order they are needed', () => {
    expect(voicesOf(bar('>lR LL R K', 4))).toEqual(['grace', 'accent', 'tap', 'kick']);
  });
});

describe('how a stroke is played', () => {
  test('the same in the same round, never quite the same in the next', () => {
    const { strokes } = bar('>lR LL R >rL RR L', 3);
    for (const stroke of strokes) {
      expect(soundOf(stroke, 0)).toEqual(soundOf(stroke, 0));
      expect(soundOf(stroke, 1).gain).not.toBe(soundOf(stroke, 0).gain);
      expect(soundOf(stroke, 1).variant).not.toBe(soundOf(stroke, 0).variant);
    }
  });

  test('variants exist, and belong to the hand', () => {
    for (let pass = 0; pass < 12; pass++) {
      for (const stroke of bar('>lR LL (R) rrL RlR@tom1 Lz RL@ride R+K', 4).strokes) {
        const { voice, variant } = soundOf(stroke, pass);
        expect(variant).toBeLessThan(variantsOf(voice));
        if (stroke.limb === 'R' || stroke.limb === 'L') expect(variant % 2).toBe(stroke.limb === 'L' ? 1 : 0);
      }
    }
  });

  test.each([
    ['singles', '{R L}8', 4],
    ['doubles', '{R R L L}4', 4],
    ['diddles', '{RR LL}8', 4],
    ['flam drags', '{>lR LL R}4', 3],
    ['one hand', '{R}16', 4],
  ])('%s: no stroke repeats the take of the one before by that hand', (_, text, grid) => {
    const last = new Map<string, string>();
    for (const stroke of bar(text, grid).strokes) {
      const { voice, variant } = soundOf(stroke, 0);
      const key = `${stroke.limb} ${voice}`;
      expect(`${variant}`).not.toBe(last.get(key));
      last.set(key, `${variant}`);
    }
  });

  test('the second of a diddle is a little softer', () => {
    const all = gains(bar('{RR LL}8', 4));
    const mean = (which: number) => all.filter((_, i) => i % 2 === which).reduce((sum, gain) => sum + gain, 0) / 16;
    expect(mean(0) - mean(1)).toBeGreaterThan(0.7);
    expect(mean(0) - mean(1)).toBeLessThan(1.7);
  });

  test('a grace on a tom is softer than any primary there', () => {
    const [grace, primary] = gains(bar('l@tom1:R@tom1', 4)) as [number, number];
    expect(primary - grace).toBeGreaterThan(8 - 2 * SPREAD);
    const [low, ghost] = gains(bar('(l@tom1:R@tom1)', 4)) as [number, number];
    expect(ghost - low).toBeGreaterThan(2 - 2 * SPREAD);
  });

  test('a strong accent is louder, an unaccented cymbal softer', () => {
    const [plain, strong] = gains(bar('>R ^R', 4)) as [number, number];
    expect(strong - plain).toBeGreaterThan(1.5 - 2 * SPREAD);
    const [accent, soft, ghost] = gains(bar('>R@ride R@ride (R@ride)', 4)) as [number, number, number];
    expect(accent - soft).toBeGreaterThan(3 - 2 * SPREAD);
    expect(soft - ghost).toBeGreaterThan(6 - 2 * SPREAD);
  });

  test('hands lie a little to their own side, the hats left, the floor tom right', () => {
    const pans = bar('R L R@hat R@floor K', 4).strokes.map((stroke) => soundOf(stroke, 0).pan);
    expect(pans[0]).toBeGreaterThan(0);
    expect(pans[1]).toBe(-pans[0]);
    expect(pans[2]).toBeLessThan(-0.1);
    expect(pans[3]).toBeGreaterThan(0.1);
    expect(pans[4]).toBe(0);
  });
});
