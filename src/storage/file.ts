/** A player's data as a file: written by one browser, read by another or by the same one later. */
import type { LeftOut } from './fitting.ts';
import { readAll, type Stored } from './kept.ts';
import { objectIn, VERSION } from './shelf.ts';

/** By what a file of ours is known. */
const KIND = 'barwright player data';

/** No file of ours is larger, in characters: ten thousand exercises fit ten times over. */
export const LARGEST_FILE = 5_000_000;

/** Why a file is refused. */
export type FileFault = 'too-large' | 'no-data' | 'not-ours' | 'newer' | 'nothing-fits';

/** What a file holds. */
export interface Saved {
  stored: Stored;
  /** Texts that the browser which wrote the file could not read. */
  unread: string[];
}

/** A file that was read: whole, or without what is named in `leftOut`. */
export type FileReading = ({ ok: true; leftOut: LeftOut[] } & Saved) | { ok: false; why: FileFault };

/**
 * The file that holds everything kept.
 *
 * @example JSON.parse(writeFile({ stored: { version: 1 }, unread: [] })) // { kind: 'barwright player data', version: 1 }
 */
export function writeFile({ stored, unread }: Saved): string {
  return `${JSON.stringify({ kind: KIND, ...stored, ...(unread.length ? { unread } : {}) }, null, 2)}\n`;
}

/**
 * Reads a file; never throws, whatever it holds. A file of which nothing can be used is refused.
 *
 * @example readFile('not a file of ours') // { ok: false, why: 'no-data' }
 */
export function readFile(text: string): FileReading {
  if (text.length > LARGEST_FILE) return { ok: false, why: 'too-large' };
  const fields = objectIn(text);
  if (!fields) return { ok: false, why: 'no-data' };
  const { kind, unread: aside = [], ...data } = fields;
  const { version } = data;
  if (kind !== KIND || !Number.isInteger(version) || Number(version) < 1) return { ok: false, why: 'not-ours' };
  if (Number(version) > VERSION) return { ok: false, why: 'newer' };
  const { stored, leftOut } = readAll(data);
  const unread = Array.isArray(aside) ? aside.filter((one) => typeof one === 'string') : [];
  if (!Array.isArray(aside) || unread.length < aside.length) leftOut.push({ at: ['unread'], value: aside });
  if (leftOut.length && isEmpty(stored) && !unread.length) return { ok: false, why: 'nothing-fits' };
  return { ok: true, stored, leftOut, unread };
}

const isEmpty = ({ exercises, site, done, last, puzzles }: Stored): boolean =>
  [exercises, site, done, puzzles ?? []].every((part) => Object.keys(part).length === 0) && last === undefined;
