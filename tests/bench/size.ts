import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { listen, siteServer } from '../../src/build/static-server.ts';
import { BROWSER_FLAGS, findBrowser } from '../config/find-browser.ts';
import { onePageOfEachKind, PLAIN } from '../helpers/built-site.ts';
import { LIMITS } from '../helpers/limits.ts';
import { printTable } from '../helpers/table.ts';
import { withoutFonts } from '../helpers/weigh.ts';
import { type PageWeights, scriptOf, weighPage } from '../helpers/weigh-pages.ts';

const kB = (bytes: number | undefined) => (bytes === undefined ? '–' : (bytes / 1000).toFixed(1));

function row(kind: string, weights: PageWeights): Record<string, string> {
  const { load, touch, press, check } = weights;
  return {
    page: kind,
    html: kB(load.html),
    css: kB(load.css),
    script: kB(scriptOf(weights)),
    load: kB(withoutFonts(load)),
    fonts: kB(load.font),
    touch: kB(touch && withoutFonts(touch)),
    press: kB(press && withoutFonts(press)),
    check: kB(check && withoutFonts(check)),
  };
}

function buildIfNeeded(): void {
  if (existsSync(PLAIN.root)) return;
  if (spawnSync('astro build', { stdio: 'inherit', shell: true }).status !== 0) process.exit(1);
}

/** What one page of each kind weighs, in kB (1,000 bytes) after gzip, as a real browser loads it. */
export async function bench(): Promise<void> {
  buildIfNeeded();
  const server = siteServer(PLAIN);
  const port = await listen(server, '127.0.0.1', 0);
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: BROWSER_FLAGS });
  const rows = [];
  for (const [kind, address] of onePageOfEachKind(PLAIN))
    rows.push(row(kind, await weighPage(browser, `http://127.0.0.1:${port}/${address}`)));
  await browser.close();
  server.closeAllConnections();
  server.close();
  printTable(rows);
  console.log(
    '\nkB after gzip. load: without fonts, inline script within html. touch: what reaching for a player adds;',
  );
  console.log('press: what the first press of play adds (the sound); check: what a check pattern adds (the engraver).');
  console.log(
    `Limits: lesson ${kB(LIMITS.lesson)}, script in it ${kB(LIMITS.lessonScript)}, touch ${kB(LIMITS.firstTouch)}, fonts ${kB(LIMITS.fonts)}.`,
  );
}
