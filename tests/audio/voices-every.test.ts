import { describe, expect, test } from 'vitest';
import { renderVoice, variantsOf, VOICES, type VoiceName } from '../../src/audio/voices/index.ts';
import { firstAbove, loudest, rmsBetween } from '../helpers/spectrum.ts';

const RATES = [44100, 48000];

function takes(name: VoiceName, rate: number): Float32Array[] {
  return Array.from({ length: variantsOf(name) }, (_, variant) => renderVoice(name, rate, variant));
}

describe.each(RATES)('at %i Hz', (rate) => {
  describe.each(VOICES)('%s', (name) => {
    const all = takes(name, rate);

    test('has whole, unclipped samples around zero', () => {
      for (const take of all) {
        expect(take.every(Number.isFinite)).toBe(true);
        expect(loudest(take)).toBeLessThan(0.75);
        expect(loudest(take)).toBeGreaterThan(0.04);
        const mean = take.reduce((sum, sample) => sum + sample, 0) / take.length;
        expect(Math.abs(mean)).toBeLessThan(0.001 * loudest(take));
      }
    });

    test('starts at once, and every take at the same time', () => {
      // −40 dB of the peak within a millisecond; −12 dB, the attack, within 0.2 ms of each other.
      for (const take of all) expect(firstAbove(take, 0.01)).toBeLessThanOrEqual(0.001 * rate);
      const attacks = all.map((take) => firstAbove(take, 0.25));
      expect(Math.max(...attacks)).toBeLessThanOrEqual(0.001 * rate);
      expect(Math.max(...attacks) - Math.min(...attacks)).toBeLessThanOrEqual(0.0002 * rate);
    });

    test('ends in silence, without a step', () => {
      for (const take of all) {
        const end = take.length / rate;
        expect(end).toBeLessThanOrEqual(2.3);
        expect(rmsBetween(take, rate, end - 0.005, end)).toBeLessThan(20 * Math.log10(loudest(take)) - 60);
        expect(Math.abs(take.at(-1)!)).toBeLessThan(1e-5);
      }
    });

    test('is the same each time it is rendered, and no two takes are alike', () => {
      expect(renderVoice(name, rate, 0)).toEqual(all[0]);
      const first = all.map((take) => take.slice(0, 480).join());
      expect(new Set(first).size).toBe(all.length);
    });
  });
});

describe('what is refused', () => {
  test('a voice, a variant or a rate that there is not', () => {
    expect(() => renderVoice('gong' as VoiceName, 48000, 0)).toThrow(/"gong" must be one of downbeat/);
    expect(() => renderVoice('tap', 48000, 10)).toThrow('variant 10 of "tap" must be a whole number from 0 to 9');
    expect(() => renderVoice('tap', 48000, 0.5)).toThrow(RangeError);
    expect(() => renderVoice('tap', 0, 0)).toThrow('sample rate 0 must be from 8000 to 384000');
    expect(() => renderVoice('tap', Number.NaN, 0)).toThrow(RangeError);
  });
});
