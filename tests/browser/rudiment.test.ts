import { expect, settled, test } from './site.ts';

const ladder = 'section.ladder-of';

test('a step of the ladder sets the tempo of the player above', async ({ page }) => {
  await page.goto('rudiments/single-paradiddle/');
  await settled(page);
  await page.locator(ladder).getByRole('button', { name: '90 beats a minute' }).click();
  await expect(page.locator(ladder).getByRole('status')).toHaveText('The player above is set to 90.');
  const tempo = page.locator('.bar-figure input[type=number]');
  await tempo.focus();
  await expect(tempo).toHaveValue('90');
});

test('the ladder plays, climbs, and turns round where it is told to', async ({ page }) => {
  await page.goto('rudiments/eleven-stroke-roll/');
  await settled(page);
  const here = page.locator(ladder);
  await here.getByRole('button', { name: 'Play the ladder' }).click();
  await expect(here.getByRole('status')).toHaveText('Up: 60.');
  await expect(here.locator('[aria-current=step]')).toHaveText('60');
  await here.getByRole('button', { name: '120 beats a minute' }).click();
  await expect(here.getByRole('status')).toHaveText('Up: 120.');
  await here.getByRole('button', { name: 'Turn round here' }).click();
  await expect(here.getByRole('status')).toHaveText('Down: 120.');
  // Four bars of 2/4 at 120 are four seconds.
  await expect(here.getByRole('status')).toHaveText('Down: 110.');
  await here.getByRole('button', { name: 'Stop' }).click();
  await expect(here.getByRole('button', { name: 'Play the ladder' })).toBeVisible();
  await expect(here.locator('[aria-current=step]')).toHaveCount(0);
});

test('a player that starts stops the ladder', async ({ page }) => {
  await page.goto('rudiments/flam/');
  await settled(page);
  const here = page.locator(ladder);
  await here.getByRole('button', { name: 'Play the ladder' }).click();
  await expect(here.getByRole('status')).toHaveText('Up: 60.');
  await page.getByRole('button', { name: 'Play: Flam' }).click();
  await expect(here.getByRole('button', { name: 'Play the ladder' })).toBeVisible();
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('the steps are still there to be read', async ({ page }) => {
    await page.goto('rudiments/flam/');
    await expect(page.locator(ladder)).toContainText('60, 70, 80, 90, 100, 110 and 120 beats a minute, and back');
    await expect(page.getByRole('button', { name: 'Play the ladder' })).toBeHidden();
  });
});
