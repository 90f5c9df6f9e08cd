import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { claimOf, CLAIMS } from '../../src/words/proof.ts';

const TESTS = new URL('..', import.meta.url).pathname;
const files = readdirSync(TESTS, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.test.ts') && file !== 'config/proof.test.ts')
  .map((file) => ({ file, text: readFileSync(join(TESTS, file), 'utf8') }));
const named = ({ text }: { text: string }) => [...text.matchAll(/claimOf\('([^']*)'\)/g)].map(([, id]) => id);

it('every claim of the site is the name of a test, and every such name is a claim', () => {
  const tested = new Set(files.flatMap(named));
  expect([...tested].sort()).toEqual(CLAIMS.map(({ id }) => id).sort());
});

it('every file of checks from outside proves a claim', () => {
  const idle = files.filter((one) => one.file.startsWith('reference/') && named(one).length === 0);
  expect(idle.map(({ file }) => file)).toEqual([]);
});

it('a claim that does not exist cannot be named', () => {
  expect(() => claimOf('louder')).toThrow(/"louder"/);
});
