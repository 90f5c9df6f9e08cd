import { onePageOfEachKind, PLAIN } from '../helpers/built-site.ts';
import { ImportGraph, weighBuilt } from '../helpers/import-graph.ts';
import { readSite } from '../helpers/links.ts';
import { weighPage } from '../helpers/weigh-pages.ts';
import { expect, test } from './site.ts';

const graph = new ImportGraph(PLAIN);

// The limits of all pages are held by what their files name (tests/pages/weights.test.ts): so that has to be right.
for (const kind of ['lessons', 'exercises', 'rudiments', 'glossary list', 'bar-math'])
  test(`a page of ${kind} loads in a browser what its files name, and no more`, async ({ browser, served }) => {
    const page = onePageOfEachKind(PLAIN).get(kind)!;
    const named = weighBuilt(graph, page, readSite(PLAIN).html.get(page)!);
    const { load, touch, press } = await weighPage(browser, `${served.address}${page}`);
    expect(load.html).toBe(named.html);
    expect(load.css).toBe(named.css);
    expect(load.script).toBe(named.script);
    expect(load.font).toBeLessThanOrEqual(named.fonts);
    expect(touch?.script).toBe(named.touch);
    if (touch) expect(press!.script, 'a press loads the sound').toBeGreaterThan(20_000);
  });
