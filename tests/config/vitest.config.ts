import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    // Property tests are long by nature; a limit is there only so that a test that hangs is found.
    testTimeout: 300_000,
  },
});
