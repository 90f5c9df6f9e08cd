import { test as plain, type BrowserContext, type Page } from '@playwright/test';
import { readSchool } from '../../src/build/school.ts';
import { listen, siteServer } from '../../src/build/static-server.ts';
import { type BuiltSite, PLAIN } from '../helpers/built-site.ts';

export { expect } from '@playwright/test';

/** The name of the school whose site is tested: the invented one, or that of the school whose copy this is. */
export const SCHOOL_NAME = readSchool(new URL('../../', import.meta.url)).school;

/** A page that is watched: what it says on the console, what it cannot load, what it asks of other hosts. */
export interface Watch {
  /** What went wrong so far, in words. A test fails if it ends with any. */
  faults: string[];
  /** Takes a fault as expected, such as the 404 of a page that is not there. */
  expectFault(pattern: RegExp): void;
}

interface Options {
  /** Which build is served. */
  built: BuiltSite;
}

interface Served {
  /** The address of the site, with its base path and a slash at the end. */
  address: string;
}

/** Notes everything a page does that a page of this site does not do. */
function watch(context: BrowserContext, address: string): Watch {
  const expected: RegExp[] = [];
  const faults: string[] = [];
  const note = (fault: string) => faults.push(fault);
  const own = (url: string) => url.startsWith(address) || /^(blob|data|about):/.test(url);

  context.on('console', (message) => note(`console ${message.type()}: ${message.text()} (${message.page()?.url()})`));
  context.on('weberror', (error) => note(`uncaught: ${error.error().message}`));
  context.on('request', (request) => own(request.url()) || note(`request to another place: ${request.url()}`));
  context.on('response', (response) => response.status() < 400 || note(`${response.status()}: ${response.url()}`));
  // A request that the page itself gave up, because it was left or asked for something newer, has not failed.
  context.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    if (why !== 'net::ERR_ABORTED') note(`failed: ${request.url()} ${why}`);
  });

  return {
    get faults() {
      return faults.filter((fault) => !expected.some((pattern) => pattern.test(fault)));
    },
    expectFault: (pattern) => expected.push(pattern),
  };
}

/**
 * The test function of all browser tests: serves the built site from a server of its own, so that `page.goto('course/')`
 * finds it, and fails a test whose pages wrote to the console, failed to load something or spoke to another host.
 */
export const test = plain.extend<{ watched: Watch }, { served: Served } & Options>({
  built: [PLAIN, { option: true, scope: 'worker' }],

  served: [
    async ({ built }, use) => {
      const server = siteServer(built);
      const port = await listen(server, '127.0.0.1', 0);
      await use({ address: `http://127.0.0.1:${port}${built.base}` });
      server.closeAllConnections();
      server.close();
    },
    { scope: 'worker' },
  ],

  baseURL: async ({ served }, use) => use(served.address),

  watched: [
    async ({ context, served }, use) => {
      const watched = watch(context, served.address);
      await use(watched);
      plain.expect(watched.faults, 'the console is empty and nothing failed to load').toEqual([]);
    },
    { auto: true },
  ],
});

/** Waits until the page's own scripts had their turn and nothing is loading. */
export async function settled(page: Page): Promise<void> {
  await page.waitForLoadState('load');
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}
