import type { Page } from '@playwright/test';
import { expect, test } from './site.ts';

const LESSON = './lessons/the-flam-drag/';
const main = (page: Page) => page.getByRole('main');

/** Opens a page whose scripts are still on their way; they arrive when what is returned is called. */
async function openSlowly(page: Page, address: string): Promise<() => Promise<void>> {
  const { promise: arrived, resolve: arrive } = Promise.withResolvers<void>();
  let held = 0;
  await page.route('**/_astro/*.js', async (route) => {
    held += 1;
    await arrived;
    await route.continue();
  });
  await page.goto(address, { waitUntil: 'commit' });
  // What is to be used stands before the foot of the page.
  await expect(page.getByRole('contentinfo')).toBeAttached();
  return async () => {
    await expect.poll(() => held).toBeGreaterThan(0);
    arrive();
  };
}

test.describe('on a slow line, before the scripts of the page have arrived', () => {
  test('an arrow key turns the page once they have', async ({ page }) => {
    const arrive = await openSlowly(page, LESSON);
    await page.keyboard.press('ArrowRight');
    await arrive();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Right, left, alternating');
  });

  test('an arrow key pressed in a field does not', async ({ page }) => {
    const arrive = await openSlowly(page, LESSON);
    await page.getByLabel('Your answer, a number').press('ArrowRight');
    await arrive();
    await expect(page.locator('[data-waits]')).toHaveCount(0);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The flam drag');
  });

  test('an answer that is sent is judged, and the page stays', async ({ page }) => {
    const arrive = await openSlowly(page, LESSON);
    const question = page.locator('form[data-question]');
    const field = question.getByLabel('Your answer, a number');
    await field.fill('12');
    await field.press('Enter');
    await arrive();
    await expect(question.getByRole('status')).toHaveText('Yes: 12.');
    await expect(page).toHaveURL(/\/the-flam-drag\/$/);
  });

  test('a choice that is pressed is judged', async ({ page }) => {
    const arrive = await openSlowly(page, './lessons/accents-in-triplets/');
    const question = page.locator('form[data-question]').first();
    await question.getByRole('button', { name: 'right' }).click();
    await arrive();
    await expect(question.getByRole('status')).toHaveText('Yes: right.');
  });

  test('a lesson that is marked as done is marked', async ({ page }) => {
    const arrive = await openSlowly(page, LESSON);
    const mark = page.locator('[data-mark]').getByRole('button');
    await mark.click();
    await arrive();
    await expect(mark).toHaveAttribute('aria-pressed', 'true');
  });

  test('filters that are chosen narrow the list', async ({ page }) => {
    const arrive = await openSlowly(page, './exercises/');
    await main(page).getByRole('combobox', { name: 'Part' }).selectOption('6');
    await main(page)
      .getByRole('checkbox', { name: /^flams/ })
      .check();
    await arrive();
    await expect(page).toHaveURL(/\/exercises\/\?part=6&with=flams$/);
    await expect(main(page).getByRole('heading', { level: 2 })).toHaveCount(1);
    await expect(main(page).getByRole('checkbox', { name: /^flams/ })).toBeChecked();
  });

  test('a key that only the player knows takes the tempo up by ten', async ({ page }) => {
    const arrive = await openSlowly(page, './exercises/flam-drag-slow/');
    const tempo = main(page)
      .getByRole('spinbutton', { name: /^tempo/ })
      .first();
    const before = Number(await tempo.inputValue());
    await tempo.press('PageUp');
    await arrive();
    await expect(tempo).toHaveValue(String(before + 10));
  });

  test('another puzzle is asked for, and comes', async ({ page }) => {
    const arrive = await openSlowly(page, './puzzles/which/#1-4182');
    await main(page).getByRole('button', { name: 'Another' }).click();
    await arrive();
    await expect(page).toHaveURL(/#1-(?!4182$)\d+$/);
  });

  test('a word that is typed is searched for', async ({ page }) => {
    const arrive = await openSlowly(page, './search/');
    await main(page).getByRole('searchbox').pressSequentially('flam drag');
    await arrive();
    await expect(main(page).getByRole('status')).toHaveText(/result/);
    await expect(page).toHaveURL(/\?q=flam\+drag$/);
  });
});

test('where the script does not arrive at all, filters are sent as browsers send forms', async ({ page, watched }) => {
  watched.expectFault(/ERR_FAILED/);
  await page.route('**/_astro/*.js', (route) => route.abort());
  await page.goto('./exercises/');
  await page.unroute('**/_astro/*.js');
  await main(page).getByRole('combobox', { name: 'Part' }).selectOption('6');
  await main(page).getByRole('spinbutton').press('Enter');
  await expect(page).toHaveURL(/\/exercises\/\?part=6/);
  await expect(main(page).getByRole('heading', { level: 2 })).toHaveCount(1);
});
