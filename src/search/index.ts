/** Search by words, for the browser. Writing the index is for the build: `write-index.ts`. */
export { FILTERS, KINDS, type Filter, type FilterCounts, type Filters } from './filters.ts';
export { openSearch, type Found, type Search, type SearchAnswer } from './search.ts';
export { loadStickings, searchStickings, STICKING_INDEX, type StickingEntry, type StickingFound } from './stickings.ts';
