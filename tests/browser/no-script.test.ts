import { onePageOfEachKind, PLAIN } from '../helpers/built-site.ts';
import { expect, test } from './site.ts';

test.use({ javaScriptEnabled: false });

for (const [kind, address] of onePageOfEachKind(PLAIN)) {
  test(`${kind} (/${address}) reads without script and shows no control that would do nothing`, async ({ page }) => {
    await page.goto(`./${address}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByRole('main')).toBeVisible();
    await expect(page.locator('button:visible, input:visible, select:visible')).toHaveCount(0);
  });
}

test('a lesson shows its notation without script', async ({ page }) => {
  await page.goto(`./${onePageOfEachKind(PLAIN).get('lessons')}`);
  const score = page.getByRole('img').first();
  await expect(score).toBeVisible();
  await expect(score.locator('[data-stroke]').first()).toBeAttached();
});
