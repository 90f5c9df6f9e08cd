import { INDEX_FOLDER, type FilterCounts, type Filters } from './filters.ts';
import { loadPagefind, type Pagefind, type PagefindPage } from './pagefind.ts';
import { askedSticking, loadStickings, searchStickings, type StickingEntry, type StickingFound } from './stickings.ts';

/** A page that was found. */
export interface Found {
  /** With the base path. */
  url: string;
  title: string;
  /** HTML: the words found stand in `<mark>`, all else is escaped. */
  excerpt: string;
  kind?: string;
}

/**
 * What comes of a search: pages, `none` that fit, `empty` where nothing was asked, `missing` where there is no index,
 * `failed` where it broke, `stale` where a later search has been asked meanwhile and this one is to be dropped.
 */
export type SearchAnswer =
  { state: 'found'; results: Found[]; total: number } | { state: 'none' | 'empty' | 'missing' | 'failed' | 'stale' };

/** Search over the pages of the site, by words or, where what is asked is a sticking of two slots or more, by that. */
export interface Search {
  /** Never rejects. Asks for at most `limit` pages. */
  search: (query: string, filters?: Filters, limit?: number) => Promise<SearchAnswer>;
  /** The values there are to narrow a search, with the number of their pages; undefined where there is no index. */
  filters: () => Promise<FilterCounts | undefined>;
}

/** How many pages a search gives where it is not told. */
const LIMIT = 20;

/**
 * Opens the search of the site at a base path. Nothing is loaded before the first question; an index that could not be
 * loaded is tried again at the next one.
 */
export function openSearch(
  base: string,
  load: (address: string) => Promise<Pagefind> = loadPagefind,
  loadBars: (base: string) => Promise<StickingEntry[] | undefined> = loadStickings,
): Search {
  const folder = `${base.replace(/\/$/, '')}/`;
  let opened: Promise<Pagefind | undefined> | undefined;
  let stickings: Promise<StickingEntry[] | undefined> | undefined;
  let asked = 0;

  const open = async () => {
    opened ??= start(load, folder);
    const index = await opened;
    if (!index) opened = undefined;
    return index;
  };

  const byWords = async (words: string, filters: Filters, limit: number): Promise<SearchAnswer> => {
    const index = await open();
    return index ? ask(index, words, filters, limit) : { state: 'missing' };
  };

  /** Nothing where no sticking was asked for, or their index is not there. */
  const byStrokes = async (words: string, { kind }: Filters, limit: number): Promise<SearchAnswer | undefined> => {
    const sought = askedSticking(words);
    const bars = sought && (await (stickings ??= loadBars(folder)));
    if (!sought || !bars) {
      stickings = undefined;
      return undefined;
    }
    const all = searchStickings(bars, sought, { mirrored: true }).filter((one) => !kind || one.kind === kind);
    const results = all.slice(0, limit).map((one) => foundBar(one, folder));
    return all.length ? { state: 'found', results, total: all.length } : { state: 'none' };
  };

  const search: Search['search'] = async (query, filters = {}, limit = LIMIT) => {
    const turn = (asked += 1);
    const words = query.trim();
    if (words === '' && Object.keys(filters).length === 0) return { state: 'empty' };
    const answer = (await byStrokes(words, filters, limit)) ?? (await byWords(words, filters, limit));
    return turn === asked ? answer : { state: 'stale' };
  };

  const filters: Search['filters'] = async () => (await open())?.filters().catch(() => undefined);
  return { search, filters };
}

async function start(load: (address: string) => Promise<Pagefind>, folder: string): Promise<Pagefind | undefined> {
  try {
    const index = await load(`${folder}${INDEX_FOLDER}/pagefind.js`);
    await index.options({ baseUrl: folder });
    return index;
  } catch {
    return undefined;
  }
}

async function ask(index: Pagefind, words: string, filters: Filters, limit: number): Promise<SearchAnswer> {
  try {
    const { results } = await index.search(words === '' ? null : words, { filters });
    if (results.length === 0) return { state: 'none' };
    const pages = await Promise.all(results.slice(0, limit).map((result) => result.data()));
    return { state: 'found', results: pages.map(foundPage), total: results.length };
  } catch {
    return { state: 'failed' };
  }
}

function foundBar({ url, title, kind, text, mirrored }: StickingFound, folder: string): Found {
  const escaped = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  const excerpt = mirrored ? `${escaped} (the other hand leads)` : escaped;
  return { url: folder.replace(/\/$/, '') + url, title, excerpt, kind };
}

function foundPage({ url, excerpt, meta, filters }: PagefindPage): Found {
  return { url, title: meta.title ?? url, excerpt, kind: filters?.kind?.[0] };
}
