/**
 * What a player's browser keeps: its shape, its versions and the way from one to the next, all in this file.
 *
 * Life of the data: read once a page, written whole after every change, never sent anywhere. Everything hangs on
 * permanent ids (of exercises, of lessons), never on a page's address, so that a course may be reordered.
 *
 * A change of shape raises `VERSION` and adds a step to `MIGRATIONS`; steps are never edited once released.
 */
import type { Lead } from '../core/phrase/types.ts';

/** The shape written by this file. */
export const VERSION = 1;

/** What is remembered of one exercise or bar. */
export interface ExerciseMemory {
  /** Beats a minute, as the page shows them. */
  tempo?: number;
  lead?: Lead;
}

/** How every bar of the site is played. */
export interface SiteSettings {
  /** Gap between a grace note and its primary, in milliseconds. */
  flamMs: number;
  /** `before` and `on` are written out as measured notes. */
  flams: 'grace' | 'before' | 'on';
  /** Long to short, 1 is even. */
  swing: number;
  click: 'off' | 'beats' | 'slots';
  countIn: boolean;
  /** Bars of the check pattern before as many bars of the exercise; 0 for none. */
  check: 0 | 1 | 2 | 4;
  loop: boolean;
  heard: 'all' | 'R' | 'L';
  /** Whether the heights of the strokes are drawn. */
  heights: boolean;
  /** Whether the count is shown large as it passes. */
  counts: boolean;
}

/** How one puzzle went, the last time it was answered. */
export interface PuzzleRecord {
  kind: string;
  /** The number in its address. */
  seed: number;
  /** The day by the player's own clock, `2026-11-25`. */
  day: string;
  right: boolean;
  /** Wrong answers given before that. */
  misses: number;
  hints: number;
}

/** How many puzzles are remembered; the oldest go first. */
export const MOST_PUZZLES = 500;

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

/** Where a player has chosen nothing. Flam width: ours; no published figure was found (15 to 40 ms is usual). */
export const DEFAULTS: Readonly<SiteSettings> = {
  flamMs: 30,
  flams: 'grace',
  swing: 1,
  click: 'beats',
  countIn: true,
  check: 0,
  loop: true,
  heard: 'all',
  heights: false,
  counts: true,
};

/** Nothing kept yet. */
export function emptyStored(): Stored {
  return { version: VERSION, exercises: {}, site: {}, done: [] };
}

/** What was read, in the present shape; `whole` is false where something of it could not be used. */
export interface Reading {
  stored: Stored;
  whole: boolean;
}

type Fields = Record<string, unknown>;
type Check = (value: unknown) => boolean;
type Migration = (old: Fields) => Fields;

/** From version n to n + 1, under n. The first version has no predecessor. */
const MIGRATIONS: Record<number, Migration> = {};

const among =
  (...values: unknown[]): Check =>
  (value) =>
    values.includes(value);
const within =
  (low: number, high: number): Check =>
  (value) =>
    typeof value === 'number' && value >= low && value <= high;
const isText: Check = (value) => typeof value === 'string' && value !== '';
const isFlag: Check = (value) => typeof value === 'boolean';
const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const EXERCISE_CHECKS: Record<string, Check> = {
  tempo: within(30, 300),
  lead: among('written', 'left', 'alternating'),
};

const SITE_CHECKS: Record<string, Check> = {
  flamMs: within(10, 80),
  flams: among('grace', 'before', 'on'),
  swing: within(1, 4),
  click: among('off', 'beats', 'slots'),
  countIn: isFlag,
  check: among(0, 1, 2, 4),
  loop: isFlag,
  heard: among('all', 'R', 'L'),
  heights: isFlag,
  counts: isFlag,
};

const PUZZLE_FIELDS: readonly [string, Check][] = [
  ['kind', isText],
  ['seed', within(1, 999_999_999)],
  ['day', (value) => typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value)],
  ['right', isFlag],
  ['misses', within(0, 1_000_000)],
  ['hints', within(0, 1_000_000)],
];

/**
 * Reads a stored text of any version; what cannot be used is left out and reported, never thrown.
 *
 * @example
 * readStored('{"version":1,"exercises":{},"site":{"swing":2},"done":[]}').stored.site.swing; // 2
 */
export function readStored(text: string): Reading {
  const value = migrate(parseFields(text));
  if (!value) return { stored: emptyStored(), whole: false };
  const report = { whole: true };
  const stored: Stored = {
    version: VERSION,
    exercises: readExercises(value.exercises, report),
    site: keep(value.site, SITE_CHECKS, report),
    done: readDone(value.done, report),
  };
  if (isText(value.last)) stored.last = value.last as string;
  else if (value.last !== undefined) report.whole = false;
  const puzzles = readPuzzles(value.puzzles, report);
  if (puzzles.length) stored.puzzles = puzzles;
  return { stored, whole: report.whole };
}

function parseFields(text: string): Fields | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return isFields(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function migrate(value: Fields | undefined): Fields | undefined {
  let current = value;
  while (current && current.version !== VERSION) {
    const step = MIGRATIONS[Number(current.version)];
    current = step?.(current);
  }
  return current;
}

function readExercises(value: unknown, report: { whole: boolean }): Record<string, ExerciseMemory> {
  if (!isFields(value)) {
    report.whole = false;
    return {};
  }
  return Object.fromEntries(Object.entries(value).map(([id, memory]) => [id, keep(memory, EXERCISE_CHECKS, report)]));
}

function readDone(value: unknown, report: { whole: boolean }): string[] {
  const list = Array.isArray(value) ? value : [];
  const good = list.filter(isText) as string[];
  if (!Array.isArray(value) || good.length < list.length) report.whole = false;
  return [...new Set(good)];
}

function readPuzzles(value: unknown, report: { whole: boolean }): PuzzleRecord[] {
  if (value === undefined) return [];
  const list = Array.isArray(value) ? value : [];
  const good = list.filter((one) => isFields(one) && PUZZLE_FIELDS.every(([name, check]) => check(one[name])));
  if (!Array.isArray(value) || good.length < list.length) report.whole = false;
  return good.slice(-MOST_PUZZLES) as PuzzleRecord[];
}

function keep<T>(value: unknown, checks: Record<string, Check>, report: { whole: boolean }): T {
  const entries = isFields(value) ? Object.entries(value) : [];
  const good = entries.filter(([name, field]) => checks[name]?.(field));
  if (!isFields(value) || good.length < entries.length) report.whole = false;
  return Object.fromEntries(good) as T;
}
