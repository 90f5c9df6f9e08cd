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
async function open(page: Page, kept: object | string | undefined): Promise<void> {
  await page.goto('privacy/');
  await page.evaluate(([key, text]) => text && localStorage.setItem(key, text), [
    KEY,
    typeof kept === 'object' ? JSON.stringify(kept) : (kept ?? ''),
  ] as const);
  await page.reload();
  await settled(page);
  await expect(page.getByLabel('Open file')).toBeVisible();
}

const choose = (page: Page, text: string) =>
  page
    .getByLabel('Open file')
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

test('saves a file that another browser opens', async ({ page, browser, served }) => {
  await open(page, KEPT);
  const saving = page.waitForEvent('download');
  await button(page, 'Save file').click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/^drum-course-\d{4}-\d\d-\d\d\.json$/);
  const text = readFileSync(await download.path(), 'utf8');

  const other = await browser.newPage({ baseURL: served.address });
  await open(other, undefined);
  await choose(other, text);
  await expect(status(other)).toHaveText('Imported.');
  expect(JSON.parse((await stored(other))!)).toMatchObject(KEPT);
  await other.close();
});

test('adds a file to what is there, and undoes that', async ({ page }) => {
  await open(page, { ...KEPT, exercises: { slow: { tempo: 50 }, mine: { lead: 'left' } } });
  const before = await stored(page);
  await choose(page, JSON.stringify({ kind: 'barwright player data', ...KEPT }));
  await expect(status(page)).toHaveText('Imported.');
  expect(JSON.parse((await stored(page))!).exercises).toEqual({ slow: { tempo: 72 }, mine: { lead: 'left' } });
  await button(page, 'Undo import').click();
  await expect(status(page)).toHaveText('Import undone.');
  expect(JSON.parse((await stored(page))!)).toMatchObject(JSON.parse(before!));
});

test('says what is wrong with a file, and loses nothing', async ({ page }) => {
  await open(page, KEPT);
  for (const [text, says] of [
    ['a letter', /could not be read/],
    ['{"tunes":[]}', /not one that this site has saved/],
    ['{"kind":"barwright player data","version":99}', /newer version/],
    ['{"kind":"barwright player data","version":0}', /not one that this site has saved/],
    ['{"kind":"barwright player data","version":1,"site":{"__proto__":{}}}', /Nothing in that file/],
  ] as const) {
    await choose(page, text);
    await expect(status(page)).toHaveText(says);
    await expect(status(page)).toContainText('Nothing was changed.');
    expect(JSON.parse((await stored(page))!)).toEqual(KEPT);
  }
});

for (const text of ['{"version":2,"future":"tempo"}', 'torn {']) {
  test(`never loses what it cannot read: ${text}`, async ({ page }) => {
    const asides = () =>
      page.evaluate((key) => Object.entries(localStorage).filter(([name]) => name.startsWith(`${key}:aside`)), KEY);
    await open(page, text);
    await expect(page.getByText('Set aside because this site cannot read all of it: 1')).toBeVisible();
    await page.getByText('Show it word for word').click();
    await expect(page.getByRole('region', { name: 'Show it word for word' })).toContainText(text);

    await choose(page, JSON.stringify({ kind: 'barwright player data', ...KEPT }));
    await expect(status(page)).toHaveText('Imported.');
    expect(JSON.parse((await stored(page))!)).toEqual(KEPT);
    expect(await asides()).toEqual([[`${KEY}:aside:1`, text]]);
    await expect(page.getByText('Set aside because this site cannot read all of it: 1')).toBeVisible();

    const saving = page.waitForEvent('download');
    await button(page, 'Save file').click();
    const file = JSON.parse(readFileSync(await (await saving).path(), 'utf8')) as object;
    expect(file).toMatchObject({ ...KEPT, unread: [text] });

    await button(page, 'Delete what was set aside').click();
    await button(page, 'Delete').click();
    await expect(status(page)).toHaveText('Deleted. Everything else is still here.');
    expect(await asides()).toEqual([]);
    expect(JSON.parse((await stored(page))!)).toEqual(KEPT);
  });
}

test('says what of a file was left out, and what could stand there', async ({ page }) => {
  await open(page, undefined);
  await choose(page, JSON.stringify({ kind: 'barwright player data', ...KEPT, site: { swing: 900, loop: false } }));
  await expect(status(page)).toContainText('Imported, except for these entries');
  await expect(status(page).getByRole('listitem')).toHaveText(['site › swing: 900 (it can be 1–4)']);
  expect(JSON.parse((await stored(page))!).site).toEqual({ loop: false });
});

test('undoes an import without undoing what came after it', async ({ page, context }) => {
  await open(page, { ...KEPT, done: [], last: 'one' });
  await choose(page, JSON.stringify({ kind: 'barwright player data', ...KEPT }));
  await expect(status(page)).toHaveText('Imported.');
  const other = await context.newPage();
  await other.goto('lessons/the-flam-drag/');
  await expect.poll(async () => JSON.parse((await stored(page))!).last).toBe('the-flam-drag');
  await other.close();
  await button(page, 'Undo import').click();
  await expect(status(page)).toHaveText('Import undone, except for what has changed since: last.');
  expect(JSON.parse((await stored(page))!)).toMatchObject({ done: [], last: 'the-flam-drag' });
});

test('a puzzle page lives with a record that no puzzle has', async ({ page }) => {
  await open(page, {
    ...KEPT,
    puzzles: [{ kind: 'fill', seed: 1.5, day: '2026-11-25', right: true, misses: 0, hints: 0 }],
  });
  await page.goto('puzzles/');
  await expect(page.getByRole('heading', { name: 'Today' })).toBeVisible();
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
    await expect(page.getByText('Open file')).toBeHidden();
  });
});

test('stands in the footer of every page', async ({ page }) => {
  await page.goto('');
  await page.getByRole('contentinfo').getByRole('link', { name: 'Privacy' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Privacy');
});
