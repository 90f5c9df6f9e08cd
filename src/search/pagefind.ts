import type { FilterCounts, Filters } from './filters.ts';

/** As much of Pagefind's own browser module as is used. */
export interface Pagefind {
  options: (options: { baseUrl?: string; excerptLength?: number }) => Promise<void>;
  filters: () => Promise<FilterCounts>;
  search: (query: string | null, options: { filters: Filters }) => Promise<PagefindAnswer>;
}

/** What it answers. */
export interface PagefindAnswer {
  results: { data: () => Promise<PagefindPage> }[];
  filters?: FilterCounts;
}

/** A page it has found. */
export interface PagefindPage {
  url: string;
  /** HTML: the words found stand in `<mark>`, all else is escaped. */
  excerpt: string;
  meta: { title?: string } & Record<string, string | undefined>;
  filters?: Record<string, string[]>;
}

/** Loads the index's own module from below the base path; it is written after the site, so no bundler can know it. */
export async function loadPagefind(address: string): Promise<Pagefind> {
  // eslint-disable-next-line no-restricted-syntax -- written after the build, at an address that only the base path decides
  return (await import(/* @vite-ignore */ address)) as Pagefind;
}
