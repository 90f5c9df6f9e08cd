import type { Page } from '@playwright/test';
import { readSquareCode } from '../helpers/read-square-code.ts';
import { barriersOn } from './axe.ts';
import { expect, test } from './site.ts';

const SIX = 'flam-drag-slow,flam-drag-up-to-speed,flam-drag-lead-alone,groove-shuffle,kick-and-rll,accent-on-the-and';
const articles = (page: Page) => page.locator('.paper article');
const titles = (page: Page) => articles(page).locator('h3').allTextContents();

test('ticked exercises become a sheet, in the order of ticking, whatever is filtered', async ({ page }) => {
  await page.goto('./exercises/');
  const tick = (title: string) => page.getByRole('checkbox', { name: `For a sheet: ${title}`, exact: true });
  await expect(page.getByRole('link', { name: 'Make a sheet' })).toBeHidden();
  await tick('Four to the bar, slowly').check();
  await expect(page.getByText('1 exercise ticked')).toBeVisible();
  await page.goto('./exercises/?grid=4');
  await expect(tick('Four to the bar, slowly')).toBeHidden();
  await page
    .getByRole('checkbox', { name: /^For a sheet/ })
    .first()
    .check();
  await expect(page.getByText('2 exercises ticked')).toBeVisible();
  await page.goto('./exercises/');
  await expect(tick('Four to the bar, slowly')).toBeChecked();
  expect(await barriersOn(page)).toEqual([]);
  await page.getByRole('link', { name: 'Make a sheet' }).click();
  await expect(page).toHaveURL(/\/sheet\/\?x=flam-drag-slow,[a-z0-9-]+$/);
  await expect(articles(page)).toHaveCount(2);
  expect((await titles(page))[0]).toBe('Four to the bar, slowly');
  await page.goto('./exercises/');
  await page.getByRole('button', { name: 'Untick all' }).click();
  await expect(page.getByRole('link', { name: 'Make a sheet' })).toBeHidden();
});

test('a sheet has notation, tempos to fill in, lines for name and date, and a way back', async ({ page, served }) => {
  await page.goto(`./sheet/?x=${SIX}&title=Week+3`);
  await expect(articles(page)).toHaveCount(6);
  await expect(page.locator('.paper').getByRole('heading', { name: 'Week 3' })).toBeVisible();
  const first = articles(page).first();
  await expect(first.getByRole('img', { name: /\w/ })).toBeVisible();
  await expect(first.locator('.tempos span')).toHaveText(['50', '55', '60', '65', '70', '75']);
  await expect(first).toContainText('Good enough');
  await expect(first.locator('.address')).toHaveText(
    `${served.address.replace('http://', '')}exercises/flam-drag-slow/`,
  );
  // Every outline that the notation uses is on the page, once.
  const missing = await page.evaluate(
    () =>
      [...document.querySelectorAll('.paper use')].filter(
        (use) => document.querySelectorAll(use.getAttribute('href') ?? 'none').length !== 1,
      ).length,
  );
  expect(missing).toBe(0);
  expect(await barriersOn(page)).toEqual([]);
});

/** Draws a square code on a canvas as the browser draws it, and reads off which squares are dark. */
function fieldsDrawn(page: Page): Promise<boolean[][][]> {
  return page.locator('.square-code').evaluateAll((codes) =>
    Promise.all(
      codes.map(async (code) => {
        const size = (code as SVGSVGElement).viewBox.baseVal.width;
        const copy = code.cloneNode(true) as SVGSVGElement;
        copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
        copy.setAttribute('width', String(size * 4));
        copy.setAttribute('height', String(size * 4));
        const image = new Image();
        image.src = `data:image/svg+xml,${encodeURIComponent(copy.outerHTML)}`;
        await image.decode();
        const canvas = new OffscreenCanvas(size * 4, size * 4).getContext('2d')!;
        canvas.fillStyle = 'white';
        canvas.fillRect(0, 0, size * 4, size * 4);
        canvas.drawImage(image, 0, 0);
        const { data } = canvas.getImageData(0, 0, size * 4, size * 4);
        const dark = (x: number, y: number) => data[((y * 4 + 2) * size * 4 + x * 4 + 2) * 4] < 128;
        const inner = Array.from({ length: size - 8 }, (_, place) => place + 4);
        return inner.map((y) => inner.map((x) => dark(x, y)));
      }),
    ),
  );
}

test('the square codes, drawn by the browser, read as the addresses beside them', async ({ page, served }) => {
  await page.goto(`./sheet/?x=flam-drag-slow,groove-shuffle&title=Week+3`);
  await expect(page.locator('.square-code')).toHaveCount(3);
  expect((await fieldsDrawn(page)).map(readSquareCode)).toEqual([
    `${served.address}exercises/flam-drag-slow/`,
    `${served.address}exercises/groove-shuffle/`,
    `${served.address}sheet/?x=flam-drag-slow,groove-shuffle&title=Week+3`,
  ]);
});

test('order, title, counts and paper are changed by keyboard and stand in the address', async ({ page }) => {
  await page.goto('./sheet/?x=flam-drag-slow,groove-shuffle,kick-and-rll');
  await expect(articles(page)).toHaveCount(3);
  const [one, two, three] = await titles(page);
  const up = page.getByRole('button', { name: `${three}: up` });
  await up.focus();
  await page.keyboard.press('Enter');
  await expect(up).toBeFocused();
  await expect.poll(() => titles(page)).toEqual([one, three, two]);
  await expect(page.getByText(`${three}: now 2 of 3.`)).toBeAttached();
  await page.getByRole('button', { name: `${one}: remove` }).press('Enter');
  await expect(articles(page)).toHaveCount(2);
  await expect(page.getByRole('button', { name: `${three}: remove` })).toBeFocused();
  await page.getByLabel('Title of the sheet').fill('Flams & kicks');
  await page.getByLabel('counts under the notes').uncheck();
  await page.getByRole('radio', { name: 'Letter' }).check();
  await expect(page).toHaveURL(/\?x=kick-and-rll,groove-shuffle&title=Flams\+%26\+kicks&counts=off&paper=letter$/);
  await page.reload();
  await expect(page.locator('.paper h2')).toHaveText('Flams & kicks');
  await expect.poll(() => titles(page)).toEqual([three, two]);
  await expect(page.locator('.paper [data-count]').first()).toBeHidden();
});

for (const [paper, size] of [
  ['a4', [595, 842]],
  ['letter', [612, 792]],
] as const) {
  test(`prints on ${paper}`, async ({ page }) => {
    await page.goto(`./sheet/?x=${SIX}&paper=${paper}`);
    await expect(articles(page)).toHaveCount(6);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const boxes = [...pdf.matchAll(/\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, w, h]) => [
      Math.round(Number(w)),
      Math.round(Number(h)),
    ]);
    expect(boxes.length).toBeGreaterThan(0);
    expect(boxes.length).toBeLessThanOrEqual(3);
    for (const box of boxes) expect(box).toEqual(size);
  });
}

test('exercises that are not there, and more than fit, get a sentence', async ({ page }) => {
  await page.goto('./sheet/?x=flam-drag-slow,no-such-exercise');
  await expect(articles(page)).toHaveCount(1);
  await expect(page.locator('.sheet-form > [role=status]')).toContainText(
    'There is no exercise “no-such-exercise”; it is left out.',
  );
  await page.goto('./sheet/');
  await expect(page.getByText('No exercise is on this sheet yet.')).toBeVisible();
  await page.getByRole('link', { name: 'Tick some in the list of exercises' }).click();
  await expect(page).toHaveURL(/\/exercises\/$/);
});

test('a long title is kept, and an address too long is told', async ({ page }) => {
  const title = 'ß'.repeat(300);
  await page.goto('./sheet/?x=flam-drag-slow');
  await page.getByLabel('Title of the sheet').fill(title);
  await expect(page.locator('.paper h2')).toHaveText(title);
  expect(page.url().length).toBeLessThan(2000);
  await page.getByLabel('Title of the sheet').fill('鼓'.repeat(300));
  await expect(page.getByText(/longer than 2,000 characters/)).toBeVisible();
});

test('notation that did not arrive is said to be missing, and fetched again', async ({ page, watched }) => {
  watched.expectFault(/ERR_FAILED/);
  await page.route('**/embed/**', (route) => route.abort());
  await page.goto('./sheet/?x=flam-drag-slow');
  await expect(page.getByText(/flam-drag-slow did not load/)).toBeVisible();
  await page.unroute('**/embed/**');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(articles(page)).toHaveCount(1);
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('the page says what it needs and where to print instead', async ({ page }) => {
    await page.goto('./sheet/?x=flam-drag-slow');
    await expect(page.getByText(/needs JavaScript/)).toBeVisible();
    await page.getByRole('main').getByRole('link', { name: 'Exercises' }).click();
    await expect(page).toHaveURL(/\/exercises\/$/);
    await expect(page.getByRole('checkbox')).toHaveCount(0);
  });
});
