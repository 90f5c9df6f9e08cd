/** By what search finds a page, as the index reads it from the page. */
import type { Kind } from './labels.ts';

/** What a page is found as, and what a search can be narrowed to. */
export interface FoundAs {
  kind: Kind;
  part?: number;
  grid?: number | undefined;
  rudiment?: readonly string[];
}

/**
 * The values of a page's filters, for its `data-pagefind-filter`.
 *
 * @example foundAs({ kind: 'lesson', part: 6, rudiment: ['flam', 'flam-drag'] })
 * // 'kind:lesson, part:6, rudiment:flam, rudiment:flam-drag'
 */
export function foundAs(found: FoundAs): string {
  return Object.entries(found)
    .flatMap(([filter, value]) => [value ?? []].flat().map((one) => `${filter}:${one}`))
    .join(', ');
}
