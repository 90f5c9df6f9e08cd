import { describe, expect, test } from 'vitest';
import { renderRoom, ROOM_SECONDS } from '../../src/audio/voices/index.ts';
import { decibels, energies, rmsBetween } from '../helpers/spectrum.ts';

describe.each([44100, 48000])('the room at %i Hz', (rate) => {
  const channels = renderRoom(rate) as [Float32Array, Float32Array];

  test('has two channels of one energy, the same at every rate', () => {
    expect(channels).toHaveLength(2);
    for (const channel of channels) {
      expect(channel.length).toBe(Math.ceil(ROOM_SECONDS * rate));
      expect(channel.reduce((sum, sample) => sum + sample * sample, 0)).toBeCloseTo(48000 / rate, 4);
    }
  });

  test('answers after the stroke, never with it', () => {
    // A wall two thirds of a meter away answers after 4 ms (sound goes 343 m a second).
    for (const channel of channels) {
      expect(rmsBetween(channel, rate, 0, 0.004)).toBeLessThan(-90);
      expect(rmsBetween(channel, rate, 0.004, 0.03)).toBeGreaterThan(-40);
    }
  });

  test('dies away within its time and ends at nothing', () => {
    for (const channel of channels) {
      expect(rmsBetween(channel, rate, 0.2, 0.25)).toBeLessThan(rmsBetween(channel, rate, 0.02, 0.07) - 25);
      expect(Math.abs(channel.at(-1)!)).toBeLessThan(1e-6);
    }
  });

  test('loses its highs first', () => {
    for (const channel of channels) {
      const part = (from: number, to: number) => energies(channel.subarray(from * rate, to * rate), rate, [1000, 4000]);
      const [early, late] = [part(0.02, 0.07), part(0.15, 0.2)];
      expect(decibels(late[2] / late[0])).toBeLessThan(decibels(early[2] / early[0]) - 3);
    }
  });

  test('is not the same in both ears', () => {
    const [left, right] = channels;
    const product = left.reduce((sum, sample, i) => sum + sample * right[i], 0);
    expect(Math.abs(product)).toBeLessThan(0.5);
  });

  test('is the same each time', () => {
    expect(renderRoom(rate)).toEqual(channels);
  });
});
