import type { Locator, Page } from '@playwright/test';
import { barriersOn } from './axe.ts';
import { expect, test } from './site.ts';

const LESSON = './lessons/the-flam-drag/';
const EXERCISE = './exercises/flam-drag-slow/';

const figures = (page: Page) => page.locator('figure:has(form.player)');
const tempo = (figure: Locator) => figure.getByRole('spinbutton', { name: /^tempo/ });
const lead = (figure: Locator, name: string) =>
  figure.getByRole('group', { name: 'lead', exact: true }).getByRole('radio', { name });
const copyLink = (place: Locator) => place.getByRole('link', { name: /^Copy link/ });
/** The anchor of the second bar that belongs to the lesson itself. */
const ownBar = async (page: Page) => (await page.locator('figure[id^=bar-]').nth(1).getAttribute('id'))!;
const line = (figure: Locator) => figure.getByText(/^Set by the link/);

test.describe('a link that is copied', () => {
  test.use({ permissions: ['clipboard-read', 'clipboard-write'] });
  const clipboard = (page: Page) => page.evaluate(() => navigator.clipboard.readText());

  test('carries what is set, and opens so for someone else', async ({ page, browser, served }) => {
    await page.goto(EXERCISE);
    const figure = figures(page).first();
    await tempo(figure).fill('72');
    await tempo(figure).press('Enter');
    await lead(figure, 'left').click();
    await expect(lead(figure, 'left')).toBeChecked();
    await copyLink(figure).click();
    await expect(figure.getByText('Link copied.')).toBeVisible();
    const address = await clipboard(page);
    expect(address).toBe(`${served.address}exercises/flam-drag-slow/?tempo=72&lead=left`);

    const other = await browser.newPage();
    await other.goto(address);
    const sent = figures(other).first();
    await expect(line(sent)).toHaveText('Set by the link: tempo 72, left lead.');
    await expect(tempo(sent)).toHaveValue('72');
    await expect(lead(sent, 'left')).toBeChecked();
    await expect(sent.locator('.score text[data-letter="1.0.0"]')).toHaveText('L');
    await other.close();
  });

  test('is the bare address where nothing is set, whatever the lesson it stands in', async ({ page, served }) => {
    await page.goto(LESSON);
    await copyLink(page.locator('#flam-drag-slow')).press('Enter');
    await expect.poll(() => clipboard(page)).toBe(`${served.address}exercises/flam-drag-slow/`);
  });

  test('leads to a bar of a lesson by its anchor', async ({ page, served }) => {
    await page.goto(LESSON);
    const id = await ownBar(page);
    await copyLink(page.locator(`#${id}`)).click();
    await expect.poll(() => clipboard(page)).toBe(`${served.address}lessons/the-flam-drag/#${id}`);
  });

  test('leads to the lesson from its title', async ({ page, served }) => {
    await page.goto(LESSON);
    await copyLink(page.locator('.where')).press('Enter');
    await expect.poll(() => clipboard(page)).toBe(`${served.address}lessons/the-flam-drag/`);
  });
});

test('where the browser does not copy, the address stands in a field, selected', async ({ page, served }) => {
  await page.addInitScript(() =>
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
    }),
  );
  await page.goto(EXERCISE);
  const figure = figures(page).first();
  await copyLink(figure).click();
  const field = figure.getByRole('textbox', { name: 'Address to copy' });
  await expect(field).toBeFocused();
  await expect(field).toHaveValue(`${served.address}exercises/flam-drag-slow/`);
  expect(await page.evaluate(() => getSelection()?.toString())).toBe(`${served.address}exercises/flam-drag-slow/`);
  await expect(figure.getByText('copy it by hand')).toBeVisible();
  expect(await barriersOn(page)).toEqual([]);
});

test.describe('an address that sets something', () => {
  test('leaves what the player remembers alone until they change something', async ({ page }) => {
    await page.goto(EXERCISE);
    const figure = figures(page).first();
    await figure.getByRole('button', { name: 'faster by one' }).click();
    await expect(tempo(figure)).toHaveValue('51');
    await page.goto(`${EXERCISE}?tempo=72&lead=left`);
    await expect(tempo(figure)).toHaveValue('72');
    await figure.getByRole('button', { name: 'Back to my own' }).click();
    await expect(tempo(figure)).toHaveValue('51');
    await expect(lead(figure, 'right')).toBeChecked();
    await expect(figure.getByRole('button', { name: /^Play/ })).toBeFocused();
    await expect(page).toHaveURL(/flam-drag-slow\/$/);
  });

  test('holds for what is not changed, and gives up what is', async ({ page }) => {
    await page.goto(`${EXERCISE}?tempo=72&lead=left&flam=45`);
    const figure = figures(page).first();
    await expect(line(figure)).toHaveText('Set by the link: tempo 72, left lead, flam width 45 ms.');
    await figure.getByRole('button', { name: 'faster by one' }).click();
    await expect(line(figure)).toHaveText('Set by the link: left lead, flam width 45 ms.');
    await expect(page).toHaveURL(/\?lead=left&flam=45$/);
    await page.reload();
    await expect(tempo(figure)).toHaveValue('73');
    await expect(lead(figure, 'left')).toBeChecked();
    await page.goto(EXERCISE);
    await figure.getByRole('button', { name: /^Play/ }).hover();
    await expect(tempo(figure)).toHaveValue('73');
    await expect(lead(figure, 'right')).toBeChecked();
    await expect(figure.getByText(/flam width\s+30 ms/)).toBeVisible();
  });

  test('sets the named bar of a lesson and no other', async ({ page }) => {
    await page.goto(LESSON);
    const id = await ownBar(page);
    await page.goto(`${LESSON}?tempo=133#${id}`);
    const named = page.locator(`#${id}`);
    await expect(tempo(named)).toHaveValue('133');
    await expect(named).toBeInViewport();
    const others = await figures(page)
      .filter({ hasNot: page.locator('.overrides') })
      .all();
    expect(others.length).toBeGreaterThan(2);
    await others[0].getByRole('button', { name: /^Play/ }).hover();
    await expect(tempo(others[0])).not.toHaveValue('133');
  });

  test('with values out of range says so, and nothing breaks', async ({ page }) => {
    await page.goto(`${EXERCISE}?tempo=9999&lead=up&flam=45`);
    const figure = figures(page).first();
    await expect(line(figure)).toContainText('Set by the link: flam width 45 ms.');
    await expect(line(figure)).toContainText('tempo “9999” is left out: it can be 30 to 300.');
    await expect(line(figure)).toContainText('lead “up” is left out: it can be right or left.');
    await expect(tempo(figure)).toHaveValue('50');
    expect(await barriersOn(page)).toEqual([]);
  });

  test('plays as it is set', async ({ page }) => {
    await page.goto(`${EXERCISE}?tempo=240`);
    const figure = figures(page).first();
    await figure.getByRole('button', { name: /^Play/ }).click();
    await expect(figure.getByText('Playing.')).toBeVisible();
    await expect(figure.locator('.on').first()).toBeAttached();
    await expect(tempo(figure)).toHaveValue('240');
  });

  for (const [page, first] of [
    ['an exercise', `${EXERCISE}?tempo=133#gone`],
    ['a lesson', `${LESSON}?tempo=133#gone`],
  ] as const)
    test(`that names a place which is not on the page of ${page} says so and holds for the first bar`, async ({
      page,
    }) => {
      await page.goto(first);
      const figure = figures(page).first();
      await expect(line(figure)).toHaveText(
        'Set by the link: tempo 133. The link leads to “gone”, which is not on this page. What it sets holds here instead.',
      );
      await expect(tempo(figure)).toHaveValue('133');
      await expect(page.locator('.overrides')).toHaveCount(1);
    });

  test('that names a part of the page without a bar holds for the first bar', async ({ page }) => {
    await page.goto('./rudiments/flam/?tempo=133#ladder');
    const figure = figures(page).first();
    await expect(line(figure)).toHaveText('Set by the link: tempo 133.');
    await expect(tempo(figure)).toHaveValue('133');
  });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a bar can still be linked to', async ({ page }) => {
    await page.goto(LESSON);
    const id = await ownBar(page);
    const link = copyLink(page.locator(`#${id}`));
    await expect(link).toHaveText('Link', { useInnerText: true });
    await link.click();
    await expect(page).toHaveURL(new RegExp(`#${id}$`));
  });
});
