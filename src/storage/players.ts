import { TEMPO_LIMITS } from '../core/time/units.ts';
import { between, type Checked, fitting, flag, oneOf, type Report, whole } from './fitting.ts';
import { type Fields, isFields, own, Shelf, type StorageOptions } from './shelf.ts';

/** Ends of what can be set, both included: beats a minute, milliseconds. */
export const LIMITS = {
  tempo: { from: TEMPO_LIMITS.min, to: TEMPO_LIMITS.max },
  flamMs: { from: 10, to: 80 },
} as const;

/** Of one exercise or bar. */
const MEMORY = {
  /** Beats a minute, as the page shows them. */
  tempo: whole(LIMITS.tempo),
  lead: oneOf('written', 'left', 'alternating'),
};

/** Of the whole site. */
const SITE = {
  /** Gap between a grace note and its primary, in milliseconds. */
  flamMs: whole(LIMITS.flamMs),
  /** `before` and `on` are written out as measured notes. */
  flams: oneOf('grace', 'before', 'on'),
  /** Long to short, 1 is even. */
  swing: between({ from: 1, to: 4 }),
  click: oneOf('off', 'beats', 'slots'),
  countIn: flag(),
  /** Bars of the check pattern before as many bars of the exercise; 0 for none. */
  check: oneOf(0, 1, 2, 4),
  loop: flag(),
  heard: oneOf('all', 'R', 'L'),
  /** Whether the heights of the strokes are drawn. */
  heights: flag(),
  /** Whether the count is shown large as it passes. */
  counts: flag(),
};

/** What is remembered of one exercise or bar. */
export type ExerciseMemory = Partial<Checked<typeof MEMORY>>;

/** How every bar of the site is played. */
export type SiteSettings = Checked<typeof SITE>;

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

/** What is remembered of one exercise. */
export const readMemory = (value: unknown, id: string, report: Report): ExerciseMemory =>
  fitting(value, MEMORY, ['exercises', id], report);

/** The settings of the site. */
export const readSite = (value: unknown, report: Report): Partial<SiteSettings> =>
  fitting(value, SITE, ['site'], report);

/** How a player plays; every call works where nothing can be kept, for as long as the page is open. */
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
  /** Calls back after every change, by this page or by another one of the same site; gives the way to stop it. */
  on(listener: () => void): () => void;
}

/**
 * Opens what is remembered of players; never throws, however the browser answers.
 *
 * @example
 * openPlayers({ area: undefined }).site().flamMs; // 30
 */
export function openPlayers(options?: StorageOptions): PlayerStore {
  const shelf = new Shelf(options);
  const field = (name: string): unknown => own(shelf.read(), name);
  const memories = (): Fields => {
    const kept = field('exercises');
    return isFields(kept) ? kept : {};
  };

  /** Reads a part of what is kept, and says whether all of it could be read. */
  function counted<T>(read: (report: () => void) => T): [T, unread: boolean] {
    let unread = false;
    const value = read(() => (unread = true));
    return [value, unread];
  }
  const memoryOf = (id: string) => counted((report) => readMemory(own(memories(), id), id, report));
  const siteNow = () => counted((report) => readSite(field('site'), report));
  /** Whether the list of exercises is something else altogether. */
  const noList = () => field('exercises') !== undefined && !isFields(field('exercises'));

  function putMemory(id: string, memory: ExerciseMemory | undefined, unread: boolean): void {
    const { [id]: _, ...others } = memories();
    shelf.write({ exercises: memory ? { ...others, [id]: memory } : others }, unread || noList());
  }

  return {
    get persistent() {
      return shelf.persistent;
    },
    exercise: (id) => memoryOf(id)[0],
    setExercise(id, change) {
      const [memory, unread] = memoryOf(id);
      putMemory(id, { ...memory, ...change }, unread);
    },
    resetExercise: (id) => putMemory(id, undefined, memoryOf(id)[1]),
    site: () => ({ ...DEFAULTS, ...siteNow()[0] }),
    setSite(change) {
      const [site, unread] = siteNow();
      shelf.write({ site: { ...site, ...change } }, unread);
    },
    resetPlayers() {
      const unread = Object.keys(memories()).some((id) => memoryOf(id)[1]);
      shelf.write({ exercises: {}, site: {} }, unread || noList() || siteNow()[1]);
    },
    on: (listener) => shelf.on(listener),
  };
}
