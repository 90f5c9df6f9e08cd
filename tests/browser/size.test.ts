import { pagesOf, PLAIN } from '../helpers/built-site.ts';
import { LIMITS } from '../helpers/limits.ts';
import { withoutFonts } from '../helpers/weigh.ts';
import { scriptOf, weighPage } from '../helpers/weigh-pages.ts';
import { expect, test } from './site.ts';

const lessons = pagesOf(PLAIN).filter((page) => /^lessons\/./.test(page));

for (const lesson of lessons) {
  test(`/${lesson} keeps within its bytes`, async ({ browser, served }) => {
    const weights = await weighPage(browser, `${served.address}${lesson}`);
    const { load, touch, press } = weights;
    expect.soft(withoutFonts(load), 'the page without fonts').toBeLessThanOrEqual(LIMITS.lesson);
    expect.soft(scriptOf(weights), 'script at load').toBeLessThanOrEqual(LIMITS.lessonScript);
    expect.soft(load.font, 'fonts').toBeLessThanOrEqual(LIMITS.fonts);
    expect.soft(withoutFonts(touch!), 'the first touch of a player').toBeLessThanOrEqual(LIMITS.firstTouch);
    // The sound and the engraver are loaded when asked for, so they are in neither of the above.
    expect.soft(touch!.script, 'a touch loads the player').toBeGreaterThan(5_000);
    expect.soft(press!.script, 'a press loads the sound').toBeGreaterThan(20_000);
  });
}

test('there are lessons to weigh', () => {
  expect(lessons.length).toBeGreaterThanOrEqual(10);
});
