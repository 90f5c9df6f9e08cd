import type { Page } from '@playwright/test';
import { onePageOfEachKind, pagesOf, PLAIN } from '../helpers/built-site.ts';
import { shares } from '../helpers/shares.ts';
import { barriersOn } from './axe.ts';
import { expect, test } from './site.ts';

/** How far the page can be pushed sideways, in CSS pixels. */
const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Opens a page and says what is wrong with it, a line each; each line names the page. */
async function faultsOf(page: Page, address: string): Promise<string[]> {
  await page.goto(`./${address}`, { waitUntil: 'load' });
  const barriers = await barriersOn(page);
  const far = await sideways(page);
  return [...barriers, ...(far ? [`scrolls sideways by ${far} px`] : [])].map((fault) => `/${address}: ${fault}`);
}

const ofEachKind = [...onePageOfEachKind(PLAIN).values()];

/** One page of each kind, and with LONG every page there is. */
const swept = process.env.LONG ? pagesOf(PLAIN) : ofEachKind;

/** Pages one after another in the same tab: a new one for each takes as long as the looking. */
const AT_ONCE = 8;

function sweep(addresses: string[]): void {
  for (const share of shares(addresses, AT_ONCE))
    test(`/${share[0]} to /${share.at(-1)}: each can be read and used by everyone, and none scrolls sideways`, async ({
      page,
    }) => {
      test.setTimeout(share.length * 20_000);
      for (const address of share) expect.soft(await faultsOf(page, address)).toEqual([]);
    });
}

test.describe('at 320 px', () => {
  test.use({ viewport: { width: 320, height: 640 } });
  sweep(swept);
});

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(`at 1280 px, ${colorScheme}`, () => {
    test.use({ colorScheme, viewport: { width: 1280, height: 900 } });
    sweep(ofEachKind);
  });
