import { defineConfig } from '@playwright/test';
import { BROWSER_FLAGS, findBrowser } from './find-browser.ts';

const executablePath = await findBrowser();
const ACCESSIBILITY = '**/accessibility.test.ts';

export default defineConfig({
  testDir: '../browser',
  testMatch: '**/*.test.ts',
  outputDir: '../../test-results/browser',
  // A test that needs a second try hides a fault.
  retries: 0,
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  // Limits are there so that a test that hangs is found. A test waits for what is to be seen and is done at once; on a
  // machine that is busy otherwise it waits a few times longer and must not fail for it.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  reporter: process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ? [['line'], ['json']] : 'list',
  use: {
    launchOptions: { executablePath, args: BROWSER_FLAGS },
    viewport: { width: 1280, height: 900 },
    trace: 'off',
  },
  projects: [
    { name: 'browser', testIgnore: ACCESSIBILITY },
    { name: 'accessibility', testMatch: ACCESSIBILITY },
  ],
});
