/** Two players' data as one, what that changed, and how it is undone without undoing anything else. */
import { emptyStored, type Stored } from './kept.ts';
import type { ExerciseMemory } from './players.ts';
import { MOST_PUZZLES, type PuzzleRecord } from './puzzles.ts';

/** One thing that changed, by the names that lead to it; undefined where it was not, or is not, there. */
export interface Change {
  at: string[];
  before: unknown;
  after: unknown;
}

/**
 * What stands in `added` goes before, what stands only in `own` stays, and a lesson is done that is done in either.
 */
export function merged(own: Stored, added: Stored): Stored {
  return fromEntries(new Map([...entriesOf(own), ...entriesOf(added)]));
}

/** What is different in `after`. */
export function changesBetween(before: Stored, after: Stored): Change[] {
  const [old, now] = [entriesOf(before), entriesOf(after)];
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((key) => {
    const change = { at: JSON.parse(key) as string[], before: old.get(key), after: now.get(key) };
    return same(change.before, change.after) ? [] : [change];
  });
}

/**
 * Takes changes back where nothing has changed since; what has is left as it is and given in `left`.
 */
export function undone(now: Stored, changes: readonly Change[]): { stored: Stored; left: Change[] } {
  const entries = entriesOf(now);
  const left = changes.filter(({ at, after }) => !same(entries.get(keyOf(at)), after));
  for (const change of changes) {
    if (left.includes(change)) continue;
    if (change.before === undefined) entries.delete(keyOf(change.at));
    else entries.set(keyOf(change.at), change.before);
  }
  return { stored: fromEntries(entries), left };
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
const keyOf = (at: readonly string[]): string => JSON.stringify(at);

/** Every single thing that is kept, under the names that lead to it as JSON. */
function entriesOf({ exercises, site, done, last, puzzles = [] }: Stored): Map<string, unknown> {
  const entries = new Map<string, unknown>();
  const put = (value: unknown, ...at: string[]) => entries.set(keyOf(at), value);
  for (const [id, memory] of Object.entries(exercises))
    for (const [name, value] of Object.entries(memory)) put(value, 'exercises', id, name);
  for (const [name, value] of Object.entries(site)) put(value, 'site', name);
  for (const id of done) put(true, 'done', id);
  if (last !== undefined) put(last, 'last');
  for (const one of puzzles) put(one, 'puzzles', one.kind, String(one.seed));
  return entries;
}

function fromEntries(entries: ReadonlyMap<string, unknown>): Stored {
  const exercises = new Map<string, ExerciseMemory>();
  const puzzles: PuzzleRecord[] = [];
  const stored = emptyStored();
  for (const [key, value] of entries) {
    const [part, id, name] = JSON.parse(key) as string[];
    if (part === 'exercises') exercises.set(id, { ...exercises.get(id), [name]: value });
    if (part === 'site') stored.site = { ...stored.site, [id]: value };
    if (part === 'done') stored.done.push(id);
    if (part === 'last') stored.last = value as string;
    if (part === 'puzzles') puzzles.push(value as PuzzleRecord);
  }
  puzzles.sort((one, other) => one.day.localeCompare(other.day));
  return {
    ...stored,
    exercises: Object.fromEntries(exercises),
    ...(puzzles.length ? { puzzles: puzzles.slice(-MOST_PUZZLES) } : {}),
  };
}
