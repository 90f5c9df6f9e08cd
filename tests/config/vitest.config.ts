import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    // No test writes to a module or a global, so that files can share a worker: a fifth of the time was loading modules.
    isolate: false,
    // Property tests are long by nature; a limit is there only so that a test that hangs is found.
    testTimeout: 300_000,
  },
});
