import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { type BuiltSite, filesOf } from './built-site.ts';

/** A built site read into memory: its pages by address, the names of all its files. */
export interface SiteFiles {
  site: BuiltSite;
  files: Set<string>;
  html: Map<string, string>;
}

const read = new Map<string, SiteFiles>();

/** Reads a built site once. */
export function readSite(site: BuiltSite): SiteFiles {
  const known = read.get(site.root);
  if (known) return known;
  const files = filesOf(site);
  const pages = files.filter((file) => file.endsWith('.html'));
  const html = new Map(
    pages.map((file) => [file.replace(/(^|\/)index\.html$/, '$1'), readFileSync(join(site.root, file), 'utf8')]),
  );
  const result = { site, files: new Set(files), html };
  read.set(site.root, result);
  return result;
}

const LINK = /\s(?:href|src|poster|component-url|renderer-url|before-hydration-url)="([^"]*)"/g;
const unescaped = (text: string) => text.replaceAll('&#38;', '&').replaceAll('&amp;', '&');

/** Every address a page names in its markup. */
export function linksOf(html: string): string[] {
  return [...html.matchAll(LINK)].map(([, link]) => unescaped(link));
}

const isElsewhere = (link: string) => /^(https?:|mailto:|tel:|data:)/.test(link);

/** The path of a link below the site's base, or undefined where it leads out of the base. */
function pathBelow({ base }: BuiltSite, page: string, link: string): string | undefined {
  const from = page.endsWith('/') || page === '' ? page : `${dirname(page)}/`;
  const path = link.startsWith('/') ? link : posix.join(base, from, link);
  return path.startsWith(base) ? decodeURIComponent(path.slice(base.length)) : undefined;
}

/** Says what is wrong with one link of a page; undefined where it leads to a file, and to an id if it names one. */
function linkFault(files: SiteFiles, page: string, link: string): string | undefined {
  const [path = '', fragment] = link.split('#');
  const target = path === '' ? page : pathBelow(files.site, page, path.replace(/\?.*/, ''));
  if (target === undefined) return `${link} leaves the base path ${files.site.base}`;
  const html = files.html.get(target);
  if (html === undefined && !files.files.has(target)) return `${link} leads nowhere`;
  // A fragment that is no id is input for a page's script, as in a link to a phrase.
  const isId = fragment !== undefined && /^[a-z][\w-]*$/i.test(fragment) && html !== undefined;
  return isId && !html.includes(`id="${fragment}"`) ? `${link}: no element has the id "${fragment}"` : undefined;
}

/** What is wrong with the links of a page, a line each. */
export function brokenLinks(files: SiteFiles, page: string): string[] {
  const links = linksOf(files.html.get(page) ?? '').filter((link) => !isElsewhere(link));
  return [...new Set(links)].flatMap((link) => linkFault(files, page, link) ?? []);
}
