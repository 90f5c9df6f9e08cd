/** By what search finds a page, as the index reads it from the page. */
import type { Kind } from './labels.ts';

/** What a page is found as, and what a search can be narrowed to. */
export interface FoundAs {
  kind: Kind;
  part?: number | undefined;
  grid?: number | undefined;
  rudiment?: readonly string[];
}

/**
 * The filters of a page, each with one value; a page about several rudiments has as many.
 *
 * @example filtersOf({ kind: 'lesson', part: 6 }) // [['kind', 'lesson'], ['part', '6']]
 */
export function filtersOf(found: FoundAs): [filter: string, value: string][] {
  return Object.entries(found).flatMap(([filter, value]) =>
    [value ?? []].flat().map((one): [string, string] => [filter, String(one)]),
  );
}
