import type { Page } from '@playwright/test';
import { expect, settled, test } from './site.ts';

/** A lesson with flams and triplets, one with long names over short cells, the page with every sign there is. */
const PAGES = ['lessons/the-flam-drag/', 'lessons/sixty-orders/', 'write/'];

interface Lettering {
  /** Hands, grace notes or counts. */
  kind: string;
  text: string;
  /** The height of its font as it is seen, in CSS pixels. */
  size: number;
  /** Where it runs into the letters behind it in its row. */
  runsInto?: string;
}

/** Every letter and count under the bars of a page, as the browser draws it. */
const lettering = (page: Page): Promise<Lettering[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<SVGSVGElement>('.score svg.beat')].flatMap((beat) =>
      ['hand', 'grace', 'count'].flatMap((kind) => {
        const row = kind === 'count' ? '.count' : '.hand, .grace';
        const all = [...beat.querySelectorAll<SVGTextElement>(row)].filter((one) => one.checkVisibility());
        const boxes = all.map((one) => one.getBoundingClientRect());
        return all.flatMap((one, i) => {
          if (!one.classList.contains(kind)) return [];
          const inRow = (j: number) => j !== i && all[j].getAttribute('y') === one.getAttribute('y');
          const runsInto = (j: number) => boxes[j].left >= boxes[i].left && boxes[j].left < boxes[i].right - 1;
          const next = all.find((_, j) => inRow(j) && runsInto(j));
          const size = parseFloat(getComputedStyle(one).fontSize) * one.getScreenCTM()!.a;
          return [{ kind, text: one.textContent, size, ...(next && { runsInto: next.textContent }) }];
        });
      }),
    ),
  );

for (const width of [320, 1280])
  test(`${width} px wide, the letters of both hands can be read and none runs into the next`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    for (const address of PAGES) {
      await page.goto(address);
      await settled(page);
      await page
        .locator('main details')
        .evaluateAll((all) => all.forEach((one) => ((one as HTMLDetailsElement).open = true)));
      const drawn = await lettering(page);
      expect(drawn.length).toBeGreaterThan(10);
      const smallest = (kind: string) => Math.min(...drawn.filter((one) => one.kind === kind).map(({ size }) => size));
      expect.soft(smallest('hand'), `/${address}`).toBeGreaterThanOrEqual(12);
      expect.soft(smallest('grace'), `/${address}`).toBeGreaterThanOrEqual(9);
      expect
        .soft(
          drawn.filter(({ runsInto }) => runsInto !== undefined),
          `/${address}`,
        )
        .toEqual([]);
    }
  });
