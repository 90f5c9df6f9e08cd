import { onePageOfEachKind, pagesOf, PLAIN } from '../helpers/built-site.ts';
import { LIMITS } from '../helpers/limits.ts';
import { shares } from '../helpers/shares.ts';
import { type PageWeights, scriptOf, weighPage } from '../helpers/weigh-pages.ts';
import { withoutFonts } from '../helpers/weigh.ts';
import { expect, test } from './site.ts';

const lessons = pagesOf(PLAIN).filter((page) => /^lessons\/./.test(page));

/** All lessons have the same player: with LONG it is touched in each of them, without it in every tenth. */
const NTH_TOUCHED = process.env.LONG ? 1 : 10;

/** Weighing is mostly waiting for the line to be quiet, which several pages can do at once. */
const AT_ONCE = 4;

function expectLight(lesson: string, weights: PageWeights): void {
  const { load, touch, press } = weights;
  const within = (what: string, bytes: number, limit: number) =>
    expect.soft(bytes, `/${lesson}: ${what}`).toBeLessThanOrEqual(limit);
  within('the page without fonts', withoutFonts(load), LIMITS.lesson);
  within('script at load', scriptOf(weights), LIMITS.lessonScript);
  within('fonts', load.font, LIMITS.fonts);
  if (!touch || !press) return;
  within('the first touch of a player', withoutFonts(touch), LIMITS.firstTouch);
  // The sound and the engraver are loaded when asked for, so they are in neither of the above.
  expect.soft(touch.script, `/${lesson}: a touch loads the player`).toBeGreaterThan(5_000);
  expect.soft(press.script, `/${lesson}: a press loads the sound`).toBeGreaterThan(20_000);
}

for (const share of shares(lessons, AT_ONCE)) {
  test(`/${share[0]} to /${share.at(-1)} keep within their bytes`, async ({ browser, served }) => {
    test.setTimeout(share.length * 20_000);
    await Promise.all(
      share.map(async (lesson) => {
        const used = lessons.indexOf(lesson) % NTH_TOUCHED === 0;
        expectLight(lesson, await weighPage(browser, `${served.address}${lesson}`, used));
      }),
    );
  });
}

for (const kind of ['exercises', 'rudiments', 'embed']) {
  test(`the player of a page of ${kind} keeps within its bytes when it is touched`, async ({ browser, served }) => {
    const page = onePageOfEachKind(PLAIN).get(kind)!;
    const { touch } = await weighPage(browser, `${served.address}${page}`);
    expect(withoutFonts(touch!)).toBeLessThanOrEqual(LIMITS.firstTouch);
    expect(touch!.script).toBeGreaterThan(5_000);
  });
}

test('there are lessons to weigh', () => {
  expect(lessons.length).toBeGreaterThanOrEqual(10);
});
