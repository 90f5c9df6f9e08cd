import type { Page } from '@playwright/test';
import { expect, SCHOOL_NAME, settled, test } from './site.ts';

const LESSON = './lessons/the-flam-drag/';
const main = (page: Page) => page.getByRole('main');

test.describe('finding', () => {
  test('a drummer types a word in the box at the top and finds the lesson about it', async ({ page }) => {
    await page.goto('./');
    const box = page.getByRole('banner').getByRole('searchbox');
    await box.fill('flam drag');
    await box.press('Enter');
    await expect(page).toHaveURL(/\/search\/\?q=flam\+drag$/);
    await expect(main(page).getByRole('status')).toHaveText(/result/);
    await page.getByRole('combobox', { name: 'Kind' }).selectOption('lesson');
    await expect(page).toHaveURL(/kind=lesson/);
    await main(page).getByRole('link', { name: 'The flam drag', exact: true }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The flam drag');
  });

  test('a drummer types a sticking and finds what contains it', async ({ page }) => {
    await page.goto('./search/?q=lR+LL+R');
    await expect(main(page).getByRole('status')).toHaveText(/result/);
    const found = main(page).getByRole('listitem').first();
    await expect(found).toContainText('lR LL R');
    await expect(found.getByRole('link')).toHaveText(/flam drag/i);
  });

  test('a search can be sent: the address brings back its words and filters', async ({ page }) => {
    await page.goto('./search/?q=flam&part=6');
    await expect(page.getByRole('searchbox')).toHaveValue('flam');
    await expect(page.getByRole('combobox', { name: 'Part' })).toHaveValue('6');
    await expect(main(page).getByRole('status')).toHaveText(/result/);
    await page.getByRole('button', { name: 'Take the filters off' }).click();
    await expect(page).toHaveURL(/\/search\/\?q=flam$/);
  });

  test('a word that no page has is said not to be found', async ({ page }) => {
    await page.goto('./search/?q=qwqwq');
    await expect(main(page).getByRole('status')).toHaveText('Nothing has that in it.');
  });

  test('search says that its index is missing, and links what there is', async ({ page, watched }) => {
    watched.expectFault(/pagefind|Failed to load resource/);
    await page.route('**/pagefind/**', (route) => route.abort());
    await page.goto('./search/?q=flam');
    await expect(main(page).getByRole('status')).toHaveText(/search index did not load/);
    await expect(main(page).getByRole('link', { name: 'Course' })).toBeVisible();
    await page.unroute('**/pagefind/**');
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(main(page).getByRole('status')).toHaveText(/result/);
  });

  test('an unknown address offers a search that works', async ({ page, watched }) => {
    watched.expectFault(/404/);
    await page.goto('./lessons/no-such-lesson/');
    await main(page).getByRole('searchbox').fill('triplet');
    await main(page).getByRole('button', { name: 'Find' }).click();
    await expect(page).toHaveURL(/\/search\/\?q=triplet$/);
  });

  test('a word in a lesson leads to its meaning', async ({ page }) => {
    await page.goto(LESSON);
    await main(page).locator('a.term', { hasText: 'diddle' }).first().click();
    await expect(page).toHaveURL(/\/glossary\/#diddle$/);
    await expect(page.locator('#diddle')).toBeInViewport();
  });
});

test.describe('going through the course', () => {
  test('the arrow keys turn to the lesson after and back', async ({ page }) => {
    await page.goto(LESSON);
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Right, left, alternating');
    await settled(page);
    await page.keyboard.press('ArrowLeft');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The flam drag');
  });

  test('an arrow key in a field stays in the field', async ({ page }) => {
    await page.goto(LESSON);
    await page.getByLabel('Your answer, a number').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The flam drag');
  });

  test('the home page leads back to the lesson one was reading', async ({ page }) => {
    await page.goto('./');
    await expect(main(page).getByText('You were reading')).toBeHidden();
    await page.goto(LESSON);
    await page.goto('./');
    await main(page).getByText('You were reading').getByRole('link', { name: 'The flam drag' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The flam drag');
  });

  test('the first press of Tab offers to skip to the page', async ({ page }) => {
    await page.goto(LESSON);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect(main(page)).toBeFocused();
  });
});

test.describe('a question', () => {
  const question = (page: Page) => page.locator('form[data-question]');

  test('takes a typed answer, nudges a wrong one and tells why once it is right', async ({ page }) => {
    await page.goto(LESSON);
    const field = question(page).getByLabel('Your answer, a number');
    await field.fill('3');
    await field.press('Enter');
    await expect(question(page).getByRole('status')).toHaveText(/^More than 3\./);
    await expect(question(page).locator('details')).not.toHaveAttribute('open');
    // Three a beat, four beats: a grace note and a diddle each.
    await field.fill('twelve');
    await field.press('Enter');
    await expect(question(page).getByRole('status')).toHaveText('Yes: 12.');
    await expect(question(page).locator('details')).toHaveAttribute('open');
  });

  test('takes a choice by keyboard', async ({ page }) => {
    await page.goto('./lessons/accents-in-triplets/');
    await question(page).getByRole('button', { name: 'left' }).press('Enter');
    await expect(question(page).getByRole('status')).toHaveText(/^Not left\./);
    await question(page).getByRole('button', { name: 'right' }).press(' ');
    await expect(question(page).getByRole('status')).toHaveText('Yes: right.');
    await expect(question(page).getByRole('button', { name: 'right' })).toHaveAttribute('aria-pressed', 'true');
  });

  test.describe('without script', () => {
    test.use({ javaScriptEnabled: false });

    test('shows its answer on request', async ({ page }) => {
      await page.goto(LESSON);
      await expect(question(page).getByText('12', { exact: true })).toBeHidden();
      await question(page).getByText('Show the answer').click();
      await expect(question(page).getByText('12', { exact: true })).toBeVisible();
    });
  });
});

test.describe('the sheet', () => {
  for (const width of [1280, 320]) {
    test(`nothing moves while a lesson loads, ${width} px wide`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      await page.addInitScript(() => {
        const moved: string[] = [];
        Object.assign(window, { moved });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & { sources: { node?: Node | null }[] })[])
            for (const { node } of entry.sources)
              moved.push((node instanceof Element ? node.outerHTML : (node?.textContent ?? 'something')).slice(0, 200));
        }).observe({ type: 'layout-shift', buffered: true });
      });
      await page.goto(LESSON);
      await settled(page);
      await page.mouse.wheel(0, 4000);
      await expect(page.getByRole('contentinfo')).toBeAttached();
      expect(await page.evaluate(() => (window as unknown as { moved: string[] }).moved)).toEqual([]);
    });
  }

  test('on paper a lesson has its notation and text, without navigation and controls', async ({ page }) => {
    await page.goto(LESSON);
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.locator('.score').first()).toBeVisible();
    await expect(page.getByRole('banner')).toBeHidden();
    await expect(page.getByRole('navigation')).toHaveCount(0);
    await expect(page.getByRole('contentinfo')).toBeHidden();
    await expect(page.getByRole('button', { name: /^Play/ })).toHaveCount(0);
    await expect(page.getByText(`${SCHOOL_NAME} ·`)).toBeVisible();
  });
});
