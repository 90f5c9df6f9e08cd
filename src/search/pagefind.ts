import type { FilterCounts, Filters } from './filters.ts';

/** How much what counts when it puts pages in order; what is left out is its own choice. */
export interface PagefindRanking {
  /** How much a word that is repeated counts, 0 to 1. */
  termFrequency?: number;
  /** How much a short page is preferred, 0 to 1. */
  pageLength?: number;
  /** How much a word is preferred that is as long as the one asked for. */
  termSimilarity?: number;
  /** How soon more of the same word counts no more, 0 to 2. */
  termSaturation?: number;
  /** How much a word counts that stands in one of these of a page. */
  metaWeights?: Record<string, number>;
}

/** As much of Pagefind's own browser module as is used. */
export interface Pagefind {
  options: (options: { baseUrl?: string; excerptLength?: number; ranking?: PagefindRanking }) => Promise<void>;
  filters: () => Promise<FilterCounts>;
  search: (query: string | null, options: { filters: Filters }) => Promise<PagefindAnswer>;
}

/** What it answers. */
export interface PagefindAnswer {
  results: { id: string; score: number; data: () => Promise<PagefindPage> }[];
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
