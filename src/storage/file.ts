/** A player's data as a file: written by one browser, read by another or by the same one later. */
import { emptyStored, MOST_PUZZLES, readStored, VERSION } from './shape.ts';
import type { PuzzleRecord, Stored } from './shape.ts';

/** By what a file of ours is known. */
const KIND = 'barwright player data';

/** No file of ours is larger, in characters: ten thousand exercises fit ten times over. */
export const LARGEST_FILE = 5_000_000;

/** Why a file cannot be taken. */
export type FileFault = 'too-large' | 'no-data' | 'not-ours' | 'newer';

/** What a file holds; `whole` is false where something in it could not be used and was left out. */
export type FileReading = { ok: true; stored: Stored; whole: boolean } | { ok: false; why: FileFault };

/**
 * The file that holds everything kept.
 *
 * @example writeFile(emptyStored()) // '{ "kind": "barwright player data", "version": 1, … }'
 */
export function writeFile(stored: Stored): string {
  return `${JSON.stringify({ kind: KIND, ...stored }, null, 2)}\n`;
}

/**
 * Reads a file; never throws, whatever it holds.
 *
 * @example readFile('not a file of ours') // { ok: false, why: 'no-data' }
 */
export function readFile(text: string): FileReading {
  if (text.length > LARGEST_FILE) return { ok: false, why: 'too-large' };
  const fields = fieldsOf(text);
  if (!fields) return { ok: false, why: 'no-data' };
  const { kind, ...data } = fields;
  if (kind !== KIND || !Number.isInteger(data.version)) return { ok: false, why: 'not-ours' };
  if ((data.version as number) > VERSION) return { ok: false, why: 'newer' };
  return { ok: true, ...readStored(JSON.stringify(data)) };
}

function fieldsOf(text: string): Record<string, unknown> | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? { ...value } : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Two players' data as one: what stands in `added` goes before, what stands only in `own` stays, and a lesson is done
 * that is done in either.
 */
export function merged(own: Stored, added: Stored): Stored {
  const ids = Object.keys({ ...own.exercises, ...added.exercises });
  const puzzles = puzzlesOf(own, added);
  return {
    ...emptyStored(),
    ...own,
    ...added,
    exercises: Object.fromEntries(ids.map((id) => [id, { ...own.exercises[id], ...added.exercises[id] }])),
    site: { ...own.site, ...added.site },
    done: [...new Set([...own.done, ...added.done])],
    ...(puzzles.length ? { puzzles } : {}),
  };
}

/** Every puzzle once, as `added` has it where both do, in the order of their days. */
function puzzlesOf(own: Stored, added: Stored): PuzzleRecord[] {
  const all = [...(own.puzzles ?? []), ...(added.puzzles ?? [])];
  const byNumber = new Map(all.map((record) => [`${record.kind} ${record.seed}`, record]));
  return [...byNumber.values()].sort((a, b) => a.day.localeCompare(b.day)).slice(-MOST_PUZZLES);
}
