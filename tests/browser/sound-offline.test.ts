import type { Page } from '@playwright/test';
import { KNEE } from '../../src/audio/engine/soft-clip.ts';
import { claimOf } from '../../src/words/proof.ts';
import { expect, test } from './sound/bench.ts';
import { compare, placesOf, type Agreement } from './sound/onsets.ts';
import type { Asked, OfflineCase } from './sound/page.ts';

/** From the beginning of a rendering to its first sound. */
const START = 0.2;
/** A sample: what an onset may be off by. Nothing is rounded, so that far less is expected. */
const ONE_SAMPLE = 1;

interface Wanted extends Omit<OfflineCase, 'sampleRate' | 'seconds'> {
  /** From the first sound, in seconds. */
  times: number[];
}

const range = (n: number): number[] => Array.from({ length: n }, (_, i) => i);
const BAR: Asked[1] = { meter: '4/4' };

async function check(page: Page, sampleRate: number, { times, ...rest }: Wanted): Promise<Agreement> {
  const seconds = START + Math.max(...times) + 0.02;
  const found = await page.evaluate((asked) => window.sound.offline(asked), { ...rest, seconds, sampleRate });
  return compare(
    found,
    placesOf(
      times.map((time) => START + time),
      sampleRate,
    ),
    sampleRate,
  );
}

/** The rate at which a slot is seldom a whole number of samples, and the other usual one with LONG. */
const RATES = process.env.LONG ? [44100, 48000] : [44100];

/** That every onset of a case, which has a name where a test has several, stands in its place. */
async function expectExact(page: Page, wanted: Wanted, name = ''): Promise<void> {
  for (const sampleRate of RATES) {
    const { worst, missing, extra } = await check(page, sampleRate, wanted);
    expect({ missing, extra, sampleRate }, name).toEqual({ missing: [], extra: [], sampleRate });
    expect(worst, `${name}, samples at ${sampleRate} Hz`).toBeLessThan(ONE_SAMPLE);
    test.info().annotations.push({ type: 'worst onset, in samples', description: worst.toFixed(4) });
  }
}

test.describe(`${claimOf('onsets')} At 44.1 and 48 kHz`, () => {
  test('one to eight to a beat, three bars on', async ({ bench }) => {
    for (const grid of [1, 2, 3, 4, 5, 6, 7, 8])
      await expectExact(
        bench,
        {
          asked: [`{R}${4 * grid}`, { ...BAR, grid }, { bpm: 97 }],
          times: range(12 * grid).map((slot) => (slot * 60) / 97 / grid),
        },
        `${grid} to a beat`,
      );
  });

  test('flams from closed to open, the first one before bar 1', async ({ bench }) => {
    const beats = range(8).map((beat) => beat * 0.75);
    for (const flamMs of [10, 30, 55, 80])
      await expectExact(
        bench,
        {
          asked: ['lR rL lR rL', { ...BAR, grid: 1 }, { bpm: 80, flamMs }],
          times: beats.flatMap((beat) => [beat, beat + flamMs / 1000]),
        },
        `${flamMs} ms`,
      );
  });

  test('drags, and flams no wider than half the gap to the stroke before', async ({ bench }) => {
    // Sixteenths at 150: 0.1 s apart. Two grace notes share 0.05 s; the one of the flam has 0.05 s of the 80 ms.
    await expectExact(bench, {
      asked: ['R llR L rL', { meter: '1/4', grid: 4 }, { bpm: 150, flamMs: 80 }],
      times: range(6).flatMap((beat) => [0, 0.05, 0.075, 0.1, 0.2, 0.25, 0.3].map((time) => time + beat * 0.4)),
    });
  });

  test('diddles and triplets inside a slot', async ({ bench }) => {
    await expectExact(bench, {
      asked: ['RR L RLR L', { meter: '4/4', grid: 1 }, { bpm: 60 }],
      times: [0, 0.5, 1, 2, 2 + 1 / 3, 2 + 2 / 3, 3, 4, 4.5, 5, 6, 6 + 1 / 3, 6 + 2 / 3, 7],
    });
  });

  for (const grid of [2, 4])
    test(`swing at ${grid} to a beat`, async ({ bench }) => {
      const pair = (2 * 60) / 110 / grid;
      for (const swing of [1, 1.5, 2, 3])
        await expectExact(
          bench,
          {
            asked: [`{R L}${2 * grid}`, { ...BAR, grid }, { bpm: 110, swing }],
            times: range(4 * grid).flatMap((i) => [i * pair, i * pair + (pair * swing) / (swing + 1)]),
          },
          `swing ${swing}:1`,
        );
    });

  test('a bar of seven eighths, its metronome and the seam of its loop, ten times round', async ({ bench }) => {
    await expectExact(bench, {
      asked: ['{R L}7', { meter: '2+2+3/8', grid: 2 }, { bpm: 143, click: 'beats' }],
      times: range(140).map((slot) => (slot * 60) / 143 / 4),
    });
  });

  test('the count-in', async ({ bench }) => {
    await expectExact(bench, {
      asked: ['R L R L', { ...BAR, grid: 1 }, { bpm: 90, countIn: true, loop: false }],
      times: range(8).map((beat) => (beat * 60) / 90),
    });
  });

  test('two bars of check, two bars of pattern', async ({ bench }) => {
    const check = range(16).map((eighth) => eighth * 0.25);
    const pattern = range(8).flatMap((beat) => [4 + beat * 0.5, 4 + beat * 0.5 + 0.125]);
    const cycle = [...check, ...pattern];
    await expectExact(bench, {
      asked: ['{RL -}4', { ...BAR, grid: 2, checked: 2 }, { bpm: 120 }],
      times: [...cycle, ...cycle.map((time) => time + 8)],
    });
  });

  test('a pickup over the end of the check', async ({ bench }) => {
    // The check's eighths up to 4, then the pickup's triplet on 4 &; no stroke of the check beside it.
    const check = range(7).map((eighth) => eighth * 0.25);
    const pickup = [1.75, 1.75 + 0.25 / 3, 1.75 + 0.5 / 3];
    const pattern = range(8).map((eighth) => 2 + eighth * 0.25);
    await expectExact(bench, {
      asked: ['LRL {R L}4', { ...BAR, grid: 2, checked: 1, pickup: 1 }, { bpm: 120 }],
      times: [...check, ...pickup, ...pattern].flatMap((time) => [time, time + 4]),
    });
  });

  test('a change of tempo takes hold at the next stroke', async ({ bench }) => {
    // Sixteenths at 120 stand 0.125 s apart. The change comes 1.9 s after the first one; what sounds within 60 ms stays as
    // it is, so the seam is the stroke at 2 s. From there on they stand 0.1875 s apart (tempo 80).
    const before = range(16).map((slot) => slot * 0.125);
    const after = range(20).map((slot) => 2 + slot * 0.1875);
    await expectExact(bench, {
      asked: ['{R L}8', { ...BAR, grid: 4 }, { bpm: 120 }],
      changes: [{ at: 2.1, asked: ['{R L}8', { ...BAR, grid: 4 }, { bpm: 80 }] }],
      times: [...before, ...after],
    });
  });
});

test('real drums in their room begin within a sample of their place', async ({ bench }) => {
  const asked: Asked = [
    '>lR L R (L) rL K R+H >L',
    { ...BAR, grid: 2 },
    { bpm: 50, flamMs: 60, loop: false, countIn: true },
  ];
  for (const sampleRate of [44100, 48000]) {
    const drums = await bench.evaluate(([what, rate]) => window.sound.realDrums(what, rate), [
      asked,
      sampleRate,
    ] as const);
    expect(drums).toHaveLength(4 + 11);
    for (const { voice, shift } of drums)
      expect(Math.abs(shift), `${voice} at ${sampleRate} Hz`).toBeLessThanOrEqual(1);
  }
});

test('the loudest bar there is stays below the soft clip, so that nothing is bent', async ({ bench }) => {
  const loudest: Asked = [
    '{^R@crash:+^L+K ^R@floor:+^L@tom1:+K}4',
    { ...BAR, grid: 2 },
    { bpm: 200, click: 'slots', heard: 'all' },
  ];
  const peak = await bench.evaluate((asked) => window.sound.peak(asked, 4), loudest);
  expect(peak).toBeGreaterThan(0.2);
  expect(peak).toBeLessThan(KNEE);
});

test.describe('the measurement sees', () => {
  test('real drums that are looked for five samples too late', async ({ bench }) => {
    const asked: Asked = ['>L R+K', { meter: '2/4', grid: 1 }, { bpm: 60, loop: false }];
    const drums = await bench.evaluate((what) => window.sound.realDrums(what, 48000, 5), asked);
    expect(drums.map(({ shift }) => shift)).toEqual([-5, -5, -5]);
  });

  const wanted: Wanted = {
    asked: ['>R L L L', { ...BAR, grid: 1 }, { bpm: 240 }],
    times: range(8).map((beat) => beat / 4),
  };

  test('a stroke that comes one sample late', async ({ bench }) => {
    const late = await check(bench, 48000, { ...wanted, shifted: { voice: 'accent', samples: 1 } });
    expect(late.worst).toBeCloseTo(1, 2);
    expect({ missing: late.missing, extra: late.extra }).toEqual({ missing: [], extra: [] });
  });

  test('a stroke that is missing and one too many', async ({ bench }) => {
    const { times } = wanted;
    const missing = await check(bench, 48000, { ...wanted, times: [...times, 1.1] });
    const extra = await check(bench, 48000, { ...wanted, times: times.filter((time) => time !== 1) });
    expect([missing.missing.length, missing.extra]).toEqual([1, []]);
    expect([extra.missing, extra.extra.length]).toEqual([[], 1]);
  });
});
