/** A search as it stands in the address, so that it can be sent and gone back to. */
import { FILTERS, type Filter, type Filters } from './filters.ts';

/** What an address looks for. */
export interface SearchAddress {
  words: string;
  filters: Filters;
  /** A sticking in any rotation. */
  turned: boolean;
}

const TURNED = 'rotation';
const ANY = 'any';

/** What there is to narrow a search by. */
export interface FilterWays {
  filter: Filter;
  ways: readonly { value: string }[];
}

/** A search that an address asks for, and filters of it that are not to be had. */
export interface SearchRead {
  search: SearchAddress;
  unknown: { filter: Filter; value: string }[];
}

/**
 * Reads a search from the address; never throws, whatever stands there.
 *
 * @example readSearchAddress('?q=R+L+L&grid=99&rotation=any', []).unknown // [{ filter: 'grid', value: '99' }]
 */
export function readSearchAddress(address: string, narrow: readonly FilterWays[]): SearchRead {
  const given = new URLSearchParams(address);
  const asked = FILTERS.flatMap((filter) => ({ filter, value: given.get(filter) ?? '' })).filter(({ value }) => value);
  const isKnown = (one: { filter: Filter; value: string }) =>
    narrow.some(({ filter, ways }) => filter === one.filter && ways.some(({ value }) => value === one.value));
  const filters = asked.filter(isKnown).map(({ filter, value }) => [filter, value]);
  return {
    search: {
      words: given.get('q') ?? '',
      filters: Object.fromEntries(filters) as Filters,
      turned: given.get(TURNED) === ANY,
    },
    unknown: asked.filter((one) => !isKnown(one)),
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
