/** Search by words and by sticking, for the browser. Writing the index of words is for the build: `write-index.ts`. */
export type { CountSystem } from '../core/index.ts';
export { FILTERS, type Filter, type FilterCounts, type Filters } from './filters.ts';
export { openSearch, type Found, type Search, type SearchAnswer, type SearchOptions, type Taken } from './search.ts';
export { readQuery, type PrintedSticking, type Query } from './query.ts';
export { searchStickings, type StickingFound, type StickingPlace } from './stickings.ts';
export {
  loadStickings,
  packStickings,
  unpackStickings,
  type StickingBar,
  type StickingEntry,
} from './sticking-index.ts';
