import type { Page } from '@playwright/test';
import { gradePuzzle, makePuzzle, PUZZLE_KINDS, solutionOf } from '../../src/core/index.ts';
import { barriersOn } from './axe.ts';
import { expect, test } from './site.ts';

const NUMBER = 7;

const shelf = (page: Page) => page.getByRole('group', { name: 'On the shelf' });
const say = (page: Page) => page.locator('.say');
const check = (page: Page) => page.getByRole('button', { name: 'Is it right?' });

/** Opens a puzzle and waits until it answers. */
async function open(page: Page, kind: string, number: number | string = NUMBER): Promise<void> {
  await page.goto(`./puzzles/${kind}/#1-${number}`);
  await expect(page.locator('.puzzle [inert]')).toHaveCount(0);
  await expect(check(page)).toBeVisible();
}

/** Lays a cell from the shelf with the keyboard. */
async function lay(page: Page, id: string): Promise<void> {
  await shelf(page).locator(`[data-cell="${id}"]`).press('Enter');
}

for (const kind of PUZZLE_KINDS) {
  test(`${kind} is solved by keyboard, and remembered`, async ({ page }) => {
    await open(page, kind);
    const puzzle = makePuzzle(kind, NUMBER);
    const answer = solutionOf(puzzle);
    if (typeof answer !== 'number') for (const id of answer) await lay(page, id);
    else if (kind === 'resolves') {
      const field = page.getByRole('spinbutton', { name: 'Your answer, in bars' });
      await field.fill(`${answer}`);
      await field.press('Enter');
    } else await page.locator(`input[type=radio][value="${answer}"]`).press('Space');
    await check(page).press('Enter');
    await expect(say(page)).toContainText('Right');
    await page.goto('./puzzles/');
    await expect(page.getByRole('listitem').filter({ hasText: 'solved at once' })).toHaveCount(1);
  });
}

test('a bar that is short is told where it stops, and how much is left', async ({ page }) => {
  await open(page, 'fill');
  const puzzle = makePuzzle('fill', NUMBER);
  await lay(page, puzzle.solution[0]);
  await expect(page.locator('.progress')).toHaveText(
    'Two of sixteen. The next cell starts on the & of 1; fourteen sixteenths to go.',
  );
  await check(page).click();
  await expect(say(page)).toContainText('Fourteen sixteenths short: the & of 1 is the first that is empty.');
});

test('another order that keeps to the card is right too, and one more is shown', async ({ page }) => {
  await open(page, 'fill');
  const puzzle = makePuzzle('fill', NUMBER);
  const other = ['double', 'five', 'double', 'five', 'double'];
  expect(gradePuzzle(puzzle, other).right).toBe(true);
  for (const id of other) await lay(page, id);
  await check(page).click();
  await expect(say(page)).toContainText('Right. It is one of nine answers.');
  await expect(say(page)).toContainText('Another: double');
});

test('a laid cell is moved and taken out by keyboard, and keeps the focus', async ({ page }) => {
  await open(page, 'fill');
  for (const id of ['double', 'five', 'four-singles']) await lay(page, id);
  const laid = page.locator('.laid li button');
  await laid.nth(2).press('ArrowLeft');
  await expect(laid).toHaveText(['R R', 'R L R L', '>R L R L L']);
  await expect(laid.nth(1)).toBeFocused();
  await laid.nth(1).press('Delete');
  await expect(laid).toHaveText(['R R', '>R L R L L']);
  await laid.nth(0).click();
  await page.getByRole('button', { name: 'Take out' }).click();
  await expect(laid).toHaveText(['>R L R L L']);
});

test('a cell is dragged between two others', async ({ page }) => {
  await open(page, 'fill');
  for (const id of ['double', 'five']) await lay(page, id);
  const beat = page.locator('.beat-box').first();
  const box = (await beat.boundingBox())!;
  await shelf(page)
    .locator('[data-cell="four-singles"]')
    .dragTo(beat, { targetPosition: { x: box.width / 2, y: box.height / 2 } });
  await expect(page.locator('.laid li button')).toHaveText(['R R', 'R L R L', '>R L R L L']);
});

test('hints say the count, then what is left, then a cell, until it is right', async ({ page }) => {
  await open(page, 'fill');
  const hint = page.getByRole('button', { name: 'A hint' });
  await hint.click();
  await expect(say(page)).toContainText('Count first: nothing is laid yet, sixteen are to be filled');
  await hint.click();
  await expect(say(page)).toContainText('Sixteen sixteenths are left');
  await hint.click();
  await expect(say(page)).toContainText('Lay the double next.');
});

test('an address that is no puzzle is told so, and there is one instead', async ({ page }) => {
  await open(page, 'fill', '0');
  await expect(page.getByRole('alert')).toContainText('Puzzles are numbered from 1');
  await expect(page.getByRole('alert')).toContainText('Here is another one instead.');
  await expect(page).toHaveURL(/#1-[1-9]\d*$/);
  await expect(shelf(page)).toBeVisible();
});

test('an address that is no puzzle leaves the open one, what was laid in it, and its address', async ({ page }) => {
  await open(page, 'fill');
  const card = await page.locator('.card').textContent();
  await lay(page, 'double');
  await page.evaluate(() => (location.hash = '#2-9'));
  await expect(page.getByRole('alert')).toHaveText(
    'There is no version 2 of the puzzles, only 1. The puzzle that was open is still here.',
  );
  await expect(page).toHaveURL(new RegExp(`#1-${NUMBER}$`));
  await expect(page.locator('.card')).toHaveText(card!);
  await expect(page.locator('.laid li button')).toHaveText(['R R']);
  await page.getByRole('button', { name: 'Another one' }).click();
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('the next one has an address of its own; back leads to the one before', async ({ page }) => {
  await open(page, 'start');
  const card = page.locator('.card');
  const first = await card.textContent();
  await page.getByRole('button', { name: 'Another one' }).click();
  await expect(page).toHaveURL(/#1-\d+$/);
  await expect(card).toBeFocused();
  await page.goBack();
  await expect(card).toHaveText(first!);
});

test('what is laid can be heard after a bar of time', async ({ page }) => {
  await open(page, 'fill');
  await lay(page, 'double');
  const bar = page.getByRole('group', { name: 'Hear it' });
  await bar.getByRole('button', { name: /Hear it/ }).click();
  await expect(bar.getByRole('status')).toHaveText('Playing.');
  await expect(page.locator('.bar-ruler .playhead')).toBeAttached();
  await bar.getByRole('button', { name: /Stop/ }).click();
  await expect(bar.getByRole('status')).not.toHaveText('Playing.');
});

test('the list of what was answered can be saved', async ({ page }) => {
  await open(page, 'resolves');
  await page.getByRole('button', { name: 'Show an answer' }).click();
  await page.goto('./puzzles/');
  await expect(page.getByText('answer shown')).toBeVisible();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the list as a file' }).click();
  expect((await saved).suggestedFilename()).toBe('puzzles.csv');
});

test('the puzzle of a lesson opens where it stands, dressed as on its own page', async ({ page }) => {
  await page.goto('./lessons/bars-that-add-up/');
  await page.getByRole('button', { name: 'Solve it here' }).click();
  await expect(check(page)).toBeVisible();
  await expect(shelf(page)).toBeVisible();
  await expect(page.locator('.card b').first()).toHaveCSS('display', 'block');
  await page.getByRole('button', { name: 'Show an answer' }).click();
  await expect(say(page)).toContainText('flam drag');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 320, height: 640 }, hasTouch: true });

  for (const kind of PUZZLE_KINDS) {
    test(`${kind} fits after an answer, with targets for a finger and nothing in the way`, async ({ page }) => {
      await open(page, kind);
      await page.getByRole('button', { name: 'Show an answer' }).tap();
      const sizes = await page
        .locator('.puzzle button:visible, .puzzle label:visible')
        .evaluateAll((all) => all.map((one) => [one.textContent, one.getBoundingClientRect().height] as const));
      expect(sizes.filter(([, height]) => height < 43.5)).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBe(0);
      expect(await barriersOn(page)).toEqual([]);
    });
  }
});
