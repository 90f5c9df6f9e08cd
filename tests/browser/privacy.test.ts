import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, settled, test } from './site.ts';

const KEY = 'barwright:/';
const KEPT = {
  version: 1,
  exercises: { slow: { tempo: 72 } },
  site: { swing: 2 },
  done: ['one'],
  last: 'the-bar-as-a-ruler',
};

const stored = (page: Page) => page.evaluate((key) => localStorage.getItem(key), KEY);
const status = (page: Page) => page.locator('main [role=status]');
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** Opens the page in a browser that keeps something already. */
async function open(page: Page, kept: object | undefined): Promise<void> {
  await page.goto('privacy/');
  await page.evaluate(([key, text]) => text && localStorage.setItem(key, text), [
    KEY,
    kept ? JSON.stringify(kept) : '',
  ] as const);
  await page.reload();
  await settled(page);
  await expect(page.getByLabel('Take from a file')).toBeVisible();
}

const choose = (page: Page, text: string) =>
  page
    .getByLabel('Take from a file')
    .setInputFiles({ name: 'saved.json', mimeType: 'application/json', buffer: Buffer.from(text) });

test('shows what is kept, and every word of it', async ({ page }) => {
  await open(page, KEPT);
  await expect(page.getByText('tempo or lead of one thing you played')).toBeVisible();
  await expect(page.getByText('the lesson you read last: The bar as a ruler')).toBeVisible();
  await page.getByText('Show it word for word').click();
  const words = await page.getByRole('region', { name: 'Show it word for word' }).textContent();
  expect(JSON.parse(words!)).toMatchObject(KEPT);
});

test('says so where nothing is kept, and offers nothing to delete', async ({ page }) => {
  await open(page, undefined);
  await expect(page.getByText('This browser keeps nothing of this site now.')).toBeVisible();
  await expect(button(page, 'Delete everything')).toHaveCount(0);
});

test('deletes everything after asking, and only then', async ({ page }) => {
  await open(page, KEPT);
  await button(page, 'Delete everything').press('Enter');
  await expect(button(page, 'Keep it')).toBeFocused();
  await button(page, 'Keep it').press('Enter');
  await expect(button(page, 'Delete everything')).toBeFocused();
  expect(JSON.parse((await stored(page))!)).toEqual(KEPT);
  await button(page, 'Delete everything').click();
  await button(page, 'Delete').click();
  await expect(status(page)).toContainText('Deleted.');
  expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([]);
});

test('saves a file that another browser takes', async ({ page, browser, served }) => {
  await open(page, KEPT);
  const saving = page.waitForEvent('download');
  await button(page, 'Save it to a file').click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/^drum-course-\d{4}-\d\d-\d\d\.json$/);
  const text = readFileSync(await download.path(), 'utf8');

  const other = await browser.newPage({ baseURL: served.address });
  await open(other, undefined);
  await choose(other, text);
  await expect(status(other)).toHaveText('Taken.');
  expect(JSON.parse((await stored(other))!)).toMatchObject(KEPT);
  await other.close();
});

test('adds a file to what is there, and takes that back', async ({ page }) => {
  await open(page, { ...KEPT, exercises: { slow: { tempo: 50 }, mine: { lead: 'left' } } });
  const before = await stored(page);
  await choose(page, JSON.stringify({ kind: 'barwright player data', ...KEPT }));
  await expect(status(page)).toHaveText('Taken.');
  expect(JSON.parse((await stored(page))!).exercises).toEqual({ slow: { tempo: 72 }, mine: { lead: 'left' } });
  await button(page, 'Undo').click();
  await expect(status(page)).toContainText('Undone.');
  expect(JSON.parse((await stored(page))!)).toMatchObject(JSON.parse(before!));
});

test('says what is wrong with a file, and loses nothing', async ({ page }) => {
  await open(page, KEPT);
  for (const [text, says] of [
    ['a letter', /could not be read/],
    ['{"tunes":[]}', /not one that this site has saved/],
    ['{"kind":"barwright player data","version":99}', /newer version/],
  ] as const) {
    await choose(page, text);
    await expect(status(page)).toHaveText(says);
    await expect(status(page)).toContainText('Nothing was changed.');
    expect(JSON.parse((await stored(page))!)).toEqual(KEPT);
  }
});

test('where the browser keeps nothing for the site, that is said', async ({ page }) => {
  await page.addInitScript(() =>
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('blocked', 'SecurityError');
      },
    }),
  );
  await page.goto('privacy/');
  await expect(page.getByText('This browser lets the site keep nothing')).toBeVisible();
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('tells how the browser itself deletes it', async ({ page }) => {
    await page.goto('privacy/');
    await expect(page.getByText('in the browser’s own settings')).toBeVisible();
    await expect(page.getByText('Take from a file')).toBeHidden();
  });
});

test('stands in the footer of every page', async ({ page }) => {
  await page.goto('');
  await page.getByRole('contentinfo').getByRole('link', { name: 'Privacy' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Privacy');
});
