import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BuiltSite } from './built-site.ts';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const COPIED = ['src', 'components', 'public', 'astro.config.mjs', 'tsconfig.json', 'package.json', 'LICENSE'];

/** Where the small site says that it stands. */
export const SCHOOL_ADDRESS = 'https://school.example';

/** Builds a folder that holds nothing but `content` as a site of its own. Rejects with what the build said where it fails. */
export async function buildContent(root: string, { root: outDir, base }: BuiltSite): Promise<void> {
  layProject(root);
  const astro = join(PROJECT, 'node_modules/astro/bin/astro.mjs');
  await run(process.execPath, [astro, 'build', '--outDir', outDir], root, {
    SITE_BASE: base,
    SITE_URL: SCHOOL_ADDRESS,
  });
}

/** Puts all that a build needs beside a folder's `content`. */
export function layProject(root: string): void {
  for (const name of COPIED) cpSync(join(PROJECT, name), join(root, name), { recursive: true });
  linkPackages(join(PROJECT, 'node_modules'), join(root, 'node_modules'));
}

/** A folder of its own with links in it: Astro keeps what it has read of the content among the packages. */
function linkPackages(from: string, to: string): void {
  mkdirSync(to);
  for (const name of readdirSync(from))
    if (!name.startsWith('.') || name === '.bin') symlinkSync(join(from, name), join(to, name));
}

function run(program: string, words: string[], cwd: string, env: Record<string, string>): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, words, { cwd, env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env } });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text: Buffer) => (said += text.toString()));
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(said))));
  });
}
