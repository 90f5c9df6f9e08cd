import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const COPIED = ['src', 'components', 'public', 'astro.config.mjs', 'tsconfig.json', 'package.json'];

/**
 * Builds a folder that holds nothing but `content` as a site of its own, into its `dist`. Rejects with what the build
 * said where it fails.
 */
export async function buildContent(root: string): Promise<void> {
  layProject(root);
  await run(process.execPath, [join(PROJECT, 'node_modules/astro/bin/astro.mjs'), 'build'], root);
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

function run(program: string, words: string[], cwd: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, words, { cwd, env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' } });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text: Buffer) => (said += text.toString()));
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(said))));
  });
}
