import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** All that the site is made from, below the root of the project; the packages are told by their lock file. */
const MADE_FROM = [
  'content',
  'components',
  'public',
  'src',
  'LICENSE',
  'astro.config.mjs',
  'package-lock.json',
  'tsconfig.json',
];
/** Settings of the environment that change what is built. */
const SETTINGS = ['SITE_BASE', 'SITE_URL'];

/**
 * A short text that is another one as soon as anything that the site is made from has changed: a file, its name, the base
 * path or the address of the site.
 */
export function stampOf(root: string, environment: Readonly<Record<string, string | undefined>>): string {
  const hash = createHash('sha256');
  for (const name of SETTINGS) hash.update(`${name}=${environment[name] ?? ''}\0`);
  for (const file of MADE_FROM.flatMap((name) => filesBelow(root, name))) {
    const content = readFileSync(join(root, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}

function filesBelow(root: string, name: string): string[] {
  const path = join(root, name);
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [name];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath.slice(root.length), entry.name))
    .sort();
}
