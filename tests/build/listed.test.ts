import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { isListed } from '../../src/build/listed.ts';

const folder = mkdtempSync(join(tmpdir(), 'barwright-listed-'));
const built = pathToFileURL(`${folder}/`);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const page = (path: string, head: string) => {
  mkdirSync(join(folder, path), { recursive: true });
  writeFileSync(join(folder, path, 'index.html'), `<!doctype html><html><head>${head}</head></html>`);
};

test('what says it should not be listed is not, below whatever path', () => {
  page('lessons/shown', '');
  page('lessons/hidden', '<meta name="robots" content="noindex">');
  for (const base of ['/', '/drums', '/drums/']) {
    const below = base.replace(/\/$/, '');
    expect(isListed(`${below}/lessons/shown/`, base, built)).toBe(true);
    expect(isListed(`${below}/lessons/hidden/`, base, built)).toBe(false);
    expect(isListed(`${below}/lessons/nowhere/`, base, built)).toBe(false);
  }
});

test('the first page of the site is a page like any other', () => {
  page('', '');
  expect(isListed('/', '/', built)).toBe(true);
  expect(isListed('/drums/', '/drums/', built)).toBe(true);
});
