/** Everything that a player's browser keeps, read at once: for the page that shows it, and for files. */
import type { LeftOut, Report } from './fitting.ts';
import { type ExerciseMemory, readMemory, readSite, type SiteSettings } from './players.ts';
import { type PuzzleRecord, readPuzzles } from './puzzles.ts';
import { type Fields, idIn, idsIn, isFields, own, VERSION } from './shelf.ts';

/** Everything kept, in the present version. */
export interface Stored {
  version: typeof VERSION;
  exercises: Record<string, ExerciseMemory>;
  site: Partial<SiteSettings>;
  /** Ids of the lessons marked as done. */
  done: string[];
  /** Id of the lesson last read. */
  last?: string;
  /** Puzzles in the order they were answered; absent before the first. */
  puzzles?: PuzzleRecord[];
}

/** Nothing kept yet. */
export function emptyStored(): Stored {
  return { version: VERSION, exercises: {}, site: {}, done: [] };
}

function readExercises(value: unknown, report: Report): Record<string, ExerciseMemory> {
  if (value !== undefined && !isFields(value)) report(['exercises'], value);
  const known = Object.entries(isFields(value) ? value : {}).filter(([id, memory]) => {
    if (!idIn(id)) report(['exercises', id], memory);
    return idIn(id);
  });
  return Object.fromEntries(known.map(([id, memory]) => [id, readMemory(memory, id, report)]));
}

function readIds(value: unknown, report: Report): string[] {
  listIn(value, 'done', report).forEach((id, index) => idIn(id) ?? report(['done', String(index)], id));
  return idsIn(value);
}

function listIn(value: unknown, name: string, report: Report): unknown[] {
  if (value !== undefined && !Array.isArray(value)) report([name], value);
  return Array.isArray(value) ? value : [];
}

/** What was read, in the present shape, and what of it could not be used. */
export interface Reading {
  stored: Stored;
  leftOut: LeftOut[];
}

const NAMES = ['version', 'exercises', 'site', 'done', 'last', 'puzzles'];

/**
 * Reads everything kept; what cannot be used is left out and reported, never thrown.
 *
 * @example
 * readAll({ version: 1, site: { swing: 2, click: 'loud' } }).stored.site; // { swing: 2 }
 */
export function readAll(fields: Fields): Reading {
  const leftOut: LeftOut[] = [];
  const report: Report = (at, value, may) => leftOut.push({ at, value, ...(may ? { may } : {}) });
  const stored: Stored = {
    version: VERSION,
    exercises: readExercises(own(fields, 'exercises'), report),
    site: readSite(own(fields, 'site'), report),
    done: readIds(own(fields, 'done'), report),
  };
  const last = own(fields, 'last');
  if (idIn(last)) stored.last = idIn(last)!;
  else if (last !== undefined) report(['last'], last);
  const puzzles = readPuzzles(own(fields, 'puzzles'), report);
  if (puzzles.length) stored.puzzles = puzzles;
  for (const [name, value] of Object.entries(fields)) if (!NAMES.includes(name)) report([name], value);
  return { stored, leftOut };
}
