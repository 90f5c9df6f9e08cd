import { type Checked, fitting, fitWhole, flag, matching, type Report, whole } from './fitting.ts';
import { own, Shelf, type StorageOptions } from './shelf.ts';

const PUZZLE = {
  kind: matching(/^[a-z0-9-]{1,200}$/, 'fill'),
  /** The number in its address. */
  seed: whole({ from: 1, to: 999_999_999 }),
  /** The day by the player's own clock, `2026-11-25`. */
  day: matching(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, '2026-11-25'),
  right: flag(),
  /** Wrong answers given before that. */
  misses: whole({ from: 0, to: 1_000_000 }),
  hints: whole({ from: 0, to: 1_000_000 }),
};

/** How one puzzle went, the last time it was answered. */
export type PuzzleRecord = Checked<typeof PUZZLE>;

/** How many puzzles are remembered; the oldest go first. */
export const MOST_PUZZLES = 500;

/** Puzzles of which everything is known, each once, the latest at the end. */
export function readPuzzles(value: unknown, report: Report): PuzzleRecord[] {
  if (value !== undefined && !Array.isArray(value)) report(['puzzles'], value);
  const all: unknown[] = Array.isArray(value) ? value : [];
  const latest = new Map<string, PuzzleRecord>();
  all.forEach((one, index) => {
    const at = ['puzzles', String(index)];
    fitting(one, PUZZLE, at, report);
    const record = fitWhole(one, PUZZLE);
    if (!record || latest.has(nameOf(record))) report(at, one);
    if (record) latest.set(nameOf(record), record);
  });
  return [...latest.values()].slice(-MOST_PUZZLES);
}

const nameOf = ({ kind, seed }: PuzzleRecord): string => `${kind} ${seed}`;

/** How puzzles went; every call works where nothing can be kept, for as long as the page is open. */
export interface PuzzleStore {
  /** False once the browser has refused to keep something. */
  readonly persistent: boolean;
  /** The latest at the end. */
  puzzles(): readonly PuzzleRecord[];
  /** Remembers how a puzzle went, in place of what is remembered of the same one. */
  notePuzzle(record: PuzzleRecord): void;
  /** Calls back after every change, by this page or by another one; gives the way to stop it. */
  on(listener: () => void): () => void;
}

/**
 * Opens how puzzles went; never throws, however the browser answers.
 *
 * @example openPuzzles({ area: undefined }).puzzles() // []
 */
export function openPuzzles(options?: StorageOptions): PuzzleStore {
  const shelf = new Shelf(options);
  const read = (report: () => void) => readPuzzles(own(shelf.read(), 'puzzles'), report);
  return {
    get persistent() {
      return shelf.persistent;
    },
    puzzles: () => read(() => {}),
    notePuzzle(record) {
      let unread = false;
      const kept = read(() => (unread = true));
      const others = kept.filter((one) => nameOf(one) !== nameOf(record));
      shelf.write({ puzzles: [...others, record].slice(-MOST_PUZZLES) }, unread);
    },
    on: (listener) => shelf.on(listener),
  };
}
