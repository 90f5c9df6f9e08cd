/** Where the index stands below the base path. */
export const INDEX_FOLDER = 'pagefind';

/**
 * The filters of the search, and what a page writes into `data-pagefind-filter` for them: its kind; the number of its
 * part; the slots a beat of its bars; the slugs of the rudiments it is about, once for each.
 */
export const FILTERS = ['kind', 'part', 'grid', 'rudiment'] as const;

/** The name of a filter. */
export type Filter = (typeof FILTERS)[number];

/** The kinds of page that can be found. */
export const KINDS = ['lesson', 'exercise', 'rudiment', 'term', 'page'] as const;

/** What a search is narrowed to; a filter that is left out lets everything through. */
export type Filters = Partial<Record<Filter, string>>;

/** How many pages each value of each filter has. */
export type FilterCounts = Partial<Record<Filter, Record<string, number>>>;
