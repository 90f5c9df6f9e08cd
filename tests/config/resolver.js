import { existsSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { dirname, resolve as join } from 'node:path';

/** Which kind of resolver the rules about folders expect. */
export const interfaceVersion = 2;

/**
 * Finds an imported file for the rules about folders. Imports are written with their extension, so there is nothing to
 * guess; but a script element of an .astro file reaches the linter as `X.astro/0_0.ts`, and its imports are meant from
 * beside X.astro; and a bundler's `?url` or `?worker` is no part of the name.
 */
export function resolve(source, file) {
  if (isBuiltin(source)) return { found: true, path: null };
  if (!source.startsWith('.')) return { found: false };
  const importer = file.replace(/(\.astro)[\\/].*$/, '$1');
  const path = join(dirname(importer), source.replace(/\?.*$/, ''));
  return existsSync(path) ? { found: true, path } : { found: false };
}
