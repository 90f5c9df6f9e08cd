import { type Report, ofPlaywright, ofVitest, readReport } from './reports.ts';

/** One step of the proof: commands run in order, and how to read what they tested. */
export interface Stage {
  name: string;
  commands: string[];
  /** Reads the report a command left behind. Left out where a stage is one check that holds or does not. */
  report?: () => Report;
}

const reportOf = (name: string) => `test-results/${name}.json`;

function vitest(name: string): Stage {
  const command = `vitest run --config tests/config/vitest.config.ts --project ${name}`;
  const commands = [`${command} --reporter=default --reporter=json --outputFile.json=${reportOf(name)}`];
  return { name, commands, report: () => readReport(reportOf(name), ofVitest) };
}

function playwright(name: string): Stage {
  const commands = [`playwright test --config tests/config/playwright.config.ts --project ${name}`];
  return { name, commands, report: () => readReport(reportOf(name), ofPlaywright) };
}

const ESLINT = 'eslint --config tests/config/eslint.config.js --max-warnings 0 .';

/**
 * Everything that is proved, cheapest first. The stages of one round run beside each other. The browser tests play in
 * real time and have a round of their own.
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
    vitest('unit'),
    { name: 'build', commands: ['node src/build/build.ts'] },
    { name: 'school', commands: ['node tests/pages/build-school.ts'] },
  ],
  [vitest('pages'), playwright('accessibility')],
  [playwright('browser')],
  // Copies of the repository, so only where there is time.
  process.env.LONG ? [{ name: 'upgrade', commands: ['node tests/config/try-upgrade.ts'] }] : [],
];
