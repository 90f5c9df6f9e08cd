import type { Locator, Page } from '@playwright/test';
import { expect, test } from './site.ts';

/** What is broken in a page until it is mended; "none" where a route is. */
type Broken = 'none' | 'missing' | 'throwing' | 'closed' | 'suspended' | 'stuck' | 'mute';

declare global {
  interface Window {
    /** What is broken now, how often the worker for sounds was asked and how often it was done. */
    sabotage: { broken: Broken; asked: number; done: number; contexts: AudioContext[] };
  }
}

/** Breaks the browser's own sound before the page loads, so that it can be mended while the page is open. */
async function sabotage(page: Page, broken: Broken): Promise<void> {
  await page.clock.install();
  await page.addInitScript((first) => {
    const own = { broken: first, asked: 0, done: 0, contexts: [] as AudioContext[] };
    const Context = class extends AudioContext {
      constructor(options?: AudioContextOptions) {
        if (own.broken === 'throwing') throw new DOMException('no more contexts', 'NotSupportedError');
        super(options);
        own.contexts.push(this);
        if (own.broken === 'suspended') void super.suspend();
        if (own.broken === 'closed') void super.close();
      }
      override async resume(): Promise<void> {
        if (own.broken !== 'suspended') await super.resume();
      }
      override get currentTime(): number {
        // The first one alone: another context has a clock of its own.
        return own.broken === 'stuck' && this === own.contexts[0] ? 1 : super.currentTime;
      }
    };
    const Sounds = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        this.addEventListener('message', ({ data }) => (own.done += data.kind === 'done' ? 1 : 0));
      }
      override postMessage(message: unknown): void {
        own.asked += 1;
        if (own.broken !== 'mute') super.postMessage(message);
      }
    };
    Object.defineProperty(window, 'AudioContext', {
      get: () => (own.broken === 'missing' ? undefined : Context),
    });
    Object.assign(window, { sabotage: own, Worker: Sounds });
  }, broken);
}

const mend = (page: Page) => page.evaluate(() => void (window.sabotage.broken = 'none'));

/** A place of the site that plays: its button and its sentence. */
interface TimedSlot {
  name: string;
  path: string;
  find(page: Page): { go: Locator; status: Locator };
}

const PLAYER: TimedSlot = {
  name: 'a player',
  path: 'exercises/flam-drag-slow/',
  find: (page) => {
    const form = page.locator('form.player').first();
    return { go: form.getByRole('button', { name: /^(Play|Stop)/ }), status: form.getByRole('status') };
  },
};

const OTHERS: TimedSlot[] = [
  {
    name: 'the ladder of a rudiment',
    path: 'rudiments/flam/',
    find: (page) => {
      const ladder = page.locator('section.ladder-of');
      return {
        go: ladder.getByRole('button', { name: /^(Play the ladder|Stop)$/ }),
        status: ladder.getByRole('status'),
      };
    },
  },
  {
    name: 'bar math',
    path: 'bar-math/',
    find: (page) => {
      const sum = page.locator('#resolve');
      return {
        go: sum.getByRole('button', { name: /^(Play|Stop)/ }).first(),
        status: sum.locator('.play-bar').first().getByRole('status'),
      };
    },
  },
  {
    name: 'a puzzle by ear',
    path: 'puzzles/which/#1-7',
    find: (page) => {
      const bar = page.locator('.play-bar').first();
      return { go: bar.getByRole('button').first(), status: bar.getByRole('status') };
    },
  },
];

/** Opens a place, presses play, and lets 5 s go by where the page has got as far as it will. */
async function pressed(page: Page, { path, find }: TimedSlot, stuck?: () => Promise<unknown>) {
  await page.goto(`./${path}`);
  const { go, status } = find(page);
  await go.click();
  if (stuck) {
    await stuck();
    await page.clock.runFor(6000);
  }
  return { go, status };
}

/** The worker was asked, and has answered as far as it does. */
const askedForSounds = (page: Page) => () => page.waitForFunction(() => window.sabotage.asked > 0);
const hasSounds = (page: Page) => () =>
  page.waitForFunction(() => window.sabotage.asked > 0 && window.sabotage.asked === window.sabotage.done);

/** The sentence is there, nothing pretends to play, and once all is well the next press plays. */
async function expectSaidAndPlayedAgain(page: Page, { go, status }: ReturnType<TimedSlot['find']>, says: RegExp) {
  await expect(status).toHaveText(says);
  await expect(status).toContainText(/Press again .*\.$/);
  await expect(go).not.toHaveText('Stop');
  await mend(page);
  await go.click();
  await expect(status).toHaveText(/^(Playing\.|Up: \d+\.)$/);
  await expect(go).toHaveText('Stop');
}

const NO_OUTPUT = /^This browser gave the page no way to make sound\./;
const NOT_STARTED = /^The browser has not started the sound: it may be blocked/;
const NO_SOUNDS = /^The drum sounds were not ready in time\./;

for (const place of [PLAYER, ...OTHERS]) {
  test.describe(place.name, () => {
    test('without an audio context says so, and plays once there is one', async ({ page }) => {
      await sabotage(page, 'missing');
      await expectSaidAndPlayedAgain(page, await pressed(page, place), NO_OUTPUT);
    });

    test('with a context that stays suspended says so, and plays once it may', async ({ page }) => {
      await sabotage(page, 'suspended');
      await expectSaidAndPlayedAgain(page, await pressed(page, place, hasSounds(page)), NOT_STARTED);
    });

    test('with a worker that never answers says so, and plays with another one', async ({ page }) => {
      await sabotage(page, 'mute');
      await expectSaidAndPlayedAgain(page, await pressed(page, place, askedForSounds(page)), NO_SOUNDS);
    });
  });
}

test('a context that cannot be made is told, and can be made at the next press', async ({ page }) => {
  await sabotage(page, 'throwing');
  await expectSaidAndPlayedAgain(page, await pressed(page, PLAYER), NO_OUTPUT);
});

test('a context that the browser closes is told, and the next press opens another', async ({ page }) => {
  await sabotage(page, 'closed');
  await expectSaidAndPlayedAgain(page, await pressed(page, PLAYER), /^The browser has closed the sound\./);
});

test('a context closed while it plays or rests is replaced', async ({ page }) => {
  await sabotage(page, 'none');
  const { go, status } = await pressed(page, PLAYER);
  await expect(status).toHaveText('Playing.');
  await page.evaluate(() => window.sabotage.contexts[0].close());
  await expect(status).toHaveText(/^The browser has closed the sound\./);
  await go.click();
  await expect(status).toHaveText('Playing.');
  await go.click();
  await expect(status).toBeEmpty();
  await page.evaluate(() => window.sabotage.contexts[1].close());
  await go.click();
  await expect(status).toHaveText('Playing.');
});

test('a context whose clock stands still is told, and the next press takes another', async ({ page }) => {
  await sabotage(page, 'stuck');
  const playing = () => expect(PLAYER.find(page).status).toHaveText('Playing.');
  const { go, status } = await pressed(page, PLAYER, playing);
  await expect(status).toHaveText(/^No sound comes out: the sound device may be gone .* Press again to try again\.$/);
  await go.click();
  await expect(status).toHaveText('Playing.');
  expect(await page.evaluate(() => window.sabotage.contexts.map(({ state }) => state))).toEqual(['closed', 'running']);
});

test('a sound that comes back by itself after a pause of its clock plays on', async ({ page }) => {
  await sabotage(page, 'none');
  const { status } = await pressed(page, PLAYER);
  await expect(status).toHaveText('Playing.');
  await page.evaluate(() => void (window.sabotage.broken = 'stuck'));
  await page.clock.runFor(6000);
  await expect(status).toHaveText(/^No sound comes out/);
  await mend(page);
  await expect(status).toHaveText('Playing.');
});

test('a sound that was stopped while it was opened leaves the loudspeaker alone', async ({ page }) => {
  await sabotage(page, 'none');
  const { promise: arrived, resolve: arrive } = Promise.withResolvers<void>();
  await page.route('**/_astro/engine*.js', async (route) => {
    await arrived;
    await route.continue();
  });
  const { go, status } = await pressed(page, PLAYER);
  await expect(status).toHaveText('Opening the sound …');
  await go.click();
  await expect(status).toBeEmpty();
  await go.click();
  await go.click();
  arrive();
  await page.clock.runFor(6000);
  await expect
    .poll(() => page.evaluate(() => window.sabotage.contexts.map(({ state }) => state)))
    .toEqual(['suspended']);
  await expect(status).toBeEmpty();
});

for (const { what, file, says } of [
  {
    what: 'the module of the audio library',
    file: 'sequencer*',
    says: /^The sound did not load: the connection may be slow/,
  },
  { what: 'the worker for sounds', file: 'synth.worker*', says: NO_SOUNDS },
])
  test(`${what} that does not load is told, and loads at the next press`, async ({ page, watched }) => {
    watched.expectFault(/ERR_FAILED/);
    await sabotage(page, 'none');
    await page.route(`**/_astro/${file}`, (route) => route.abort());
    const place = await pressed(page, PLAYER);
    await expect(place.status).toHaveText(says);
    await page.unroute(`**/_astro/${file}`);
    await expectSaidAndPlayedAgain(page, place, says);
  });

test('a module that does not load is asked for again at once, under another address', async ({ page, watched }) => {
  watched.expectFault(/ERR_FAILED/);
  await sabotage(page, 'none');
  await page.route('**/_astro/sequencer*.js', (route) => route.abort());
  await expect((await pressed(page, PLAYER)).status).toHaveText('Playing.');
});

test('code that does not arrive for 5 s is told', async ({ page }) => {
  await sabotage(page, 'none');
  const { promise: arrived, resolve: arrive } = Promise.withResolvers<void>();
  await page.route('**/_astro/sequencer*.js', async (route) => {
    await arrived;
    await route.continue();
  });
  const opening = () => expect(PLAYER.find(page).status).toHaveText('Opening the sound …');
  const place = await pressed(page, PLAYER, opening);
  await expect(place.status).toHaveText(/^The sound did not load: the connection may be slow/);
  arrive();
  await expectSaidAndPlayedAgain(page, place, /^The sound did not load/);
});
