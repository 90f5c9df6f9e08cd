import type { Page } from '@playwright/test';
import { expect, press, test } from './sound/bench.ts';
import { compare, type Agreement } from './sound/onsets.ts';
import type { Asked, LiveCase, LiveResult } from './sound/page.ts';

const range = (n: number): number[] => Array.from({ length: n }, (_, i) => i);
/** Ticks of a quarter note. */
const BEAT = 20160;
const SIXTEENTHS: Asked[1] = { meter: '4/4', grid: 4 };

/** Plays a case while the page is busy; only a press of the visitor's opens the sound. */
async function played(bench: Page, live: LiveCase): Promise<LiveResult> {
  const result = bench.evaluate((asked) => window.sound.onPress(() => window.sound.live(asked)), live);
  await press(bench);
  return result;
}

/** Onsets against times after the first one, as far as the recording goes. */
function agreement({ onsets, sampleRate }: LiveResult, times: readonly number[]): Agreement {
  const last = onsets[onsets.length - 1] - onsets[0];
  const wanted = times.map((time) => time * sampleRate).filter((place) => place < last + 1);
  return compare(
    onsets.map((onset) => onset - onsets[0]),
    wanted,
    sampleRate,
  );
}

test.describe('while the page stands still for 200 ms again and again', () => {
  test('no stroke is late: sixteenths at tempo 200', async ({ bench }) => {
    const result = await played(bench, {
      asked: ['{R L}8', SIXTEENTHS, { bpm: 200 }],
      milliseconds: 3500,
      stallMs: 200,
    });
    expect(result.onsets.length).toBeGreaterThan(25);
    const { worst, missing, extra } = agreement(
      result,
      range(200).map((slot) => slot * 0.075),
    );
    expect({ missing, extra }).toEqual({ missing: [], extra: [] });
    expect(worst, 'samples').toBeLessThan(1);
    test
      .info()
      .annotations.push({ type: 'strokes', description: `${result.onsets.length}, worst ${worst.toFixed(4)}` });
  });

  test('a change of tempo loses no stroke and doubles none', async ({ bench }) => {
    const result = await played(bench, {
      asked: ['{R L}8', SIXTEENTHS, { bpm: 200 }],
      milliseconds: 3500,
      stallMs: 200,
      changes: [
        { afterMs: 1000, asked: ['{R L}8', SIXTEENTHS, { bpm: 120 }] },
        { afterMs: 2200, asked: ['{R L}8', SIXTEENTHS, { bpm: 240 }] },
      ],
    });
    const { onsets, sampleRate } = result;
    const gaps = onsets.slice(1).map((onset, i) => (onset - onsets[i]) / sampleRate);
    const near = (gap: number, wanted: number): boolean => Math.abs(gap - wanted) * sampleRate < 1;
    const tempi = gaps.map((gap) => [0.075, 0.125, 0.0625].find((wanted) => near(gap, wanted)));
    expect(tempi, 'every gap is one of the three').not.toContain(undefined);
    expect(tempi.filter((tempo, i) => tempo !== tempi[i - 1])).toEqual([0.075, 0.125, 0.0625]);
  });
});

test('the recording shows what a page loses that orders its sounds only 50 ms ahead', async ({ bench }) => {
  const result = await played(bench, {
    asked: ['{R L}8', SIXTEENTHS, { bpm: 200 }],
    milliseconds: 3500,
    stallMs: 200,
    ahead: 0.05,
  });
  const { missing } = agreement(
    result,
    range(100).map((slot) => slot * 0.075),
  );
  expect(missing).not.toEqual([]);
});

test('an interruption holds the music and lets it go on where it was', async ({ bench }) => {
  const result = await played(bench, {
    asked: ['{R L}8', SIXTEENTHS, { bpm: 200 }],
    milliseconds: 2500,
    interruption: { afterMs: 800, forMs: 500 },
  });
  expect(result.events).toEqual([
    { state: 'opening' },
    { state: 'playing' },
    { state: 'interrupted', reason: 'suspended' },
    { state: 'playing' },
    { state: 'stopped' },
  ]);
  const { worst, missing, extra } = agreement(
    result,
    range(100).map((slot) => slot * 0.075),
  );
  expect({ missing, extra }).toEqual({ missing: [], extra: [] });
  expect(worst).toBeLessThan(1);
});

test('positions go from the count-in through check and pattern, each stroke lit in turn', async ({ bench }) => {
  const { positions } = await played(bench, {
    asked: ['R L R L', { meter: '4/4', grid: 1, checked: 1 }, { bpm: 300, countIn: true }],
    milliseconds: 2900,
  });
  const phases = positions.map(({ phase, pass }) => `${phase} ${pass}`);
  expect(phases.filter((phase, i) => phase !== phases[i - 1])).toEqual([
    'count-in 1',
    'check 1',
    'pattern 1',
    'check 2',
  ]);
  const ticks = positions.filter(({ phase }) => phase === 'pattern').map(({ tick }) => tick);
  expect(ticks).toEqual([...ticks].sort((a, b) => a - b));
  for (const { phase, tick, lit } of positions.filter((position) => position.phase !== 'count-in')) {
    const beat = Math.floor(tick / BEAT);
    const since = (tick / BEAT - beat) * 0.2;
    expect(lit, `${phase}, ${since} s after beat ${beat + 1}`).toEqual(since < 0.12 ? [`1.${beat}.0`] : []);
  }
});

test('stop is silence within 100 ms, without a click, in the middle of a crash', async ({ bench }) => {
  const asked: Asked = ['R@crash:+K - - -', { meter: '4/4', grid: 1 }, { bpm: 60 }];
  const result = bench.evaluate((what) => window.sound.onPress(() => window.sound.stopping(what)), asked);
  await press(bench);
  const { seconds, before, step, ownStep } = await result;
  expect(before, 'it rang').toBeGreaterThan(0.001);
  expect(seconds).toBeLessThan(0.1);
  expect(step, 'no step larger than the sound has by itself').toBeLessThanOrEqual(ownStep);
});

test.describe("the page's own players", () => {
  test('open within the press, then load and play, one at a time', async ({ bench }) => {
    const starting = bench.evaluate(() =>
      window.sound.onPress(() => {
        const request = window.sound.request('>lR LL R', { meter: '3/4', grid: 1 }, { bpm: 180 });
        window.sound.playerNamed('first').play(request);
        return window.sound.players.first.state;
      }),
    );
    await press(bench);
    expect(await starting).toBe('opening');
    await bench.waitForFunction(() => window.sound.players.first.position()?.pass === 2);
    await bench.evaluate(() => {
      const request = window.sound.request('R L', { meter: '2/4', grid: 1 }, { bpm: 240, loop: false });
      window.sound.playerNamed('second').play(request);
    });
    await bench.waitForFunction(() => window.sound.events.second.at(-1)?.state === 'stopped');
    const events = await bench.evaluate(() => window.sound.events);
    expect(events.first).toEqual([{ state: 'opening' }, { state: 'playing' }, { state: 'stopped' }]);
    expect(events.second, 'and a single pass ends by itself').toEqual(events.first);
  });

  test('stop when the page is left', async ({ bench }) => {
    const starting = bench.evaluate(() =>
      window.sound.onPress(() => {
        window.sound.playerNamed('one').play(window.sound.request('R L', { meter: '2/4', grid: 1 }));
      }),
    );
    await press(bench);
    await starting;
    await bench.waitForFunction(() => window.sound.players.one.state === 'playing');
    await bench.evaluate(() => dispatchEvent(new PageTransitionEvent('pagehide')));
    const { state, last } = await bench.evaluate(() => ({
      state: window.sound.players.one.state,
      last: window.sound.events.one.at(-1),
    }));
    expect(state).toBe('stopped');
    expect(last).toEqual({ state: 'stopped', reason: 'hidden' });
  });
});
