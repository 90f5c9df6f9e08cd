import { INDEX_FOLDER, type FilterCounts, type Filters } from './filters.ts';
import { loadPagefind, type Pagefind, type PagefindPage } from './pagefind.ts';

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

/** Search by words over the pages of the site. */
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
export function openSearch(base: string, load: (address: string) => Promise<Pagefind> = loadPagefind): Search {
  const folder = `${base.replace(/\/$/, '')}/`;
  let opened: Promise<Pagefind | undefined> | undefined;
  let asked = 0;

  const open = async () => {
    opened ??= start(load, folder);
    const index = await opened;
    if (!index) opened = undefined;
    return index;
  };

  const search: Search['search'] = async (query, filters = {}, limit = LIMIT) => {
    const turn = (asked += 1);
    const words = query.trim();
    if (words === '' && Object.keys(filters).length === 0) return { state: 'empty' };
    const index = await open();
    if (!index) return { state: 'missing' };
    const answer = await ask(index, words, filters, limit);
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

function foundPage({ url, excerpt, meta, filters }: PagefindPage): Found {
  return { url, title: meta.title ?? url, excerpt, kind: filters?.kind?.[0] };
}
