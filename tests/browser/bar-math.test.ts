import type { Page } from '@playwright/test';
import { barriersOn } from './axe.ts';
import { expect, test } from './site.ts';

const PAGE = './bar-math/';

/** The handles of one sum. */
function sum(page: Page, name: string) {
  const section = page.locator(`#${name}`);
  return {
    section,
    field: (label: string | RegExp) => section.getByLabel(label, { exact: typeof label === 'string' }),
    says: section.locator('.says'),
    fold: (name: string) => section.locator('summary', { hasText: name }).first(),
    ruler: section.getByRole('img'),
    play: section.getByRole('button', { name: /^(Play|Stop)/ }),
    sound: section.locator('.play-bar').getByRole('status'),
  };
}

async function open(page: Page, name: string, asked = '') {
  await page.goto(`${PAGE}${asked}`);
  return sum(page, name);
}

/** Types into a field as a hand does, by keys alone, once the field listens. */
async function type(page: Page, field: ReturnType<ReturnType<typeof sum>['field']>, text: string) {
  await field.focus();
  const asleep = () => field.evaluate((one) => one.closest('astro-island')!.hasAttribute('ssr'));
  await expect.poll(asleep).toBe(false);
  // What was entered before is repeated a turn after the island has woken.
  await page.evaluate(() => new Promise((done) => setTimeout(done, 100)));
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.press('Delete');
  if (text) await page.keyboard.type(text);
}

/** Everything that folds in the sum of orders, with a join forbidden and an order kept. */
async function openAll(page: Page) {
  const { section, fold, field } = sum(page, 'orders');
  await section.getByRole('button', { name: 'Keep it to practice' }).click();
  for (const name of ['Rules', 'Rarer rules', 'Which do the hands like?', 'One swap away']) await fold(name).click();
  await section.getByRole('button', { name: 'Forbid a join' }).click();
  await field('the bar goes round: its end meets its beginning').check();
  await section.getByRole('button', { name: 'Keep it to practice' }).click();
  await fold('The same loop, begun elsewhere').click();
  await expect(section.getByText('The hardest')).toBeVisible();
}

test('does it fit: typed by keys, told in a sentence, drawn, and filled', async ({ page }) => {
  const { field, says, ruler, section } = await open(page, 'fit');
  await expect(says).toHaveText('Three into sixteen goes five times and leaves one, the a of 4.');
  await type(page, field('bars'), '2');
  await expect(says).toHaveText('Three into thirty-two goes ten times and leaves two, from the & of 4 in bar 2.');
  await type(page, field(/^the cell/), '7');
  await expect(says).toHaveText('Seven into thirty-two goes four times and leaves four, from beat 4 in bar 2.');
  await expect(ruler).toHaveAccessibleName('seven × 4, 4 left, from beat 4 in bar 2.');
  await field('in what is left').selectOption('four-singles');
  await expect(section.locator('.bracket.left')).toHaveCount(0);
  await expect(section.locator('.bracket text', { hasText: 'four singles' })).not.toHaveCount(0);
});

test('where it resolves: start by start', async ({ page }) => {
  const { field, says, section } = await open(page, 'resolve');
  await type(page, field(/^the cell/), 'R L R L L');
  await expect(says).toHaveText('Five over sixteen is back on beat 1 after five bars and sixteen cells.');
  await expect(section.locator('dd').nth(1)).toHaveText('beat 2, the e of 3 and the & of 4.');
});

test('what count is it: any of three names gives the others', async ({ page }) => {
  const { field, says } = await open(page, 'count');
  await type(page, field('its number in the bar'), '7');
  await expect(field('the count')).toHaveValue('2 &');
  await type(page, field('its tick in the bar'), '75600');
  await expect(field('the count')).toHaveValue('4 a');
  await type(page, field('the count'), 'the e of 3');
  await expect(field('its number in the bar')).toHaveValue('10');
  await expect(says).toContainText('The e of 3 is sixteenth 10 of 16');
});

test('how fast is that: hands, rebounds and another subdivision, with a caution beside it', async ({ page }) => {
  const { field, says, section } = await open(page, 'speed');
  await expect(section.getByText('For the hands, 120 in sixteenths is 160 in triplets.')).toBeVisible();
  await type(page, field(/^tempo/), '90');
  await section.getByRole('radio', { name: /a diddle in every slot/ }).check();
  await expect(says).toContainText('each hand turns 3 times a second and plays 6 strokes');
  await expect(section.getByRole('complementary')).toContainText('Fujii');
});

test('how many orders: with rules, one after another, each to be heard', async ({ page }) => {
  const { section, says, field, fold, ruler, play, sound } = await open(page, 'orders');
  await expect(says).toHaveText('Sixty orders fill the bar.');
  await fold('Rules').press('Enter');
  await field('most in a row by one hand').selectOption('2');
  await field('grace notes count in a row').check();
  await expect(says).toHaveText('Six orders fill the bar and keep to the rules.');
  await section.getByRole('button', { name: 'The one before' }).press('Enter');
  await expect(field('number of the order')).toHaveValue('6');
  await expect(ruler).toHaveAccessibleName('Number 6 of 6: flam drag × 3, R L L × 2, kick.');
  await play.press('Enter');
  await expect(sound).toHaveText('Playing.');
  await section.getByRole('button', { name: 'Take it away: cell 1' }).press('Enter');
  await expect(says).toHaveText('None: cells of 3 cannot fill 16.');
  await expect(field(/^the cell/).first()).toBeFocused();
});

test('orders by forbidden joins, by what the hands like, by a swap and in a row to practice, all by keys', async ({
  page,
}) => {
  const { section, says, field, fold, sound } = await open(page, 'orders');
  const number = field('number of the order');
  await fold('Rules').press('Enter');
  await fold('Rarer rules').press('Enter');
  await section.getByRole('button', { name: 'Forbid a join' }).press('Enter');
  await expect(field('never')).toBeFocused();
  await field('never').selectOption('3');
  await field('right before').selectOption('2');
  await expect(section.getByText('Rules: no R L L right before flam drag.')).toBeVisible();
  await expect(says).toHaveText('Twelve orders fill the bar and keep to the rules.');
  await fold('Which do the hands like?').press('Enter');
  const hardest = section.getByRole('listitem').filter({ hasText: 'three joins on the same hand' });
  await hardest.first().getByRole('button').press('Enter');
  await expect(sound).toHaveText('Playing.');
  await expect(hardest.first()).toContainText('on the ruler');
  await hardest.first().getByRole('button', { name: /^Stop/ }).press('Enter');
  await expect(sound).toBeEmpty();
  await type(page, number, '1');
  await fold('One swap away').press('Enter');
  const swap = section.getByRole('button', { name: 'Play: Cells 1 and 2 change places: flam drag before kick' });
  await swap.press('Enter');
  await expect(number).toHaveValue('2');
  await section.getByRole('button', { name: 'Keep it to practice' }).press('Enter');
  await type(page, number, '12');
  await section.getByRole('button', { name: 'Keep it to practice' }).press('Enter');
  await section.getByRole('button', { name: /^Lay the steps between/ }).press('Enter');
  await expect(section.getByText(/^Practice these \w+ in this order/)).toBeVisible();
  await expect(
    section.getByRole('button', { name: /^Play/, includeHidden: false }).and(page.locator(':focus')),
  ).toHaveCount(1);
  await expect.poll(() => new URL(page.url()).hash).toMatch(/&joins=3-2&.*&kept=2,\d+,12$/);
  const rows = await section.locator('.practice li .what > p:first-child').allTextContents();
  await page.reload();
  await expect(section.locator('.practice li .what > p:first-child')).toHaveText(rows);
});

test('what is too much for one press is counted beside the page', async ({ page }) => {
  const cells = 'kick,flam-drag,rll,paradiddle,single-left,double,four-singles,five'.split(',');
  const asked = `#orders&cells=${cells.map((cell) => `${cell}*1-8`).join()}&bars=2&meter=4/4&grid=4`;
  const { says, section } = await open(page, 'orders', `${asked}&run=2`);
  await expect(says).toHaveText(/^[\d,]+ orders fill the two bars and keep to the rules\.$/);
  await section.getByRole('button', { name: 'Any other' }).press('Enter');
  await expect(section.getByLabel('number of the order')).not.toHaveValue('1');
  await page.goto(`${PAGE}${asked.replaceAll('1-8', '0-16').replace('bars=2', 'bars=8')}&run=2`);
  // It gives up only after 300,000 states, which a busy machine takes its time for.
  await expect(section.getByText(/^This is too much to count here/)).toBeVisible({ timeout: 120_000 });
});

test('even spreads turn, and two against each other are one line', async ({ page }) => {
  const spread = await open(page, 'spread');
  await expect(spread.says).toHaveText('Three accents in eight, as even as can be: 3 3 2, on 1, 2 & and 4.');
  await type(page, spread.field('turned by slots'), '1');
  await expect(spread.says).toHaveText('Three accents in eight, as even as can be: 3 3 2, on 1 &, 3 and 4 &.');
  const { field, says, section } = sum(page, 'against');
  await type(page, field('left hand'), '2');
  await type(page, field('right hand'), '3');
  await expect(says).toContainText('Three against two takes six slots');
  await expect(section.getByText('R+L - R L R -', { exact: true })).toBeVisible();
  await type(page, field('right hand'), '9');
  await type(page, field('left hand'), '10');
  await expect(says).toContainText('cannot be written here');
});

test('what makes no sense gets a sentence at its field, and the place of the fault', async ({ page }) => {
  const { field, section, says } = await open(page, 'fit');
  for (const typed of ['', '0', '-1', '1e9', 'two', '2.5']) {
    await type(page, field('bars'), typed);
    await expect(field('bars')).toHaveAccessibleDescription(/a whole number from 1 to 8 can\.$/);
    await expect(says).toBeEmpty();
  }
  await type(page, field('bars'), '1');
  await type(page, field(/^the cell/), 'R rR');
  await expect(field(/^the cell/)).toHaveAttribute('aria-invalid', 'true');
  await expect(section.locator('pre')).toHaveText('  R rR\n    ^');
  await expect(section).not.toContainText('NaN');
});

test('the address keeps what was asked, and brings it back', async ({ page }) => {
  const { field, says } = await open(page, 'fit');
  await type(page, field(/^the cell/), '>lR LL R L');
  await expect(says).toContainText('Four into sixteen');
  await expect.poll(() => new URL(page.url()).hash).toBe('#fit&cell=%3ElR+LL+R+L&bars=1&meter=4/4&grid=4');
  await page.goto('about:blank');
  const again = await open(page, 'resolve', '#resolve&cell=flam-drag&meter=3/4&grid=4');
  await expect(again.says).toHaveText('Three over twelve is back on beat 1 after one bar and four cells.');
  await expect(again.section).toBeInViewport();
  await page.evaluate(() => (location.hash = '#spread&accents=5&slots=16&turn=0&bar=4/4:4'));
  await expect(sum(page, 'spread').says).toContainText('Five accents in sixteen');
});

test('an address that asks for what is not here gets a sentence', async ({ page }) => {
  await page.goto(`${PAGE}#fits&cell=kick`);
  await expect(page.getByText('There is no sum called “fits” here.')).toBeVisible();
  await page.goto('about:blank');
  const { section, says } = await open(page, 'fit', '#fit&cell=kick&color=red&bars=many');
  await expect(section.getByText('The address also names “color”')).toBeVisible();
  await expect(sum(page, 'fit').field('bars')).toHaveAccessibleDescription(/“many” cannot stand here/);
  await expect(says).toBeEmpty();
});

test('the first press plays, under a playhead, and only one sounds', async ({ page }) => {
  const { play, sound, section } = await open(page, 'resolve');
  await play.click();
  await expect(sound).toHaveText('Playing.');
  await expect(section.locator('.playhead')).toBeAttached();
  const spread = sum(page, 'spread');
  await spread.play.click();
  await expect(spread.sound).toHaveText('Playing.');
  await expect(sound).toBeEmpty();
  await expect(section.locator('.playhead')).toHaveCount(0);
  await page.keyboard.press('Escape');
  await expect(spread.sound).toBeEmpty();
});

test('it is accessible with answers and with faults shown', async ({ page }) => {
  const { field, section } = await open(page, 'fit');
  await type(page, field(/^the cell/), 'rR');
  await expect(section.locator('pre')).toBeVisible();
  await openAll(page);
  expect(await barriersOn(page)).toEqual([]);
});

test.describe('on a narrow screen, in the dark', () => {
  test.use({ viewport: { width: 320, height: 640 }, colorScheme: 'dark' });

  test('it fits the screen and is accessible', async ({ page }) => {
    const { field, says } = await open(page, 'fit');
    await type(page, field('meter'), '2+2+3/8');
    await expect(says).toContainText('Three into twenty-eight');
    await openAll(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    expect(await barriersOn(page)).toEqual([]);
  });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('every sum is worked out once, with its ruler and its lesson', async ({ page }) => {
    await page.goto(PAGE);
    for (const name of ['fit', 'resolve', 'count', 'speed', 'orders', 'spread', 'against']) {
      const { says, ruler, section } = sum(page, name);
      await expect(says).toHaveText(/^[A-Z].*\.$/);
      await expect(ruler).toBeVisible();
      await expect(section.locator('.taught a').first()).toBeVisible();
    }
    await expect(page.locator('button:visible, input:visible, select:visible')).toHaveCount(0);
  });
});
