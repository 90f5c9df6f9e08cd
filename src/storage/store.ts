import { browserArea, keyOf, putAside, type StorageArea } from './keys.ts';
import { DEFAULTS, emptyStored, MOST_PUZZLES, readStored } from './shape.ts';
import type { ExerciseMemory, PuzzleRecord, SiteSettings, Stored } from './shape.ts';

/** What a player's browser remembers; every call works where nothing can be kept, for as long as the page is open. */
export interface PlayerStore {
  /** False once the browser has refused to keep something: what follows lasts until the page is left. */
  readonly persistent: boolean;
  /** Tempo and lead chosen for an exercise or a bar; absent where none was. */
  exercise(id: string): ExerciseMemory;
  setExercise(id: string, change: ExerciseMemory): void;
  /** Forgets one exercise's tempo and lead. */
  resetExercise(id: string): void;
  site(): SiteSettings;
  setSite(change: Partial<SiteSettings>): void;
  /** Forgets every tempo, lead and setting; lessons stay done. */
  resetPlayers(): void;
  /** Ids of the lessons marked as done. */
  done(): readonly string[];
  setDone(id: string, done: boolean): void;
  /** Id of the lesson last read. */
  last(): string | undefined;
  setLast(id: string): void;
  /** How puzzles went, the latest at the end. */
  puzzles(): readonly PuzzleRecord[];
  /** Remembers how a puzzle went, in place of what is remembered of the same one. */
  notePuzzle(record: PuzzleRecord): void;
  /** Calls back after every change, by this page or by another one of the same site; gives the way to stop it. */
  on(listener: () => void): () => void;
}

/** What `openStorage` may be handed; the browser's own where left out. */
export interface StorageOptions {
  area?: StorageArea | undefined;
  /** Two sites may share an origin under different paths; their players' data stay apart. */
  base?: string;
  /** Where `storage` events of other pages arrive. */
  events?: Pick<Window, 'addEventListener' | 'removeEventListener'> | undefined;
}

/**
 * Opens the player's own data; never throws, however the browser answers.
 *
 * @example
 * openStorage({ area: undefined }).site().flamMs; // 30
 */
export function openStorage(options: StorageOptions = {}): PlayerStore {
  const area = 'area' in options ? options.area : browserArea();
  const key = keyOf(options.base);
  const events = options.events ?? (typeof window === 'undefined' ? undefined : window);
  return storeOver(new Shelf(area, key), key, events);
}

function storeOver(shelf: Shelf, key: string, events: StorageOptions['events']): PlayerStore {
  const listeners = new Set<() => void>();
  const tell = () => listeners.forEach((listener) => listener());
  const change = (edit: (stored: Stored) => void) => {
    shelf.write(edit);
    tell();
  };
  return {
    get persistent() {
      return shelf.persistent;
    },
    exercise: (id) => ({ ...shelf.read().exercises[id] }),
    setExercise: (id, memory) => change((all) => (all.exercises[id] = { ...all.exercises[id], ...memory })),
    resetExercise: (id) => change((all) => delete all.exercises[id]),
    site: () => ({ ...DEFAULTS, ...shelf.read().site }),
    setSite: (site) => change((all) => (all.site = { ...all.site, ...site })),
    resetPlayers: () => change((all) => Object.assign(all, { exercises: {}, site: {} })),
    done: () => shelf.read().done,
    setDone: (id, done) => change((all) => (all.done = withId(all.done, id, done))),
    last: () => shelf.read().last,
    setLast: (id) => change((all) => (all.last = id)),
    puzzles: () => shelf.read().puzzles ?? [],
    notePuzzle: (record) => change((all) => (all.puzzles = withRecord(all.puzzles ?? [], record))),
    on: (listener) => {
      // A null key means that everything was cleared.
      const hear = (event: StorageEvent) => {
        if (event.key === key || event.key === null) listener();
      };
      listeners.add(listener);
      events?.addEventListener('storage', hear);
      return () => {
        listeners.delete(listener);
        events?.removeEventListener('storage', hear);
      };
    },
  };
}

function withId(ids: string[], id: string, wanted: boolean): string[] {
  const others = ids.filter((other) => other !== id);
  return wanted ? [...others, id] : others;
}

function withRecord(records: PuzzleRecord[], record: PuzzleRecord): PuzzleRecord[] {
  const others = records.filter(({ kind, seed }) => kind !== record.kind || seed !== record.seed);
  return [...others, record].slice(-MOST_PUZZLES);
}

/** One key of a storage area, held in memory as well, so that a refusal loses nothing while the page is open. */
class Shelf {
  persistent: boolean;
  readonly #area: StorageArea | undefined;
  readonly #key: string;
  #text: string | null = null;
  #stored: Stored = emptyStored();

  constructor(area: StorageArea | undefined, key: string) {
    this.#area = area;
    this.#key = key;
    this.persistent = area !== undefined;
    this.read();
  }

  /** What is kept now; another page may have changed it since. */
  read(): Stored {
    if (this.persistent) this.#attempt((area) => this.#take(area.getItem(this.#key), area));
    return this.#stored;
  }

  /** Changes what is kept, on top of what other pages wrote. */
  write(edit: (stored: Stored) => void): void {
    const next = structuredClone(this.read());
    edit(next);
    this.#stored = next;
    if (this.persistent) this.#attempt((area) => this.#put(area, JSON.stringify(next)));
  }

  #take(text: string | null, area: StorageArea): void {
    if (text === this.#text) return;
    const reading = text === null ? { stored: emptyStored(), whole: true } : readStored(text);
    this.#stored = reading.stored;
    if (text !== null && !reading.whole) putAside(area, this.#key, text);
    this.#text = text;
  }

  #put(area: StorageArea, text: string): void {
    area.setItem(this.#key, text);
    this.#text = text;
  }

  /** A browser may refuse at any call: blocked, private, full. */
  #attempt(use: (area: StorageArea) => void): void {
    try {
      if (this.#area) use(this.#area);
    } catch {
      this.persistent = false;
    }
  }
}
