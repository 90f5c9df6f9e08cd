/** A search as it stands in the address, so that it can be sent and gone back to. */
import type { Filters } from '../../src/search/index.ts';

/** What is looked for. */
export interface Query {
  words: string;
  filters: Filters;
}

const NARROWED_BY = ['kind', 'part', 'grid', 'rudiment'] as const;

/**
 * Reads a search from the address.
 *
 * @example readQuery('?q=flam&kind=lesson') // { words: 'flam', filters: { kind: 'lesson' } }
 */
export function readQuery(search: string): Query {
  const given = new URLSearchParams(search);
  const narrowed = NARROWED_BY.filter((name) => given.get(name)).map((name) => [name, given.get(name)]);
  return { words: given.get('q') ?? '', filters: Object.fromEntries(narrowed) as Filters };
}

/**
 * Writes a search as the end of an address; nothing for an empty one.
 *
 * @example writeQuery({ words: 'flam', filters: { kind: 'lesson' } }) // '?q=flam&kind=lesson'
 */
export function writeQuery({ words, filters }: Query): string {
  const fields = [['q', words.trim()], ...Object.entries(filters)].filter(([, value]) => value);
  const written = new URLSearchParams(fields as [string, string][]).toString();
  return written && `?${written}`;
}
