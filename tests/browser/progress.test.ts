import type { Page } from '@playwright/test';
import { barriersOn } from './axe.ts';
import { expect, settled, test } from './site.ts';

const LESSON = './lessons/the-flam-drag/';
const main = (page: Page) => page.getByRole('main');
const mark = (page: Page) => main(page).getByRole('button', { name: 'I can play this' });
const row = (page: Page, id: string) => page.locator(`[data-lesson="${id}"]`);

async function tick(page: Page, lesson: string): Promise<void> {
  await page.goto(`./lessons/${lesson}/`);
  await mark(page).click();
}

test.describe('a lesson that can be played', () => {
  test('is ticked off at its foot, with the keyboard, and stays so', async ({ page }) => {
    await page.goto(LESSON);
    await expect(mark(page)).toHaveAttribute('aria-pressed', 'false');
    await mark(page).focus();
    await page.keyboard.press('Space');
    await expect(mark(page)).toHaveAttribute('aria-pressed', 'true');
    await expect(main(page).getByText('Ticked off in the contents')).toBeVisible();
    expect(await barriersOn(page)).toEqual([]);
    await page.reload();
    await expect(mark(page)).toHaveAttribute('aria-pressed', 'true');
    await mark(page).press('Enter');
    await expect(mark(page)).toHaveAttribute('aria-pressed', 'false');
    await expect(main(page).getByText('Taken back.')).toBeVisible();
    await page.reload();
    await expect(mark(page)).toHaveAttribute('aria-pressed', 'false');
  });

  test('is done in the contents, in words, and counted for its part and for all', async ({ page }) => {
    await page.goto('./course/');
    await expect(main(page).getByText('done')).toHaveCount(0);
    await tick(page, 'the-flam-drag');
    await tick(page, 'the-bar-as-a-ruler');
    await page.goto('./course/');
    await expect(row(page, 'the-flam-drag').getByText('done', { exact: true })).toBeVisible();
    await expect(row(page, 'counting-out-loud').getByText('done', { exact: true })).toBeHidden();
    await expect(page.locator('#part-1').getByText('1 of 5 done')).toBeVisible();
    await expect(page.locator('#part-2').getByText(/^0 of \d+ done$/)).toBeVisible();
    await expect(main(page).getByText(/^2 of \d+ lessons done\.$/)).toBeVisible();
    await expect(row(page, 'the-bar-as-a-ruler').getByText('you were here')).toBeVisible();
    await expect(main(page).getByText('Next comes').getByRole('link')).toHaveText('Counting out loud');
    expect(await barriersOn(page)).toEqual([]);
  });

  test('is counted on the first page', async ({ page }) => {
    await tick(page, 'the-bar-as-a-ruler');
    await page.goto('./');
    await expect(main(page).getByText(/^1 of \d+ lessons done\.$/)).toBeVisible();
    await main(page).getByText('Next comes').getByRole('link', { name: 'Counting out loud' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Counting out loud');
  });

  test('is ticked off in every tab that is open', async ({ page, context }) => {
    await page.goto('./course/');
    const other = await context.newPage();
    await other.goto(LESSON);
    await mark(other).click();
    await expect(row(page, 'the-flam-drag').getByText('done', { exact: true })).toBeVisible();
    const third = await context.newPage();
    await third.goto(LESSON);
    await mark(third).click();
    await expect(mark(other)).toHaveAttribute('aria-pressed', 'false');
    await expect(row(page, 'the-flam-drag').getByText('done', { exact: true })).toBeHidden();
  });

  test('a mark on a lesson that is not here any more is kept and not counted', async ({ page }) => {
    await tick(page, 'the-flam-drag');
    const kept = () =>
      page.evaluate(() => {
        const [key] = Object.keys(localStorage).filter((name) => name.startsWith('barwright:'));
        return [key, JSON.parse(localStorage.getItem(key)!) as { done: string[] }] as const;
      });
    const [key, stored] = await kept();
    const older = JSON.stringify({ ...stored, done: ['a-lesson-of-last-year', ...stored.done] });
    await page.evaluate(([name, text]) => localStorage.setItem(name, text), [key, older] as const);
    await page.goto('./course/');
    await expect(main(page).getByText(/^1 of \d+ lessons done\.$/)).toBeVisible();
    await tick(page, 'the-bar-as-a-ruler');
    expect((await kept())[1].done).toEqual(['a-lesson-of-last-year', 'the-flam-drag', 'the-bar-as-a-ruler']);
  });
});

test.describe('a browser that keeps nothing', () => {
  for (const [how, refuse] of [
    [
      'blocks storage',
      () =>
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('blocked', 'SecurityError');
          },
        }),
    ],
    [
      'has no room',
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
    ],
  ] as const) {
    test(`${how}: the mark says how long it lasts, and works`, async ({ page }) => {
      await page.addInitScript(refuse);
      await page.goto(LESSON);
      await mark(page).click();
      await expect(mark(page)).toHaveAttribute('aria-pressed', 'true');
      await expect(main(page).getByText('This browser keeps nothing for this site')).toBeVisible();
      await mark(page).click();
      await expect(mark(page)).toHaveAttribute('aria-pressed', 'false');
      await page.goto('./course/');
      await settled(page);
      await expect(row(page, 'the-flam-drag').getByRole('link')).toBeVisible();
    });
  }
});

test('each part of the contents leads to its exercises', async ({ page }) => {
  await page.goto('./course/');
  const link = page.locator('#part-6').getByRole('link', { name: /exercises of this part$/ });
  const promised = /\d+/.exec((await link.textContent()) ?? '')?.[0];
  await link.click();
  await expect(page).toHaveURL(/\/exercises\/\?part=6$/);
  await expect(main(page).getByRole('status').first()).toHaveText(new RegExp(`^${promised} of \\d+ exercises$`));
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 320, height: 640 } });

  test('the mark can be touched, and contents with marks fit', async ({ page }) => {
    await page.goto(LESSON);
    const size = (await mark(page).boundingBox())!;
    expect(size.height).toBeGreaterThanOrEqual(44);
    await mark(page).click();
    await page.goto('./course/');
    await expect(main(page).getByText(/lessons done/)).toBeVisible();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a lesson has no mark and the contents no counts', async ({ page }) => {
    await page.goto(LESSON);
    await expect(mark(page)).toBeHidden();
    await page.goto('./course/');
    await expect(main(page).getByText('done')).toHaveCount(0);
    await expect(row(page, 'the-flam-drag').getByRole('link')).toBeVisible();
  });
});
