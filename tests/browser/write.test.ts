import { attributesOf, QUESTION_KINDS, VOCABULARY, wordOf } from '../../src/curriculum/index.ts';
import { expect, settled, test } from './site.ts';

for (const { name } of VOCABULARY)
  test(`<${name}> is shown to authors with every attribute, as it is written and as it becomes`, async ({ page }) => {
    await page.goto('write/');
    const word = page.locator('section.word').filter({ has: page.locator(`#word-${name}`) });
    const listed = await word.locator(':scope > details').first().locator('dt').allTextContents();
    expect(listed.map((one) => one.trim())).toEqual(attributesOf(wordOf(name)!).map((rule) => rule.name));
    const specimens = word.locator('.specimen');
    expect(await specimens.count()).toBeGreaterThan(0);
    for (const specimen of await specimens.all()) {
      expect(await specimen.locator('pre').textContent()).toContain(`<${name} `);
      const box = await specimen.locator('.becomes').boundingBox();
      expect(box!.height).toBeGreaterThan(20);
    }
  });

test('everything a question can ask is listed', async ({ page }) => {
  await page.goto('write/');
  const kinds = await page.locator('section.word:has(#word-Question) details:last-of-type > dl dt').allTextContents();
  expect(kinds.map((kind) => kind.trim())).toEqual(QUESTION_KINDS);
});

test('a question that is shown can be answered, and the film loads when it is played', async ({ page }) => {
  await page.goto('write/');
  await settled(page);
  const question = page.locator('section.question').first();
  await question.getByRole('button', { name: 'left' }).click();
  await expect(question.getByRole('status')).not.toBeEmpty();
  const film = page.locator('video');
  expect(await film.evaluate((video: HTMLVideoElement) => video.readyState)).toBe(0);
  await film.evaluate(async (video: HTMLVideoElement) => {
    video.muted = true;
    await video.play();
  });
  await expect.poll(() => film.evaluate((video: HTMLVideoElement) => video.currentTime)).toBeGreaterThan(0);
});
