import type { Page } from '@playwright/test';
import { expect, settled, test } from './site.ts';

// The largest texts that are legal, and larger ones that are not: a page draws as much as it says, and stays at hand.

const DENSE = 'llR+K+HllR+K+HllR+K+HllR+K+H';
/** More elements than this no page draws for what is typed. */
const MOST_ELEMENTS = 4_000;

const elementsIn = (page: Page, place: string) => page.locator(`${place} *`).count();

const SUMS: [name: string, address: string, says: RegExp, more: RegExp][] = [
  [
    'a cell of 4,091 slots',
    '#resolve&cell=%7BR%7D4091&meter=15/4&grid=8',
    /is back on beat 1 after 4,091 bars/,
    /The first bar is drawn\..*told for the first 32 bars\..*too long to be played/s,
  ],
  ['a cell of 127 slots', '#resolve&cell=%7BR%7D127', /after 127 bars/, /The first 8 bars are drawn/],
  [
    'a slot of twenty strokes, 960 times',
    `#fit&cell=${encodeURIComponent(DENSE)}&bars=8&meter=15/4&grid=8`,
    /goes 960 times and leaves nothing/,
    /The first bar is drawn\..*8,192 strokes/s,
  ],
  [
    'an order of 960 cells',
    '#orders&cells=R,L&bars=8&meter=15/4&grid=8',
    /orders fill the eight bars/,
    /The first bar is drawn/,
  ],
];

for (const [name, address, says, more] of SUMS)
  test(`${name} is answered, drawn as far as it says, and its sum stays usable`, async ({ page }) => {
    await page.goto(`bar-math/${address}`);
    const sum = `#${address.slice(1).split('&')[0]}`;
    await expect(page.locator(`${sum} .says`)).toHaveText(says);
    await expect(page.locator(`${sum} .sheet`)).toHaveText(more);
    expect(await page.locator(`${sum} .bar-ruler text.count`).count()).toBeLessThanOrEqual(128);
    expect(await elementsIn(page, sum)).toBeLessThan(MOST_ELEMENTS);
    await page.locator(`${sum} input[type=text]`).last().fill('1');
    await expect(page).toHaveURL(/=1($|&)/);
  });

test('orders kept far apart are put in a row without every step between', async ({ page }) => {
  await page.goto('bar-math/#orders&cells=R*480,L*480&bars=8&meter=15/4&grid=8&kept=1,99999999999999999999');
  await expect(page.locator('#orders .practice')).toHaveText(/swaps from the one before/);
});

test('a field that holds too much says how much it can hold', async ({ page }) => {
  await page.goto('bar-math/');
  const field = page.locator('#orders-accents');
  await page.locator('#orders summary', { hasText: 'Rules' }).first().click();
  await field.fill('1, '.repeat(20_000));
  await expect(page.locator('#orders .says')).toHaveText(
    /60,000 characters are too many here: at most 4,096 can stand/,
  );
});

test('half a character is typed, and the address holds what can stand for it', async ({ page }) => {
  await page.goto('bar-math/');
  await page.getByLabel('the cell, in letters or its length').first().fill('R \ud800');
  await expect(page).toHaveURL(/#fit&cell=R\+%EF%BF%BD/);
});

test('what takes long is counted beside the page, can be stopped and begun again', async ({ page }) => {
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => (letThrough = resolve));
  await page.route('**/bar-math.worker*', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('bar-math/#resolve&cell=%7BlR%7D4095&meter=15/4&grid=8');
  const sum = page.locator('#resolve');
  await expect(sum.locator('.says')).toHaveText('Counting …');
  await sum.getByRole('button', { name: 'Stop counting' }).click();
  await expect(sum.locator('.says')).toHaveText('Stopped. Change a field, or count again.');
  letThrough();
  await sum.getByRole('button', { name: 'Count again' }).click();
  await expect(sum.locator('.says')).toHaveText(/is back on beat 1 after 273 bars/);
  await expect(sum.getByRole('button', { name: /count/i })).toHaveCount(0);
});

test('a sticking of 3,840 slots of flams is read, and drawn as far as it says', async ({ page }) => {
  await page.goto('write/');
  await settled(page);
  const here = page.locator('form.try');
  await here.getByLabel('Meter').fill('15/4');
  await here.getByLabel('Slots a beat').selectOption('8');
  await here.getByLabel('Sticking').fill('{lR}3840');
  await expect(here.locator('.says')).toHaveText(/^Fills 32 bars: 3,?840/);
  await expect(here.locator('svg.beat')).toHaveCount(15);
  await expect(here).toContainText('The first bar is drawn.');
  expect(await elementsIn(page, 'form.try')).toBeLessThan(MOST_ELEMENTS);
  await here.getByLabel('Sticking').fill('R');
  await expect(here.locator('.says')).toHaveText(/1 of 120/);
  await expect(here.locator('svg.beat')).toHaveCount(0);
});

test('a search for more than is looked for says so', async ({ page }) => {
  await page.goto('search/');
  await settled(page);
  const field = page.getByRole('main').getByRole('searchbox');
  await field.fill('R L '.repeat(20_000));
  await expect(page.locator('.search-status')).toHaveText(
    /79999 characters are too many|80000 characters are too many/,
  );
  await field.fill('{R}4000');
  await expect(page.locator('.search-status')).not.toHaveText(/looking/i);
});
