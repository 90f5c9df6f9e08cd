import { expect, test } from 'vitest';
import { ofPlaywright, ofVitest, slowest } from './reports.ts';

const vitest = { numPassedTests: 2, numFailedTests: 0, numFailedTestSuites: 0, success: true, testResults: [] };
const stats = { expected: 3, unexpected: 0, flaky: 0, skipped: 0 };
const spec = (title: string, duration: number) => ({ title, tests: [{ results: [{ duration }] }] });

test('a run that went well has no failure', () => {
  expect(ofVitest(vitest)).toEqual({ passed: 2, failed: 0, tests: [] });
  expect(ofPlaywright({ stats, errors: [], suites: [] })).toEqual({ passed: 3, failed: 0, tests: [] });
});

test('a file that broke before its first test is a failure', () => {
  expect(ofVitest({ ...vitest, success: false, numFailedTestSuites: 1 }).failed).toBe(1);
  expect(ofPlaywright({ stats, errors: [{}], suites: [] }).failed).toBe(1);
});

test('a browser test that is skipped, or passes at its second try only, is a failure', () => {
  expect(ofPlaywright({ stats: { ...stats, skipped: 1, flaky: 1 }, errors: [], suites: [] }).failed).toBe(2);
});

test('the slowest tests are named with their groups, in order', () => {
  const assertionResults = [{ fullName: 'sums add up', duration: 1500 }, { fullName: 'nothing' }];
  const { tests } = ofVitest({ ...vitest, testResults: [{ assertionResults }] });
  const group = { title: 'a page', specs: [spec('opens', 4000)] };
  const browser = ofPlaywright({ stats, errors: [], suites: [{ title: 'x.ts', specs: [], suites: [group] }] });
  expect(slowest([...tests, ...browser.tests], 2)).toEqual([
    { name: 'x.ts › a page › opens', seconds: 4 },
    { name: 'sums add up', seconds: 1.5 },
  ]);
});
