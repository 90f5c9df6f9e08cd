import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pagesOf } from '../helpers/built-site.ts';

/** How long a build of the whole site takes, with what the last one cached and without. */
export async function bench(): Promise<void> {
  const root = mkdtempSync(join(tmpdir(), 'barwright-'));
  for (const [label, flags] of [
    ['without cache', ['--force']],
    ['with cache', []],
  ] as const) {
    const started = performance.now();
    const { status } = spawnSync('astro', ['build', '--outDir', root, ...flags], { stdio: 'ignore', shell: true });
    if (status !== 0) throw new Error('The site does not build; npm run build says why.');
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    console.log(`${label}: ${pagesOf({ root, base: '/' }).length} pages in ${seconds} s`);
  }
  rmSync(root, { recursive: true, force: true });
}
