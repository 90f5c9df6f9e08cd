import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { build } from 'vite';
import type { BuiltSite } from '../../helpers/built-site.ts';
import { test as site } from '../site.ts';
import type { Sound } from './page.ts';

export { expect } from '@playwright/test';

declare global {
  interface Window {
    sound: Sound;
  }
}

const PAGE = fileURLToPath(new URL('page.html', import.meta.url));
const FOLDER = fileURLToPath(new URL('.', import.meta.url));

/** Builds the page of this folder from the site's own modules, as the site is built. It is not part of what is shipped. */
async function buildPage(): Promise<BuiltSite> {
  const root = mkdtempSync(join(tmpdir(), 'sound-page-'));
  await build({
    configFile: false,
    root: FOLDER,
    logLevel: 'error',
    build: { outDir: root, emptyOutDir: true, assetsInlineLimit: 0, rollupOptions: { input: PAGE } },
    worker: { format: 'es' },
  });
  return { root, base: '/' };
}

/** The test function for sound: `bench` is a page that plays the real modules; its console must stay empty. */
export const test = site.extend<{ bench: Page }, { built: BuiltSite }>({
  built: [
    // eslint-disable-next-line no-empty-pattern -- Playwright reads the names of the fixtures that are used from here
    async ({}, use) => {
      const built = await buildPage();
      await use(built);
      rmSync(built.root, { recursive: true, force: true });
    },
    { scope: 'worker' },
  ],

  bench: async ({ page }, use) => {
    await page.goto('page.html');
    await page.waitForFunction(() => 'sound' in window);
    await use(page);
  },
});

/** A press of the visitor's, without which browsers allow no sound. */
export async function press(page: Page): Promise<void> {
  await page.locator('#press').click();
}
