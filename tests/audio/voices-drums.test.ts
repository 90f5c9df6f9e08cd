import { describe, expect, test } from 'vitest';
import { renderVoice, variantsOf, type VoiceName } from '../../src/audio/voices/index.ts';
import { bouncesOf } from '../../src/audio/voices/buzz.ts';
import { rng } from '../../src/audio/voices/rng.ts';
import { decibels, energies, loudestBetween, rmsBetween } from '../helpers/spectrum.ts';

const RATE = 48000;

const seconds = (take: Float32Array, from: number, to: number) => take.subarray(from * RATE, to * RATE);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function takes(name: VoiceName): Float32Array[] {
  return Array.from({ length: variantsOf(name) }, (_, variant) => renderVoice(name, RATE, variant));
}

/** Mean level of a voice's takes over a stroke's first so many seconds, unweighted. */
const level = (name: VoiceName, over = 0.08) => mean(takes(name).map((take) => rmsBetween(take, RATE, 0, over)));

/** Share of a stroke's energy above 1.2 kHz, where a snare drum has its wires, in decibels of the whole. */
function wiresShare(name: VoiceName): number {
  return mean(
    takes(name).map((take) => {
      const [below, above] = energies(seconds(take, 0.004, 0.1), RATE, [1200]) as [number, number];
      return decibels(above / (below + above));
    }),
  );
}

/** The middle of a stroke's spectrum by energy, in hertz. */
function center(take: Float32Array): number {
  const edges = Array.from({ length: 160 }, (_, i) => 100 * (i + 1));
  const bands = energies(seconds(take, 0, 0.16), RATE, edges);
  const whole = bands.reduce((sum, band) => sum + band, 0);
  return bands.reduce((sum, band, i) => sum + band * (100 * i + 50), 0) / whole;
}

/** How much energy a stretch has against an earlier one, in decibels a second. */
const fall = (take: Float32Array, from: number, to: number) =>
  (rmsBetween(take, RATE, to, to + 0.02) - rmsBetween(take, RATE, from, from + 0.02)) / (to - from);

describe('the snare drum by height of the stroke', () => {
  test.each([0.05, 0.08, 0.1])('a tap is about 6 and a ghost about 12 dB below an accent over %d s', (over) => {
    const accent = level('accent', over);
    expect(accent - level('tap', over)).toBeGreaterThan(5);
    expect(accent - level('tap', over)).toBeLessThan(7.5);
    expect(accent - level('ghost', over)).toBeGreaterThan(11);
    expect(accent - level('ghost', over)).toBeLessThan(14);
  });

  test('every ghost is softer than every tap, every tap than every accent, every grace than every ghost', () => {
    const of = (name: VoiceName) => takes(name).map((take) => rmsBetween(take, RATE, 0, 0.08));
    expect(Math.max(...of('grace'))).toBeLessThan(Math.min(...of('ghost')));
    expect(Math.max(...of('ghost'))).toBeLessThan(Math.min(...of('tap')) - 3);
    expect(Math.max(...of('tap'))).toBeLessThan(Math.min(...of('accent')) - 3);
  });

  test('the softer the stroke, the larger the wires’ part; most of all in ghosts and buzzes', () => {
    const accent = wiresShare('accent');
    expect(wiresShare('tap')).toBeGreaterThan(accent + 1);
    expect(wiresShare('ghost')).toBeGreaterThan(wiresShare('tap') + 1);
    expect(wiresShare('buzz')).toBeGreaterThan(accent + 2.5);
  });

  test('the wires rattle on when the attack is over, and outlast the head', () => {
    for (const take of takes('accent')) {
      const [below, above] = energies(seconds(take, 0.15, 0.25), RATE, [1200]) as [number, number];
      expect(above).toBeGreaterThan(below);
    }
  });

  test('its lowest mode lies between 175 and 200 Hz', () => {
    // From memory: Rossing measured about 180 Hz for a 14-inch drum.
    for (const take of takes('accent')) {
      const pitch = loudestBetween(seconds(take, 0.05, 0.2), RATE, 120, 300);
      expect(pitch).toBeGreaterThan(180);
      expect(pitch).toBeLessThan(192);
    }
  });

  test('a rimshot rings with the hoop, an accent does not', () => {
    const hoop = (name: VoiceName) =>
      mean(takes(name).map((take) => decibels(energies(seconds(take, 0.02, 0.06), RATE, [790, 840])[1])));
    expect(hoop('rimshot')).toBeGreaterThan(hoop('accent') + 6);
  });

  test('left and right differ, and only by a shade', () => {
    const edges = [150, 300, 600, 1200, 2400, 4800, 9600];
    const color = (side: number) => {
      const own = takes('tap').filter((_, variant) => variant % 2 === side);
      const sums = own.map((take) => energies(seconds(take, 0, 0.1), RATE, edges));
      return edges.map((_, band) => decibels(mean(sums.map((bands) => bands[band]))));
    };
    const differences = color(0).map((right, band) => Math.abs(right - color(1)[band]));
    expect(Math.max(...differences)).toBeGreaterThan(0.5);
    expect(Math.max(...differences)).toBeLessThan(5);
  });
});

describe('other sample rates', () => {
  test.each([22050, 96000, 192000])('at %i Hz a snare drum keeps the balance of head and wires', (rate) => {
    const share = (at: number) =>
      mean(
        [0, 1, 2, 3].map((variant) => {
          const take = renderVoice('tap', at, variant).subarray(0.004 * at, 0.1 * at);
          const [below, above] = energies(take, at, [1200, 9000]) as [number, number];
          return decibels(above / below);
        }),
      );
    expect(Math.abs(share(rate) - share(RATE))).toBeLessThan(1);
  });
});

describe('a buzz', () => {
  test('bounces ever closer and ever softer', () => {
    const bounces = bouncesOf({ random: rng('bounces') });
    const gaps = bounces.slice(1).map(({ seconds }, i) => seconds - bounces[i].seconds);
    gaps.slice(1).forEach((gap, i) => expect(gap).toBeLessThan(gaps[i]));
    bounces.slice(1).forEach(({ level }, i) => expect(level).toBeLessThan(bounces[i].level));
    expect(bounces[0]).toEqual({ seconds: 0, level: 1 });
  });

  test('sounds on through its bounces and then dies', () => {
    for (const take of takes('buzz')) {
      expect(rmsBetween(take, RATE, 0.1, 0.16)).toBeGreaterThan(rmsBetween(take, RATE, 0, 0.06) - 10);
      expect(rmsBetween(take, RATE, 0.1, 0.16)).toBeLessThan(rmsBetween(take, RATE, 0, 0.06));
      expect(rmsBetween(take, RATE, 0.34, 0.4)).toBeLessThan(rmsBetween(take, RATE, 0.1, 0.16) - 10);
    }
  });
});

describe('toms and bass drum', () => {
  const PITCHES: [VoiceName, number][] = [
    ['tom1', 158],
    ['tom2', 121],
    ['floor', 82],
  ];

  test.each(PITCHES)('%s falls and lands on %d Hz', (name, pitch) => {
    for (const take of takes(name)) {
      const start = loudestBetween(seconds(take, 0, 0.05), RATE, 0.8 * pitch, 1.35 * pitch);
      const end = loudestBetween(seconds(take, 0.25, 0.6), RATE, 0.8 * pitch, 1.35 * pitch);
      expect(Math.abs(end / pitch - 1)).toBeLessThan(0.01);
      expect(start).toBeGreaterThan(1.02 * end);
    }
  });

  test.each(PITCHES)('a tap on %s is softer, duller and bent less', (name, pitch) => {
    const tap = `${name}-tap` as VoiceName;
    const start = (which: VoiceName) =>
      mean(takes(which).map((take) => loudestBetween(seconds(take, 0, 0.06), RATE, 0.8 * pitch, 1.35 * pitch)));
    expect(level(name) - level(tap)).toBeGreaterThan(4.5);
    expect(level(name) - level(tap)).toBeLessThan(7.5);
    expect(mean(takes(tap).map(center))).toBeLessThan(mean(takes(name).map(center)));
    expect(start(tap)).toBeLessThan(start(name));
  });

  test('the bass drum starts high and lands on 57 Hz', () => {
    for (const take of takes('kick')) {
      expect(loudestBetween(seconds(take, 0, 0.03), RATE, 40, 150)).toBeGreaterThan(64);
      expect(Math.abs(loudestBetween(seconds(take, 0.1, 0.4), RATE, 40, 90) - 57)).toBeLessThan(1.5);
    }
  });
});

describe('cymbals', () => {
  test('the further apart the hats, the longer they ring', () => {
    const order: VoiceName[] = ['pedal', 'hat', 'half', 'open'];
    const falls = order.slice(1).map((name) => mean(takes(name).map((take) => fall(take, 0.01, 0.06))));
    expect(falls[0]).toBeLessThan(falls[1] - 100);
    expect(falls[1]).toBeLessThan(falls[2] - 20);
  });

  test('highs die sooner than lows', () => {
    for (const name of ['ride', 'crash', 'china', 'open'] as const) {
      for (const take of takes(name)) {
        const early = energies(seconds(take, 0.05, 0.15), RATE, [2000, 7000]);
        const late = energies(seconds(take, 0.55, 0.65), RATE, [2000, 7000]);
        expect(late[2] / early[2]).toBeLessThan(0.5 * (late[0] / early[0]));
      }
    }
  });

  test('a choked crash begins as a crash and is gone after a quarter of a second', () => {
    expect(Math.abs(level('choke', 0.06) - level('crash', 0.06))).toBeLessThan(1.5);
    for (const take of takes('choke')) expect(take.length / RATE).toBeLessThan(0.27);
    for (const take of takes('crash')) expect(take.length / RATE).toBeGreaterThan(1.5);
  });

  test('no cymbal is shrill: more energy below 8 kHz than above', () => {
    for (const name of ['hat', 'hat-tap', 'half', 'open', 'splash', 'ride', 'crash', 'china'] as const) {
      for (const take of takes(name)) {
        const [below, above] = energies(seconds(take, 0, 0.34), RATE, [8000]) as [number, number];
        expect(decibels(below / above)).toBeGreaterThan(3);
      }
    }
  });
});

describe('the metronome', () => {
  test('has its tone between the drums and the wires, downbeat highest and loudest', () => {
    const tone = (name: VoiceName) => loudestBetween(renderVoice(name, RATE, 0), RATE, 300, 4000);
    expect(tone('downbeat')).toBeCloseTo(1080, -1.7);
    expect(tone('beat')).toBeCloseTo(860, -1.7);
    expect(tone('subdivision')).toBeCloseTo(700, -1.7);
    expect(level('downbeat')).toBeGreaterThan(level('beat') + 1);
    expect(level('beat')).toBeGreaterThan(level('subdivision') + 3);
  });

  test('is short and not shrill', () => {
    for (const name of ['downbeat', 'beat', 'subdivision'] as const) {
      const take = renderVoice(name, RATE, 0);
      expect(take.length / RATE).toBeLessThan(0.09);
      const [below, above] = energies(take, RATE, [3500]) as [number, number];
      expect(decibels(above / below)).toBeLessThan(-15);
    }
  });
});

describe('the kit together', () => {
  test('snare, bass drum and crash at once stay below full scale', () => {
    const crash = takes('crash');
    takes('accent').forEach((accent, i) => {
      const kick = renderVoice('kick', RATE, i % variantsOf('kick'));
      const sum = accent.map((sample, n) => sample + (kick[n] ?? 0) + (crash[i % crash.length][n] ?? 0));
      expect(Math.max(...sum.map(Math.abs))).toBeLessThan(1);
    });
  });
});
