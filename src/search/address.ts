/** A search as it stands in the address, so that it can be sent and gone back to. */
import { FILTERS, type Filters } from './filters.ts';

/** What an address looks for. */
export interface SearchAddress {
  words: string;
  filters: Filters;
  /** A sticking in any rotation. */
  turned: boolean;
}

const TURNED = 'rotation';
const ANY = 'any';

/**
 * Reads a search from the address.
 *
 * @example readSearchAddress('?q=R+L+L&kind=lesson&rotation=any') // { words: 'R L L', filters: { kind: 'lesson' }, turned: true }
 */
export function readSearchAddress(search: string): SearchAddress {
  const given = new URLSearchParams(search);
  const narrowed = FILTERS.filter((name) => given.get(name)).map((name) => [name, given.get(name)]);
  return {
    words: given.get('q') ?? '',
    filters: Object.fromEntries(narrowed) as Filters,
    turned: given.get(TURNED) === ANY,
  };
}

/**
 * Writes a search as the end of an address; nothing for an empty one.
 *
 * @example printSearchAddress({ words: 'flam', filters: { kind: 'lesson' }, turned: false }) // '?q=flam&kind=lesson'
 */
export function printSearchAddress({ words, filters, turned }: SearchAddress): string {
  const fields = [['q', words.trim()], ...Object.entries(filters), [TURNED, turned ? ANY : '']];
  const written = new URLSearchParams(fields.filter(([, value]) => value) as [string, string][]).toString();
  return written && `?${written}`;
}
