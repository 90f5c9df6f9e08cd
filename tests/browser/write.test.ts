import { attributesOf, QUESTION_KINDS, VOCABULARY, wordOf } from '../../src/curriculum/index.ts';
import { barriersOn } from './axe.ts';
import { expect, settled, test } from './site.ts';

test('every word is shown to authors with its attributes, as it is written and as it becomes', async ({ page }) => {
  for (const { name } of VOCABULARY) {
    await page.goto(`write/#word-${name}`);
    const word = page.locator(`details#word-${name}`);
    await expect(word).toHaveAttribute('open');
    const listed = await word.locator('dl.fields').first().locator('dt').allTextContents();
    expect(listed.map((one) => one.trim())).toEqual(attributesOf(wordOf(name)!).map((rule) => rule.name));
    const specimens = word.locator('.specimen');
    expect(await specimens.count()).toBeGreaterThan(0);
    for (const specimen of await specimens.all()) {
      expect(await specimen.locator('pre').textContent()).toContain(`<${name} `);
      const box = await specimen.locator('.becomes').boundingBox();
      expect(box!.height).toBeGreaterThan(20);
    }
  }
  const kinds = await page.locator('#word-Question dl.fields').last().locator('dt').allTextContents();
  expect(kinds.map((kind) => kind.trim())).toEqual(QUESTION_KINDS);
});

test('a question that is shown can be answered, and the film loads when it is played', async ({ page }) => {
  await page.goto('write/');
  await settled(page);
  await page.getByRole('navigation', { name: 'The steps' }).getByRole('link', { name: '<Question>' }).press('Enter');
  const question = page.locator('section.question').first();
  await question.getByRole('button', { name: 'left' }).click();
  await expect(question.getByRole('status')).not.toBeEmpty();
  await page.locator('#word-Video > summary').click();
  const film = page.locator('video');
  expect(await film.evaluate((video: HTMLVideoElement) => video.readyState)).toBe(0);
  await film.evaluate(async (video: HTMLVideoElement) => {
    video.muted = true;
    await video.play();
  });
  await expect.poll(() => film.evaluate((video: HTMLVideoElement) => video.currentTime)).toBeGreaterThan(0);
});

test('a sticking is tried: what is wrong is said with its place, what is right is drawn and can be played', async ({
  page,
}) => {
  await page.goto('write/');
  await settled(page);
  const here = page.locator('form.try');
  const says = here.locator('.says');
  await here.getByLabel('Sticking').fill('{>lR LL R}5');
  await expect(says).toHaveText('stops on 4 &; the a of 4 is empty: 15 of 16 sixteenths');
  await here.getByLabel('Sticking').fill('R L X L');
  await expect(here.locator('pre')).toHaveText(/R L X L\n\s+\^/);
  await here.getByLabel('Sticking').fill('{R LL R}4');
  await here.getByLabel('Slots a beat').selectOption('3');
  await expect(says).toHaveText('Fills one bar: 12 partials.');
  await expect(here.locator('svg.beat')).toHaveCount(4);
  await expect(here.locator('pre')).toHaveText('<Bar sticking="{R LL R}4" meter="4/4" grid={3} />');
  await here.getByRole('button', { name: /Play/ }).click();
  await expect(here.getByRole('button', { name: /Stop/ })).toBeVisible();
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 320, height: 640 } });

  for (const address of ['write/', 'rudiments/flam-drag/'])
    test(`/${address} can be read by everyone when all of it is unfolded, and fits`, async ({ page }) => {
      await page.goto(address);
      const folds = page.locator('main details:not([open])');
      expect(await folds.count()).toBeGreaterThan(4);
      await folds.evaluateAll((all) => all.forEach((one) => ((one as HTMLDetailsElement).open = true)));
      expect(await barriersOn(page)).toEqual([]);
      const { scrollWidth, clientWidth } = await page.evaluate(() => document.documentElement);
      expect(scrollWidth).toBe(clientWidth);
    });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a word is found from the top of the page and unfolds', async ({ page }) => {
    await page.goto('write/');
    await page.getByRole('navigation', { name: 'The steps' }).getByRole('link', { name: '<Counts>' }).click();
    const word = page.locator('#word-Counts');
    await expect(word.locator('summary')).toBeInViewport();
    await word.locator('summary').click();
    await expect(word.locator('.specimen').first()).toBeVisible();
  });
});
