import { onePageOfEachKind, SCHOOL } from '../helpers/built-site.ts';
import { expect, settled, test } from './site.ts';

test.use({ built: SCHOOL });

for (const [kind, address] of onePageOfEachKind(SCHOOL)) {
  test(`${kind} (/${address}) finds all it needs below a base path`, async ({ page, served }) => {
    await page.goto(`./${address}`);
    await settled(page);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const links = page.locator('a[href^="/"]');
    const addresses = await links.evaluateAll((all) => all.map((link) => link.getAttribute('href')!));
    expect(addresses.length).toBeGreaterThan(0);
    expect(addresses.filter((href) => !href.startsWith(SCHOOL.base))).toEqual([]);
    // A puzzle writes its number behind its address.
    expect(page.url().replace(/#.*/, '')).toBe(`${served.address}${address}`);
  });
}
