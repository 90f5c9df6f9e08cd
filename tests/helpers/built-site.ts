import { existsSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A built site: the folder it stands in and the base path it was built for. */
export interface BuiltSite {
  root: string;
  base: string;
}

/** The site as it is shipped; BARWRIGHT_DIST names another folder it was built into. */
export const PLAIN: BuiltSite = { root: process.env.BARWRIGHT_DIST ?? join(ROOT, 'dist'), base: '/' };

/** A small site with a school's own settings, films and pictures, built for a folder of its server. */
export const SCHOOL: BuiltSite = { root: join(ROOT, '.cache/school'), base: '/school/' };

/** All files of a folder, as paths below it with forward slashes. Throws where the site is not built. */
export function filesOf({ root }: BuiltSite): string[] {
  if (!existsSync(root)) throw new Error(`There is no site in ${relative(ROOT, root)}: run npm run build first`);
  return readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** The addresses of all pages below the base, such as `''`, `course/`, `404.html`. */
export function pagesOf(site: BuiltSite): string[] {
  return filesOf(site)
    .filter((file) => file.endsWith('.html'))
    .map((file) => file.replace(/(^|\/)index\.html$/, '$1'));
}

/** What kind of page an address is: `home`, `lessons` for one lesson, `lessons list` for the list of them. */
export function kindOf(page: string): string {
  const [first = '', second = ''] = page.split('/');
  if (first === '') return 'home';
  if (second) return first;
  return page.endsWith('/') && LISTS.has(first) ? `${first} list` : first;
}

const LISTS = new Set(['lessons', 'exercises', 'rudiments', 'glossary', 'puzzles']);

/** One page of each kind, the first in order of address. */
export function onePageOfEachKind(site: BuiltSite): Map<string, string> {
  const pages = new Map<string, string>();
  for (const page of pagesOf(site)) if (!pages.has(kindOf(page))) pages.set(kindOf(page), page);
  return pages;
}
