import type { Browser, Page } from '@playwright/test';
import { inlineScriptOf, type Weight, weigh } from './weigh.ts';

/** What one page weighs at each step of its use. */
export interface PageWeights {
  load: Weight;
  /** Inline script, which `load.html` holds and which counts as script too. */
  inline: number;
  /** What reaching for the first player adds; left out where the page has none. */
  touch?: Weight;
  /** What the first press of play adds: the sound. */
  press?: Weight;
  /** What choosing a check pattern adds: the engraver. */
  check?: Weight;
}

/** The first player of a page: the island and its play button. */
function playerOf(page: Page) {
  const island = page.locator('astro-island:has(form.player)').first();
  return { island, play: island.locator('button').filter({ visible: true }).first() };
}

/** Opens a page in a browser that has nothing cached, and uses its first player step by step, if it is to be used. */
export async function weighPage(browser: Browser, address: string, used = true): Promise<PageWeights> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const load = await weigh(page, () => page.goto(address));
  const inline = inlineScriptOf(await page.content());
  const { island, play } = playerOf(page);
  // A player that is folded away cannot be reached for.
  if (!used || !(await play.count())) {
    await context.close();
    return { load, inline };
  }
  const touch = await weigh(page, () => play.hover());
  const press = await weigh(page, () => play.click());
  const check = await weigh(page, () => island.locator('label:has(input[name="check"])').nth(1).click());
  await context.close();
  return { load, inline, touch, press, check };
}

/** Script at load: files and what stands inline. */
export const scriptOf = ({ load, inline }: PageWeights): number => load.script + inline;
