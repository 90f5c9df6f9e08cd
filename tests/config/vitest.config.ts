import { defineConfig } from 'vitest/config';

const PAGES = 'tests/pages/**/*.test.ts';

export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    // No test writes to a module or a global, so that files can share a worker: a fifth of the time was loading modules.
    isolate: false,
    // Property tests are long by nature; a limit is there only so that a test that hangs is found.
    testTimeout: 300_000,
    projects: [
      {
        extends: true,
        test: { name: 'unit', include: ['tests/**/*.test.ts'], exclude: ['tests/browser/**', PAGES] },
      },
      // What can be read from the built sites without a browser.
      { extends: true, test: { name: 'pages', include: [PAGES] } },
    ],
  },
});
