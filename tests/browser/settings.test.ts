import type { Locator, Page } from '@playwright/test';
import { expect, test } from './site.ts';

const LESSON = './lessons/the-flam-drag/';
const EXERCISE = './exercises/flam-drag-slow/';
const KEY = 'barwright:/';

const players = (page: Page) => page.locator('figure:has(form.player)');
const tempo = (player: Locator) => player.getByRole('spinbutton', { name: /^tempo/ });
const check = (player: Locator, name: string) =>
  player.getByRole('group', { name: 'check pattern' }).getByRole('radio', { name });

/** Opens a page in a browser that remembers something. */
async function open(page: Page, address: string, kept: object): Promise<void> {
  await page.addInitScript(([key, text]) => localStorage.getItem(key) ?? localStorage.setItem(key, text), [
    KEY,
    JSON.stringify({ version: 1, ...kept }),
  ] as const);
  await page.goto(address);
}

test('what is remembered stands in every panel of a page once one of them is reached for', async ({ page }) => {
  await open(page, LESSON, { site: { check: 2, flamMs: 45 } });
  const all = await players(page).all();
  expect(all.length).toBeGreaterThan(2);
  await all[0].getByRole('button', { name: /^Play/ }).hover();
  for (const player of all) {
    await expect(check(player, '2:2')).toBeChecked();
    await expect(player.getByText(/flam width\s+30 ms/)).toHaveCount(0);
  }
});

test('what is set in one panel is set in all of them, in this tab and in another', async ({ page, context }) => {
  await page.goto(LESSON);
  const other = await context.newPage();
  await other.goto(LESSON);
  await players(other).first().getByRole('button', { name: /^Play/ }).hover();
  await check(players(page).first(), '4:4').click();
  for (const player of [...(await players(page).all()), ...(await players(other).all())])
    await expect(check(player, '4:4')).toBeChecked();
  await other.close();
});

test('a tempo that a browser remembers is there at once, and a link lies over it', async ({ page }) => {
  await open(page, `${EXERCISE}?lead=left`, { exercises: { 'flam-drag-slow': { tempo: 61 } } });
  const player = players(page).first();
  await expect(player.getByText('Set by the link: left lead.')).toBeVisible();
  await expect(tempo(player)).toHaveValue('61');
});

test.describe('a link that is copied', () => {
  test.use({ permissions: ['clipboard-read', 'clipboard-write'] });

  test('carries what is remembered, before the player has been reached for', async ({ page, served }) => {
    await open(page, EXERCISE, { exercises: { 'flam-drag-slow': { tempo: 61 } }, site: { flamMs: 45 } });
    await players(page)
      .first()
      .getByRole('link', { name: /^Copy link/ })
      .press('Enter');
    await expect
      .poll(() => page.evaluate(() => navigator.clipboard.readText()))
      .toBe(`${served.address}exercises/flam-drag-slow/?tempo=61&flam=45`);
  });
});

test('the frame for another page carries what is set above it', async ({ page }) => {
  await page.goto(EXERCISE);
  await page.locator('.embed-snippet summary').click();
  const frame = page.locator('.embed-snippet textarea').first();
  await tempo(players(page).first()).fill('77');
  await tempo(players(page).first()).press('Enter');
  await expect(frame).toHaveValue(/\?tempo=77"/);
});
