import { onePageOfEachKind, SCHOOL } from '../helpers/built-site.ts';
import { expect, settled, test } from './site.ts';

test.use({ built: SCHOOL });

for (const [kind, address] of onePageOfEachKind(SCHOOL)) {
  test(`${kind} (/${address}) finds all it needs below a base path`, async ({ page, served }) => {
    await page.goto(`./${address}`);
    await settled(page);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    for (const link of await page.locator('a[href^="/"]').all())
      expect(await link.getAttribute('href')).toMatch(/^\/school\//);
    // A puzzle writes its number behind its address.
    expect(page.url().replace(/#.*/, '')).toBe(`${served.address}${address}`);
  });
}
