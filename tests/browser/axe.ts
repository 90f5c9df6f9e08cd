import type { Page } from '@playwright/test';
import axe from 'axe-core';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What the accessibility rules find on a page, a line each: the rule, what it asks and where. Empty where all is well. */
export async function barriersOn(page: Page): Promise<string[]> {
  // Evaluated, not added as a script: the page's content policy would refuse that.
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async (tags) => {
    // What stands inside a picture is no content of its own; leaving it out saves half the time.
    const context = { exclude: [['[role="img"] > *']] };
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(context, {
      runOnly: tags,
      resultTypes: ['violations'],
    });
    return violations.map(({ id, help, nodes }) => ({ id, help, places: nodes.map(({ target }) => target.join(' ')) }));
  }, TAGS);
  return violations.map(({ id, help, places }) => `${id}: ${help}: ${places.slice(0, 5).join(', ')}`);
}
