import { expect, test } from './site.ts';

test('an unknown address gives a page that leads on', async ({ page, watched }) => {
  watched.expectFault(/404/);
  const response = await page.goto('./lessons/there-is-no-such-lesson/');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByRole('main').getByRole('link').first()).toBeVisible();
});
