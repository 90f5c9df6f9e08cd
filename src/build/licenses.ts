import { readFileSync } from 'node:fs';
import { glob, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import type { Plugin } from 'vite';
import { PACKAGE_LICENSES } from '../words/license.ts';

/** A package whose code is published, as Vite lists it. */
export interface Licensed {
  name: string;
  version: string;
  /** The short name of its license, such as `MIT`. */
  identifier?: string;
  /** The license as it stands in the package. */
  text?: string;
}

/** Where Vite lists the packages that it bundled; gone once the notices are written. */
const LIST = '_astro/licenses.json';
/** Packages whose code is published without being bundled: the script that wakes islands, and the search. */
const BESIDE = ['astro', 'pagefind'];

/** An integration that publishes the licenses of all packages whose code is in the browser's files. */
export function licenses(): AstroIntegration {
  return {
    name: 'licenses',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { plugins: [licenseList()] } });
      },
      'astro:build:done': async ({ dir }) => {
        const list = fileURLToPath(new URL(LIST, dir));
        const bundled = JSON.parse(await readFile(list, 'utf8')) as Licensed[];
        const beside = await Promise.all(BESIDE.map(licenseOf));
        await writeFile(fileURLToPath(new URL(`.${PACKAGE_LICENSES}`, dir)), licenseNotices([...bundled, ...beside]));
        await rm(list);
      },
    },
  };
}

/** Has Vite list the packages of the browser's files; Astro passes no such setting on to that part of the build. */
function licenseList(): Plugin {
  return {
    name: 'license-list',
    configEnvironment: (name) => (name === 'client' ? { build: { license: { fileName: LIST } } } : undefined),
  };
}

/** The license of an installed package, from the file or the folder of files that it keeps it in. */
export async function licenseOf(name: string): Promise<Licensed> {
  const folder = fileURLToPath(new URL(`../../node_modules/${name}/`, import.meta.url));
  const { version, license } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
  const files = await Array.fromAsync(glob(['LICENSE{,.*}', 'LICENSE/*'], { cwd: folder, withFileTypes: true }));
  const texts = files
    .filter((file) => file.isFile())
    .map((file) => readFileSync(join(file.parentPath, file.name), 'utf8').trim());
  return { name, version, identifier: license, text: texts.join('\n\n') };
}

/** The notices of all packages as one text, by name. Throws where a package brings no license. */
export function licenseNotices(packages: readonly Licensed[]): string {
  const without = packages.find(({ text }) => !text);
  if (without) throw new Error(`${without.name} is in the browser's files and brings no text of its license`);
  const notices = [...packages]
    .sort((a, b) => a.name.localeCompare(b.name, 'en'))
    .map(
      ({ name, version, identifier, text }) => `${name} ${version}${identifier ? ` (${identifier})` : ''}\n\n${text}\n`,
    );
  return notices.join(`\n${'-'.repeat(80)}\n\n`);
}
