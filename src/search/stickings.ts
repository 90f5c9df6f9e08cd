import {
  cellsOf,
  findSticking,
  parseSticking,
  printSticking,
  slotCount,
  type MatchOptions,
  type Sticking,
} from '../core/index.ts';
import type { KINDS } from './filters.ts';

/** What can be found by its sticking: where it stands, what it is called, the texts of its bars. */
export interface StickingEntry {
  /** Below the base path. */
  url: string;
  title: string;
  kind: (typeof KINDS)[number] | 'cell';
  texts: string[];
}

/** The sticking that someone asks for; nothing where words are asked for, or a letter alone. */
export function askedSticking(words: string): Sticking | undefined {
  const read = parseSticking(words);
  return read.ok && slotCount(read.sticking.hands) > 1 ? read.sticking : undefined;
}

/** An entry that was found, and how. */
export interface StickingFound extends Omit<StickingEntry, 'texts'> {
  /** The text it was found in. */
  text: string;
  rotated: boolean;
  mirrored: boolean;
}

/** The index as it is stored: a line of fields for each entry, kinds as numbers. */
export type StickingIndex = {
  kinds: string[];
  entries: [kind: number, url: string, title: string, ...texts: string[]][];
};

/** Where the index stands below the base path. */
export const STICKING_INDEX = 'stickings.json';

/** Packs entries; each different text of an entry is kept once, and one group's repeats once. */
export function packStickings(entries: readonly StickingEntry[]): StickingIndex {
  const kinds = [...new Set(entries.map((e) => e.kind))];
  return { kinds, entries: entries.map((e) => [kinds.indexOf(e.kind), e.url, e.title, ...new Set(e.texts)]) };
}

/** The entries of a packed index. */
export const unpackStickings = ({ kinds, entries }: StickingIndex): StickingEntry[] =>
  entries.map(([kind, url, title, ...texts]) => ({ kind: kinds[kind] as StickingEntry['kind'], url, title, texts }));

/**
 * What contains a sticking: whole texts before longer ones, as written before turned round, before the other hand.
 * Entries whose texts do not parse are passed over; the content checker has told of them.
 */
export function searchStickings(
  entries: readonly StickingEntry[],
  sought: Sticking,
  options: MatchOptions,
): StickingFound[] {
  const length = printSticking(sought).length;
  return entries
    .flatMap((entry) => {
      const hits = entry.texts.flatMap((text) => hitsIn(text, sought, options));
      const best = hits.sort((a, b) => a.rank - b.rank)[0];
      return best ? [{ entry, ...best }] : [];
    })
    .sort((a, b) => a.rank - b.rank || Math.abs(a.text.length - length) - Math.abs(b.text.length - length))
    .map(({ entry: { url, title, kind }, text, rotated, mirrored }) => ({ url, title, kind, text, rotated, mirrored }));
}

interface Hit {
  text: string;
  rotated: boolean;
  mirrored: boolean;
  rank: number;
}

function hitsIn(text: string, sought: Sticking, options: MatchOptions): Hit[] {
  const read = parseSticking(text);
  if (!read.ok) return [];
  const match = findSticking(sought, read.sticking, options);
  if (!match) return [];
  const [cell] = cellsOf(read.sticking);
  const whole = findSticking(cell, sought) !== undefined && findSticking(sought, cell) !== undefined;
  const rank = (match.mirrored ? 4 : 0) + (match.rotation > 0 ? 2 : 0) + (whole ? 0 : 1);
  return [{ text, rotated: match.rotation > 0, mirrored: match.mirrored, rank }];
}

/** Loads the index from below a base path; undefined where there is none. */
export async function loadStickings(base: string, get: typeof fetch = fetch): Promise<StickingEntry[] | undefined> {
  try {
    const answer = await get(`${base.replace(/\/$/, '')}/${STICKING_INDEX}`);
    return answer.ok ? unpackStickings((await answer.json()) as StickingIndex) : undefined;
  } catch {
    return undefined;
  }
}
