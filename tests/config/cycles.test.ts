import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Writes files into a folder that goes when the test is over. */
function planted(files: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'planted-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

function cruise(folder: string) {
  const config = join(ROOT, 'tests/config/cruise.json');
  const { status, stdout } = spawnSync(join(ROOT, 'node_modules/.bin/depcruise'), ['--config', config, folder], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  return { status, stdout };
}

test('a cycle is found, of types as well', () => {
  const folder = planted({
    'a.ts': "import type { B } from './b.ts';\nexport type A = B;\n",
    'b.ts': "import type { A } from './a.ts';\nexport type B = A;\n",
  });
  const { status, stdout } = cruise(folder);
  expect(stdout).toContain('no-cycles');
  expect(status).not.toBe(0);
});
