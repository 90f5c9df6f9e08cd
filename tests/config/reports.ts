/** What the reports of Vitest and Playwright say: how many tests ran, how they ended, how long each took. */
import { readFileSync } from 'node:fs';

/** How many tests a stage ran and how they ended. */
export interface Count {
  passed: number;
  failed: number;
}

/** One test and how long it took. */
export interface Timed {
  name: string;
  seconds: number;
}

export interface Report extends Count {
  tests: Timed[];
}

interface VitestReport {
  numPassedTests: number;
  numFailedTests: number;
  numFailedTestSuites: number;
  success: boolean;
  testResults: { assertionResults: { fullName: string; duration?: number | null }[] }[];
}

/** Reads what Vitest wrote; a file that broke before its first test is a failure too. */
export function ofVitest(report: VitestReport): Report {
  const { numPassedTests, numFailedTests, numFailedTestSuites, success } = report;
  const tests = report.testResults.flatMap(({ assertionResults }) =>
    assertionResults.map(({ fullName, duration }) => ({ name: fullName, seconds: (duration ?? 0) / 1000 })),
  );
  return { passed: numPassedTests, failed: numFailedTests || (success ? 0 : Math.max(1, numFailedTestSuites)), tests };
}

interface Suite {
  title: string;
  suites?: Suite[];
  specs: { title: string; tests: { results: { duration: number }[] }[] }[];
}

interface PlaywrightReport {
  stats: Record<'expected' | 'unexpected' | 'flaky' | 'skipped', number>;
  errors: unknown[];
  suites: Suite[];
}

const testsIn = ({ title, suites = [], specs }: Suite): Timed[] => [
  ...specs.map((spec) => ({
    name: `${title} › ${spec.title}`,
    seconds: spec.tests.flatMap(({ results }) => results).reduce((sum, { duration }) => sum + duration / 1000, 0),
  })),
  ...suites.flatMap((inner) => testsIn({ ...inner, title: `${title} › ${inner.title}` })),
];

/** Reads what Playwright wrote; a skipped or flaky test counts as failed: neither is allowed here. */
export function ofPlaywright({ stats, errors, suites }: PlaywrightReport): Report {
  const failed = stats.unexpected + stats.flaky + stats.skipped + errors.length;
  return { passed: stats.expected, failed, tests: suites.flatMap(testsIn) };
}

/** The slowest tests of several reports, the slowest first. */
export const slowest = (tests: readonly Timed[], how: number): Timed[] =>
  [...tests].sort((a, b) => b.seconds - a.seconds).slice(0, how);

/** Reads a report from where a stage left it. */
export const readReport = <R>(path: string, read: (report: R) => Report): Report =>
  read(JSON.parse(readFileSync(path, 'utf8')) as R);
