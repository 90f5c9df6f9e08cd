import { readFileSync } from 'node:fs';
import { SCHOOL } from '../helpers/built-site.ts';

/** How many tests a stage ran and how they ended. */
export interface Count {
  passed: number;
  failed: number;
}

/** One step of the proof: commands run in order, and how to count what they tested. */
export interface Stage {
  name: string;
  commands: string[];
  /** What its commands find in their environment besides. */
  env?: Record<string, string>;
  /** Reads the counts a command left behind. Left out where a stage is one check that holds or does not. */
  count?: () => Count;
}

const report = (name: string) => `test-results/${name}.json`;
const readReport = (name: string) => JSON.parse(readFileSync(report(name), 'utf8'));

function vitestCount(): Count {
  const { numPassedTests, numFailedTests, numFailedTestSuites, success } = readReport('unit');
  const failed = numFailedTests || (success ? 0 : Math.max(1, numFailedTestSuites));
  return { passed: numPassedTests, failed };
}

/** A skipped or flaky browser test counts as failed: neither is allowed here. */
function playwrightCount(name: string): () => Count {
  return () => {
    const { stats, errors } = readReport(name);
    return { passed: stats.expected, failed: stats.unexpected + stats.flaky + stats.skipped + errors.length };
  };
}

const ESLINT = 'eslint --config tests/config/eslint.config.js --max-warnings 0 .';
const PLAYWRIGHT = 'playwright test --config tests/config/playwright.config.ts';

/**
 * Everything that is proved, cheapest first. The stages of one round run beside each other: each keeps about one core
 * busy. Those that use every core by themselves, and those that play in real time, have a round of their own.
 */
export const ROUNDS: Stage[][] = [
  [
    {
      name: 'types',
      commands: ['astro check', 'svelte-check --tsconfig ./tests/config/tsconfig.svelte.json --fail-on-warnings'],
    },
    { name: 'lint', commands: [ESLINT, 'depcruise --config tests/config/cruise.json src components tests'] },
    { name: 'format', commands: ['prettier --config tests/config/prettier.config.js --check .'] },
    { name: 'content', commands: ['node src/build/check-content.ts'] },
  ],
  [
    {
      name: 'unit',
      commands: [
        `vitest run --config tests/config/vitest.config.ts --reporter=default --reporter=json --outputFile.json=${report('unit')}`,
      ],
      count: vitestCount,
    },
  ],
  [
    { name: 'build', commands: ['astro build'] },
    { name: 'base-path', commands: ['astro build --outDir .cache/school'], env: { SITE_BASE: SCHOOL.base } },
  ],
  [
    { name: 'html', commands: [`node tests/config/check-html.ts ${report('html')}`], count: () => readReport('html') },
    {
      name: 'accessibility',
      commands: [`${PLAYWRIGHT} --project accessibility`],
      count: playwrightCount('accessibility'),
    },
  ],
  [{ name: 'browser', commands: [`${PLAYWRIGHT} --project browser`], count: playwrightCount('browser') }],
];
