import type { CountSystem } from '../core/index.ts';
import { MOST_CHARACTERS, readQuery, type Query } from './query.ts';
import { INDEX_FOLDER, type FilterCounts, type Filters } from './filters.ts';
import { loadPagefind, type Pagefind, type PagefindPage } from './pagefind.ts';
import { askIndex, RANKING, titlesFirst } from './ranking.ts';
import { loadStickings, type StickingEntry } from './sticking-index.ts';
import { searchStickings, type StickingFound, type StickingPlace } from './stickings.ts';

/** A page that was found. */
export interface Found {
  /** With the base path. */
  url: string;
  title: string;
  kind?: string;
  /** Found by words: HTML; the words found stand in `<mark>`, all else is escaped. */
  excerpt?: string;
  /** Found by its sticking: where. */
  place?: StickingPlace;
}

/** How a question was taken: as a sticking, which might also be another; or as words, although it looked like a sticking. */
export interface Taken {
  sticking?: string;
  /** The same letters with a stroke to each slot. */
  other?: string;
  because?: string;
  /** No page has all of the words; these have all but one. */
  most?: true;
}

/**
 * What comes of a search: pages, `none` that fit, `empty` where nothing was asked, `missing` where there is no index,
 * `failed` where it broke, `stale` where a later search has been asked meanwhile and this one is to be dropped.
 */
export type SearchAnswer =
  | { state: 'found'; results: Found[]; total: number; taken: Taken }
  | { state: 'none'; taken: Taken }
  | { state: 'empty' | 'missing' | 'failed' | 'stale' };

/** How a search is to be done. */
export interface SearchOptions {
  filters?: Filters;
  /** At most so many pages. */
  limit?: number;
  /** A sticking also from any of its slots on. */
  turned?: boolean;
}

/** Search over the pages of the site, by words or by what is a sticking. */
export interface Search {
  /** Never rejects. */
  search: (query: string, options?: SearchOptions) => Promise<SearchAnswer>;
  /** The values there are to narrow a search by words, with the number of their pages; undefined where there is no index. */
  filters: () => Promise<FilterCounts | undefined>;
}

/** Where the indexes come from, and how counts are said. */
export interface SearchSources {
  load?: (address: string) => Promise<Pagefind>;
  loadBars?: (base: string) => Promise<StickingEntry[] | undefined>;
  counting?: CountSystem;
}

/** How many pages a search gives where it is not told. */
const LIMIT = 20;

/**
 * Opens the search of the site at a base path. Nothing is loaded before the first question; an index that could not be
 * loaded is tried again at the next one.
 */
export function openSearch(base: string, sources: SearchSources = {}): Search {
  const { load = loadPagefind, loadBars = loadStickings, counting } = sources;
  const folder = `${base.replace(/\/$/, '')}/`;
  const words = retried((attempt) => start(load, folder, attempt));
  const bars = retried(() => loadBars(folder));
  let turns = 0;

  const byStrokes = async (read: Query & { as: 'sticking' }, options: SearchOptions): Promise<SearchAnswer> => {
    const entries = await bars();
    if (!entries) return { state: 'missing' };
    const { filters = {}, turned = false } = options;
    return strokesFound(
      read,
      (sought) => searchStickings(entries, sought, { filters, turned, counting }),
      folder,
      options,
    );
  };

  const byWords = async (text: string, taken: Taken, options: SearchOptions): Promise<SearchAnswer> => {
    if (text.length > MOST_CHARACTERS) return { state: 'none', taken };
    const index = await words();
    return index ? wordsFound(index, text, taken, options) : { state: 'missing' };
  };

  const search: Search['search'] = async (query, options = {}) => {
    const turn = (turns += 1);
    const text = query.trim();
    if (text === '' && Object.keys(options.filters ?? {}).length === 0) return { state: 'empty' };
    const read = readQuery(text);
    const answer =
      read.as === 'sticking' ? await byStrokes(read, options) : await byWords(text, wordsTaken(read), options);
    return turn === turns ? answer : { state: 'stale' };
  };

  const filters: Search['filters'] = async () => (await words())?.filters().catch(() => undefined);
  return { search, filters };
}

const wordsTaken = ({ because, single }: Query & { as: 'words' }): Taken => ({
  ...(because && { because }),
  ...(single && { other: single.text }),
});

/** Loads a thing once; what could not be loaded is loaded anew when it is asked for again. */
function retried<T>(load: (attempt: number) => Promise<T | undefined>): () => Promise<T | undefined> {
  let loading: Promise<T | undefined> | undefined;
  let attempt = 0;
  return async () => {
    loading ??= load((attempt += 1));
    const loaded = await loading;
    if (loaded === undefined) loading = undefined;
    return loaded;
  };
}

/** A browser remembers that a module did not load, so another attempt has another address. */
async function start(
  load: (address: string) => Promise<Pagefind>,
  folder: string,
  attempt: number,
): Promise<Pagefind | undefined> {
  try {
    const index = await load(`${folder}${INDEX_FOLDER}/pagefind.js${attempt > 1 ? `?${attempt}` : ''}`);
    await index.options({ baseUrl: folder, ranking: RANKING });
    return index;
  } catch {
    return undefined;
  }
}

/** The sticking as it is written or, where nothing has that, with a stroke to each slot. */
function strokesFound(
  { written, single }: Query & { as: 'sticking' },
  find: (sought: NonNullable<typeof written>['sticking']) => StickingFound[],
  folder: string,
  { limit = LIMIT }: SearchOptions,
): SearchAnswer {
  const first = written ? find(written.sticking) : [];
  const all = first.length > 0 || !single ? first : find(single.sticking);
  const read = first === all && written ? written : single;
  const taken = { sticking: read?.text ?? '', ...(read === written && single && { other: single.text }) };
  if (all.length === 0) return { state: 'none', taken };
  const results = all.slice(0, limit).map((one) => ({ ...one, url: folder.replace(/\/$/, '') + one.url }));
  return { state: 'found', results, total: all.length, taken };
}

async function wordsFound(
  index: Pagefind,
  text: string,
  taken: Taken,
  { filters = {}, limit = LIMIT }: SearchOptions,
): Promise<SearchAnswer> {
  try {
    const { results, most } = await askIndex(text, (words) => index.search(words, { filters }));
    if (results.length === 0) return { state: 'none', taken };
    const pages = await titlesFirst(text, results, limit);
    const found = pages.map(foundPage);
    return { state: 'found', results: found, total: results.length, taken: most ? { ...taken, most } : taken };
  } catch {
    return { state: 'failed' };
  }
}

function foundPage({ url, excerpt, meta, filters }: PagefindPage): Found {
  return { url, title: meta.title ?? url, excerpt, kind: filters?.kind?.[0] };
}
