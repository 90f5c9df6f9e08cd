import type { Page } from '@playwright/test';
import { onePageOfEachKind, pagesOf, PLAIN } from '../helpers/built-site.ts';
import { barriersOn } from './axe.ts';
import { expect, settled, test } from './site.ts';

/** How far the page can be pushed sideways, in CSS pixels. */
const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

async function open(page: Page, address: string): Promise<void> {
  await page.goto(`./${address}`);
  await settled(page);
}

test.describe('at 320 px', () => {
  test.use({ viewport: { width: 320, height: 640 } });

  for (const address of pagesOf(PLAIN)) {
    test(`/${address} can be read and used by everyone and does not scroll sideways`, async ({ page }) => {
      await open(page, address);
      expect.soft(await barriersOn(page)).toEqual([]);
      expect(await sideways(page)).toBe(0);
    });
  }
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`at 1280 px, ${colorScheme}`, () => {
    test.use({ colorScheme, viewport: { width: 1280, height: 900 } });

    for (const [kind, address] of onePageOfEachKind(PLAIN)) {
      test(`${kind} (/${address}) can be read and used by everyone`, async ({ page }) => {
        await open(page, address);
        expect.soft(await barriersOn(page)).toEqual([]);
        expect(await sideways(page)).toBe(0);
      });
    }
  });
}
