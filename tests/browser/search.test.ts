import type { Page } from '@playwright/test';
import { shares } from '../helpers/shares.ts';
import { QUESTIONS } from './search-questions.ts';
import { expect, test } from './site.ts';

const main = (page: Page) => page.getByRole('main');
const status = (page: Page) => main(page).getByRole('status');
const results = (page: Page) => main(page).getByRole('list', { name: 'Results' }).getByRole('listitem');
const open = (page: Page, question: Record<string, string>) =>
  page.goto(`./search/?${new URLSearchParams(question).toString()}`);

/** The addresses of the first three results, below the base path. */
const firstThree = (page: Page, base: string) =>
  results(page)
    .locator('a.to')
    .evaluateAll(
      (links, root) => links.slice(0, 3).map((link) => (link as HTMLAnchorElement).href.replace(root, '')),
      base,
    );

test.describe('what is typed is found among the first three results:', () => {
  // Several in one tab: a new one for each would load the index anew.
  for (const share of shares(QUESTIONS, 11)) {
    test(share.map(([asked]) => asked).join(' · '), async ({ page, served }) => {
      await open(page, {});
      for (const [asked, ...addresses] of share) {
        // What was found before goes first, so that it is not taken for what is found now.
        await page.getByRole('searchbox').fill('');
        await expect(results(page)).toHaveCount(0);
        await page.getByRole('searchbox').fill(asked);
        const right = async () => (await firstThree(page, served.address)).filter((one) => addresses.includes(one));
        await expect.poll(right, asked).not.toEqual([]);
      }
    });
  }
});

test('a filter that there is not is left out and said', async ({ page }) => {
  await open(page, { q: 'flam', kind: 'song', grid: '99' });
  await expect(status(page)).toContainText('“song” and subdivision “99”. They are not among the choices here');
  await expect(status(page)).toContainText('result');
  await expect(page).toHaveURL(/search\/\?q=flam$/);
});

test.describe('a sticking', () => {
  test('is found with the place where it stands', async ({ page }) => {
    await open(page, { q: '{lR LL R}5 K' });
    await expect(status(page)).toContainText('Read as the sticking {lR LL R}5 K.');
    await expect(results(page).first()).toContainText('{>lR LL R}5 K');
    await open(page, { q: 'R K R', kind: 'exercise' });
    await expect(results(page).first()).toContainText(/From (beat \d|the (e|&|a) of \d)/);
  });

  test('is found in any rotation, which the address keeps', async ({ page }) => {
    await open(page, { q: 'L L R L L R', kind: 'cell' });
    await expect(status(page)).toContainText('Nothing here has that in it, by either hand.');
    await open(page, { q: 'L L R', kind: 'cell' });
    await expect(status(page)).toContainText(/result|No bar/);
    const straight = await results(page).count();
    await page.getByRole('checkbox', { name: /In any rotation/ }).check();
    await expect(page).toHaveURL(/rotation=any/);
    await expect(status(page)).toHaveText(/result/);
    await expect(results(page).filter({ hasText: 'turned round' })).not.toHaveCount(0);
    await expect.poll(() => results(page).count()).toBeGreaterThan(straight);
    await page.reload();
    await expect(page.getByRole('checkbox', { name: /In any rotation/ })).toBeChecked();
    await expect(results(page).filter({ hasText: 'turned round' })).not.toHaveCount(0);
  });

  test('is narrowed like words are', async ({ page }) => {
    await open(page, { q: 'lR LL R' });
    await expect(status(page)).toHaveText(/result/);
    await page.getByRole('combobox', { name: 'Kind' }).selectOption('Rudiments');
    await expect(results(page).filter({ hasNotText: 'Rudiment' })).toHaveCount(0);
    await expect(results(page)).not.toHaveCount(0);
    await expect(page).toHaveURL(/kind=rudiment/);
    await page.getByRole('combobox', { name: 'Kind' }).selectOption('any');
    await page.getByRole('combobox', { name: 'Rudiment' }).selectOption('Flam Drag');
    await expect(page).toHaveURL(/rudiment=flam-drag/);
    await expect(results(page).first()).toContainText(/flam drag/i);
  });

  test('with a fault is looked for as words, and it is said why', async ({ page }) => {
    await open(page, { q: 'rR L L' });
    await expect(status(page)).toContainText('Read as words, because as a sticking it has a fault: ');
    await page.getByRole('button', { name: 'Or a stroke to each slot: R R L L' }).click();
    await expect(page.getByRole('searchbox')).toHaveValue('R R L L');
    await expect(page.getByRole('searchbox')).toBeFocused();
    await expect(status(page)).toHaveText(/Read as the sticking R R L L\. .*result/);
  });

  test('that is not found: the page says what else to try', async ({ page }) => {
    await open(page, { q: 'H H H' });
    await expect(status(page)).toContainText('Nothing here has that in it');
    await page.getByRole('button', { name: 'Look for it in any rotation' }).click();
    await expect(status(page)).toContainText('in any rotation');
    await expect(page.getByRole('searchbox')).toBeFocused();
    await expect(main(page).getByRole('link', { name: 'Exercises' })).toBeVisible();
  });
});

test.describe('words', () => {
  test('that no page has all of: pages with most of them are shown, and the page says so', async ({ page }) => {
    await open(page, { q: 'ratamacue metronome' });
    await expect(status(page)).toContainText('No page has all of these words.');
    await expect(results(page).filter({ hasText: /ratamacue/i })).not.toHaveCount(0);
  });

  test('are narrowed to a rudiment', async ({ page }) => {
    await open(page, { q: '', rudiment: 'flam-drag' });
    await expect(status(page)).toHaveText(/result/);
    await expect(results(page).filter({ hasText: 'Flam Drag' })).not.toHaveCount(0);
  });
});

test.describe('by keyboard', () => {
  test('down goes to the results and through them, up goes back to the field', async ({ page }) => {
    await open(page, { q: 'flam' });
    await expect(status(page)).toHaveText(/result/);
    await page.getByRole('searchbox').press('ArrowDown');
    await expect(results(page).nth(0).getByRole('link')).toBeFocused();
    await page.keyboard.press('ArrowDown');
    await expect(results(page).nth(1).getByRole('link')).toBeFocused();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await expect(page.getByRole('searchbox')).toBeFocused();
  });

  test('more results: the focus goes to the first new one', async ({ page }) => {
    await open(page, { q: 'flam' });
    await page.getByRole('button', { name: 'Show more' }).press('Enter');
    await expect(results(page).nth(10).getByRole('link')).toBeFocused();
  });
});

test.describe('where the index does not come', () => {
  test('the index of stickings is asked for again', async ({ page, watched }) => {
    watched.expectFault(/stickings|Failed to load resource/);
    await page.route('**/stickings.json', (route) => route.abort());
    await open(page, { q: 'R L L' });
    await expect(status(page)).toContainText('The search index did not load.');
    await page.unroute('**/stickings.json');
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(status(page)).toHaveText(/result/);
  });

  test('a slow index is waited for, and the page says so', async ({ page }) => {
    let release = () => {};
    const held = new Promise<void>((resolve) => (release = resolve));
    await page.route('**/stickings.json', (route) => void held.then(() => route.continue()));
    await open(page, { q: 'R L L' });
    await expect(status(page)).toContainText(/looking/i);
    await expect(status(page)).toContainText('Still looking');
    release();
    await expect(status(page)).toHaveText(/result/);
  });

  test('offline, the page says so', async ({ page, context, watched }) => {
    watched.expectFault(/stickings|Failed to load resource|ERR_INTERNET_DISCONNECTED/);
    await open(page, { q: 'flam' });
    await expect(status(page)).toHaveText(/result/);
    await context.setOffline(true);
    await page.getByRole('searchbox').fill('R L L');
    await expect(status(page)).toContainText('You are offline');
    await context.setOffline(false);
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(status(page)).toHaveText(/result/);
  });
});
