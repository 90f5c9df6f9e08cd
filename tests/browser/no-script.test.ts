import { onePageOfEachKind, PLAIN } from '../helpers/built-site.ts';
import { expect, test } from './site.ts';

test.use({ javaScriptEnabled: false });

test('a page of each kind reads without script and shows no control that would do nothing', async ({ page }) => {
  for (const [kind, address] of onePageOfEachKind(PLAIN)) {
    await page.goto(`./${address}`);
    await expect.soft(page.getByRole('heading', { level: 1 }), kind).toBeVisible();
    await expect.soft(page.getByRole('main'), kind).toBeVisible();
    await expect.soft(page.locator('button:visible, input:visible, select:visible'), kind).toHaveCount(0);
  }
});

test('a lesson shows its notation without script', async ({ page }) => {
  await page.goto(`./${onePageOfEachKind(PLAIN).get('lessons')}`);
  const score = page.getByRole('img').first();
  await expect(score).toBeVisible();
  await expect(score.locator('[data-stroke]').first()).toBeAttached();
});
