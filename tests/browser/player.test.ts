import type { Locator, Page } from '@playwright/test';
import { barriersOn } from './axe.ts';
import { expect, test } from './site.ts';

/** A page with several players; the first bars of it have grace notes. */
const LESSON = 'lessons/the-flam-drag/';

/** The bars of the page that can be played. */
const figures = (page: Page) => page.locator('figure:has(form.player)');

/** The handles of one player. */
function handles(figure: Locator) {
  return {
    figure,
    go: figure.getByRole('button', { name: /^(Play|Stop)/ }),
    tempo: figure.getByRole('spinbutton', { name: /^tempo/ }),
    faster: figure.getByRole('button', { name: 'faster by one' }),
    ruler: figure.getByRole('slider', { name: 'tempo' }),
    more: figure.locator('summary', { hasText: 'More' }),
    status: figure.locator('form.player').getByRole('status'),
    choice: (group: string, name: string) =>
      figure.getByRole('group', { name: group, exact: true }).getByRole('radio', { name }),
    score: figure.locator('.score').last(),
    lit: figure.locator('.on'),
    playhead: figure.locator('.playhead'),
    letters: figure.locator('.score').last().locator('text[data-letter]'),
  };
}

async function openLesson(page: Page) {
  await page.goto(`./${LESSON}`);
  return handles(figures(page).first());
}

/** The same for somebody who has set players to begin without a count-in: nobody waits for a slow bar. */
async function openWithoutCountIn(page: Page) {
  const kept = { version: 1, exercises: {}, site: { countIn: false }, done: [] };
  await page.addInitScript((text) => localStorage.setItem('barwright:/', text), JSON.stringify(kept));
  return openLesson(page);
}

/** Fast and without a count-in, so that a test does not wait for a slow bar. */
async function atOnce({ tempo, more, figure }: ReturnType<typeof handles>) {
  await tempo.fill('180');
  await tempo.press('Enter');
  await more.click();
  await figure.getByLabel('count in a bar').uncheck();
}

/** Notes which letters light up, one after another, from now on. */
async function watchLight(figure: Locator): Promise<() => Promise<string[]>> {
  await figure.evaluate((element) => {
    const seen: string[] = [];
    Object.assign(element, { seen });
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        const { letter } = (target as SVGElement).dataset;
        if (letter && (target as Element).classList.contains('on')) seen.push(letter);
      }
    }).observe(element, { subtree: true, attributeFilter: ['class'] });
  });
  return () => figure.evaluate((element) => (element as unknown as { seen: string[] }).seen);
}

/** Chooses one of several ways; on a page that has just arrived the choice is made once the player is there. */
async function choose(way: Locator): Promise<void> {
  await way.click();
  await expect(way).toBeChecked();
}

/** A machine that is busy otherwise takes its time to make the sounds. */
const PATIENTLY = { timeout: 30_000 };

const lettersOf = (letters: Locator) => letters.allTextContents();
const placeOf = (playhead: Locator) => playhead.evaluate((line) => line.getBoundingClientRect().left);

test('the first press on a page that has just arrived plays', async ({ page }) => {
  const { go, status, lit, playhead } = await openWithoutCountIn(page);
  await go.click();
  await expect(status).toHaveText('Playing.');
  await expect(go).toHaveText('Stop');
  await expect(lit.first()).toBeAttached(PATIENTLY);
  await expect(playhead).toBeVisible();
});

test('on a slow line a press is told that it was heard, and plays once the player is there', async ({ page }) => {
  const { promise: arrived, resolve: arrive } = Promise.withResolvers<void>();
  await page.route('**/_astro/Player*.js', async (route) => {
    await arrived;
    await route.continue();
  });
  const { figure, go, status } = await openLesson(page);
  await go.click();
  await expect(status).toHaveText('Loading the player …');
  await expect(figure.locator('astro-island:has(form.player)')).toHaveAttribute('aria-busy', 'true');
  arrive();
  await expect(status).toHaveText('Playing.');
  await expect(figure.locator('astro-island:has(form.player)')).not.toHaveAttribute('aria-busy');
});

test('a player that did not load says so, and loads at the next press', async ({ page, watched }) => {
  watched.expectFault(/Player.*ERR_FAILED|ERR_FAILED/);
  await page.route('**/_astro/Player*', (route) => route.abort());
  const { go, status } = await openLesson(page);
  await go.click();
  await expect(status).toContainText('did not load');
  await page.unroute('**/_astro/Player*');
  await go.click();
  await expect(status).toHaveText('Playing.');
});

test('a sound that did not load says so, and plays at the next press', async ({ page, watched }) => {
  watched.expectFault(/ERR_FAILED/);
  await page.route('**/_astro/engine*', (route) => route.abort());
  const { go, status } = await openLesson(page);
  await go.click();
  await expect(status).toContainText('The sound did not load');
  await expect(go).toHaveText('Play');
  await page.unroute('**/_astro/engine*');
  await go.click();
  await expect(status).toHaveText('Playing.');
});

test('the same button stops, and no stroke stays lit', async ({ page }) => {
  const player = await openWithoutCountIn(page);
  const { go, status, lit, playhead } = player;
  await atOnce(player);
  await go.click();
  await expect(lit.first()).toBeAttached(PATIENTLY);
  await go.click();
  await expect(go).toHaveText('Play');
  await expect(status).toBeEmpty();
  await expect(lit).toHaveCount(0);
  await expect(playhead).toHaveCount(0);
});

test('strokes light up in the order they are written, and the line runs from left to right', async ({ page }) => {
  const player = await openLesson(page);
  await atOnce(player);
  const seen = await watchLight(player.figure);
  await player.go.click();
  await expect.poll(async () => (await seen()).length, PATIENTLY).toBeGreaterThan(40);
  const ids = await player.letters.evaluateAll((all) => all.map((letter) => (letter as SVGElement).dataset.letter!));
  const mains = [...new Set(ids)].filter((id) => !id.includes('g'));
  const order = (await seen()).filter((id) => !id.includes('g'));
  const steps = order
    .slice(1)
    .map((id, i) => (mains.indexOf(id) - mains.indexOf(order[i]) + mains.length) % mains.length);
  expect([...mains].sort(byTime)).toEqual(mains);
  // A page that was held up shows what sounds now and leaves out what has gone by: it skips, and never goes back.
  expect(steps.filter((step) => step === 1).length).toBeGreaterThan(steps.length / 2);
  expect(Math.max(...steps)).toBeLessThan(mains.length / 2);
  const before = await placeOf(player.playhead);
  await expect.poll(() => placeOf(player.playhead)).not.toBe(before);
});

/** `1.10.0` after `1.9.0`. */
function byTime(a: string, b: string): number {
  return a.localeCompare(b, 'en', { numeric: true });
}

test('it goes on playing while the tempo changes, by every way there is', async ({ page }) => {
  const { go, status, tempo, faster, ruler, figure } = await openWithoutCountIn(page);
  await go.click();
  await expect(status).toHaveText('Playing.');
  await tempo.fill('70');
  await tempo.press('Enter');
  await faster.click();
  await expect(tempo).toHaveValue('71');
  await tempo.press('PageUp');
  await expect(tempo).toHaveValue('81');
  await ruler.fill('120');
  await expect(tempo).toHaveValue('120');
  // Two taps make a tempo, whatever it is; of two that lie too far apart the second is a first one again.
  await ruler.fill('30');
  const tap = figure.getByRole('button', { name: 'tap the tempo' });
  await expect(async () => {
    await tap.click();
    await expect(tempo).not.toHaveValue('30', { timeout: 200 });
  }).toPass();
  await tempo.fill('9999');
  await tempo.press('Enter');
  await expect(tempo).toHaveValue('300');
  await expect(status).toHaveText('Playing.');
  await expect(figure.locator('.on').first()).toBeAttached(PATIENTLY);
});

test('another lead changes the letters and the description, not the notes', async ({ page }) => {
  const { go, status, choice, letters, score, figure } = await openLesson(page);
  await go.click();
  await expect(status).toHaveText('Playing.');
  const before = await lettersOf(letters);
  const words = await figure.locator('[data-reading]').textContent();
  await score.evaluate((element) => element.setAttribute('data-same', ''));
  await choose(choice('lead', 'left'));
  const mirrored = before.map((letter) => ({ R: 'L', L: 'R' })[letter] ?? letter);
  await expect.poll(() => lettersOf(letters)).toEqual(mirrored);
  await expect(score).toHaveAttribute('data-same');
  await expect(figure.locator('[data-reading]')).not.toHaveText(words!);
  await expect(status).toHaveText('Playing.');
  await choose(choice('lead', 'right'));
  await expect.poll(() => lettersOf(letters)).toEqual(before);
  await expect(figure.locator('[data-reading]')).toHaveText(words!);
});

test('tempo and lead are kept for one bar, the rest for all, until they are reset', async ({ page }) => {
  const first = await openLesson(page);
  const second = handles(figures(page).nth(1));
  const own = await second.tempo.inputValue();
  await first.tempo.fill('77');
  await first.tempo.press('Enter');
  await choose(first.choice('lead', 'left'));
  await choose(first.choice('check pattern', '2:2'));
  await expect(first.figure.locator('.check-bar')).toBeVisible();
  await page.reload();
  await first.go.hover();
  await expect(first.tempo).toHaveValue('77');
  await expect(first.choice('lead', 'left')).toBeChecked();
  await expect.poll(async () => (await lettersOf(first.letters)).slice(0, 2).sort()).toEqual(['L', 'R']);
  await second.go.hover();
  await expect(second.tempo).toHaveValue(own);
  await expect(second.choice('lead', 'right')).toBeChecked();
  await expect(second.choice('check pattern', '2:2')).toBeChecked();
  await first.more.click();
  await first.figure.getByRole('button', { name: 'Reset tempo and lead here' }).click();
  await expect(first.choice('lead', 'right')).toBeChecked();
  await expect(first.choice('check pattern', '2:2')).toBeChecked();
  await first.figure.getByRole('button', { name: 'Reset every player' }).click();
  await expect(second.choice('check pattern', 'off')).toBeChecked();
});

test('where the browser keeps nothing, it works and says so once', async ({ page }) => {
  await page.addInitScript(() =>
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('blocked', 'SecurityError');
      },
    }),
  );
  const first = await openLesson(page);
  const second = handles(figures(page).nth(1));
  await first.faster.click();
  await first.faster.click();
  await second.faster.click();
  await expect(first.status).toContainText('does not let the site remember');
  await expect(second.status).toBeEmpty();
  await first.go.click();
  await expect(first.status).toContainText('Playing.');
});

test('the keyboard alone plays, changes and stops', async ({ page }) => {
  const { go, tempo, status, choice } = await openLesson(page);
  await go.focus();
  await page.keyboard.press('Enter');
  await expect(status).toHaveText('Playing.');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(tempo).toBeFocused();
  const before = Number(await tempo.inputValue());
  await page.keyboard.press('ArrowUp');
  await expect(tempo).toHaveValue(String(before + 1));
  await page.keyboard.press('Space');
  await expect(go).toHaveText('Play');
  await page.keyboard.press('Space');
  await expect(status).toHaveText('Playing.');
  await choice('lead', 'right').focus();
  await page.keyboard.press('ArrowRight');
  await expect(choice('lead', 'left')).toBeChecked();
  await page.keyboard.press('Escape');
  await expect(go).toHaveText('Play');
});

test('a key pressed elsewhere on the page does nothing to a player', async ({ page }) => {
  const { go, status } = await openLesson(page);
  await go.hover();
  await page.getByRole('heading', { level: 1 }).click();
  await page.keyboard.press('Space');
  await expect(go).toHaveText('Play');
  await expect(status).toBeEmpty();
});

test('starting one player stops the other', async ({ page }) => {
  const first = await openLesson(page);
  const second = handles(figures(page).nth(1));
  await first.go.click();
  await expect(first.status).toHaveText('Playing.');
  await second.go.click();
  await expect(second.status).toHaveText('Playing.');
  await expect(first.go).toHaveText('Play');
  await expect(first.lit).toHaveCount(0);
});

test('the check bar is drawn when it is to be heard, and the line runs through both', async ({ page }) => {
  const player = await openLesson(page);
  await atOnce(player);
  await choose(player.choice('check pattern', '1:1'));
  const check = player.figure.locator('.check-bar');
  await expect(check.getByText('check bar')).toBeVisible();
  await expect(check.locator('text[data-letter]').first()).toHaveText('R');
  await player.go.click();
  await expect(check.locator('.playhead')).toBeVisible(PATIENTLY);
  await expect(player.score.locator('.playhead')).toBeVisible();
  await expect(check.locator('.playhead')).toHaveCount(0);
  await choose(player.choice('check pattern', 'off'));
  await expect(check).toHaveCount(0);
});

test('flams are written out on request, and as grace notes again', async ({ page }) => {
  const { choice, score, figure } = await openLesson(page);
  const small = score.locator('text.grace');
  const count = await small.count();
  const label = await score.getAttribute('aria-label');
  expect(count).toBeGreaterThan(0);
  await choose(choice('flams written', 'before'));
  await expect(small).toHaveCount(0);
  await expect(score).toHaveAttribute('aria-label', label!);
  await expect(figure.getByLabel('flam width')).toBeDisabled();
  await choose(choice('flams written', 'grace'));
  await expect(small).toHaveCount(count);
});

test('heights, one hand alone and the metronome are under More, which tells what is not as usual', async ({ page }) => {
  const { more, figure, choice, score } = await openLesson(page);
  await more.click();
  await figure.getByLabel('draw stroke heights').check();
  await expect(score.locator('.heights').first()).toBeVisible();
  await figure.getByLabel('draw stroke heights').uncheck();
  await expect(score.locator('.heights')).toHaveCount(0);
  await choose(choice('hands heard', 'left only'));
  await expect(more).toContainText('left only');
  await choose(choice('metronome', 'off'));
  await expect(choice('metronome', 'off')).toBeChecked();
});

test('an opened player that plays is accessible', async ({ page }) => {
  const { go, more, status, choice } = await openLesson(page);
  await more.click();
  await choose(choice('check pattern', '1:1'));
  await go.click();
  await expect(status).toHaveText('Playing.');
  expect(await barriersOn(page)).toEqual([]);
});

test.describe('with reduced motion', () => {
  test.use({ contextOptions: { reducedMotion: 'reduce' } });

  test('the line steps from stroke to stroke', async ({ page }) => {
    const player = await openLesson(page);
    await atOnce(player);
    await player.go.click();
    await expect(player.playhead).toBeVisible();
    const stops = await player.playhead.evaluate(async (line) => {
      const seen = new Set<string>();
      for (let frame = 0; frame < 60; frame += 1) {
        await new Promise(requestAnimationFrame);
        seen.add((line as HTMLElement).style.transform);
      }
      return seen.size;
    });
    // A second at this tempo is nine triplets; a gliding line would have been in some sixty places.
    expect(stops).toBeGreaterThan(2);
    expect(stops).toBeLessThan(20);
  });
});

test.describe('on a narrow screen', () => {
  test.use({ viewport: { width: 320, height: 480 } });

  test('it fits the screen, and the stop button stays in view', async ({ page }) => {
    const player = await openLesson(page);
    await atOnce(player);
    await player.go.click();
    await expect(player.playhead).toBeVisible();
    await player.score.evaluate((score) => score.scrollIntoView({ block: 'start' }));
    await expect(player.go).toBeInViewport();
    await expect(player.go).toHaveText('Stop');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
