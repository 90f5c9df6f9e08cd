import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { stampOf } from '../../src/build/stamp.ts';

const root = mkdtempSync(join(tmpdir(), 'stamp-'));
mkdirSync(join(root, 'content/cells'), { recursive: true });
const write = (name: string, text: string) => writeFileSync(join(root, name), text);
write('content/cells/one.yaml', 'sticking: R\n');
write('package-lock.json', '{}');
write('README.md', 'Read me.');

afterAll(() => rmSync(root, { recursive: true, force: true }));

/** Whether the stamp is another one after a change. */
function changes(change: () => void): boolean {
  const before = stampOf(root, {});
  change();
  return stampOf(root, {}) !== before;
}

test('is the same as long as nothing that the site is made from changes', () => {
  expect(changes(() => undefined)).toBe(false);
  expect(changes(() => write('README.md', 'Read me again.'))).toBe(false);
  expect(changes(() => write('content/cells/one.yaml', 'sticking: R\n'))).toBe(false);
});

test.each<[string, () => void]>([
  ['a text', () => write('content/cells/one.yaml', 'sticking: L\n')],
  ['a new file', () => write('content/cells/two.yaml', '')],
  ['a name', () => renameSync(join(root, 'content/cells/two.yaml'), join(root, 'content/cells/three.yaml'))],
  ['a file that goes', () => rmSync(join(root, 'content/cells/three.yaml'))],
  ['the packages', () => write('package-lock.json', '{ }')],
])('is another one after a change of %s', (_what, change) => expect(changes(change)).toBe(true));

test('is another one for another base path or address', () => {
  const stamps = [{}, { SITE_BASE: '/drums/' }, { SITE_URL: 'https://school.example' }].map((set) =>
    stampOf(root, set),
  );
  expect(new Set(stamps).size).toBe(3);
  expect(stampOf(root, { PORT: '8080' })).toBe(stamps[0]);
});
