import { onePageOfEachKind, SCHOOL } from '../helpers/built-site.ts';
import { expect, settled, test } from './site.ts';

test.use({ built: SCHOOL });

test('a page of each kind finds all it needs below a base path', async ({ page, served }) => {
  for (const [kind, address] of onePageOfEachKind(SCHOOL)) {
    await page.goto(`./${address}`);
    await settled(page);
    await expect(page.getByRole('heading', { level: 1 }), kind).toBeVisible();
    // A puzzle writes its number behind its address.
    expect(page.url().replace(/#.*/, '')).toBe(`${served.address}${address}`);
  }
});

test('below a base path a bar plays, and a word and a sticking are found', async ({ page }) => {
  await page.goto('./exercises/slow/');
  await page.getByRole('button', { name: /^Play/ }).first().click();
  await expect(page.locator('form.player').getByRole('status')).toHaveText('Playing.');
  for (const asked of ['hands', 'lR LL R']) {
    await page.goto(`./search/?${new URLSearchParams({ q: asked }).toString()}`);
    await expect(page.getByRole('main').getByRole('status')).toHaveText(/result/);
    const found = page.getByRole('list', { name: 'Results' }).getByRole('link').first();
    await expect(found).toHaveAttribute('href', /^\/school\//);
  }
});
