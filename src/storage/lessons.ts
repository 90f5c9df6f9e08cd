/** Which lessons a player has read and marked; apart from the rest, so that a lesson's own script stays small. */
import { idIn, idsIn, own, Shelf, type StorageOptions } from './shelf.ts';

/** The player's own marks on lessons; every call works where nothing can be kept, for as long as the page is open. */
export interface LessonStore {
  /** False once the browser has refused to keep something. */
  readonly persistent: boolean;
  /** Ids of the lessons marked as done, in the order they were marked. */
  done(): readonly string[];
  setDone(id: string, done: boolean): void;
  /** Id of the lesson last read. */
  last(): string | undefined;
  setLast(id: string): void;
  /** Calls back after every change, by this page or by another one; gives the way to stop it. */
  on(listener: () => void): () => void;
}

/**
 * Opens the marks on lessons; never throws, however the browser answers.
 *
 * @example openLessons({ area: undefined }).done() // []
 */
export function openLessons(options?: StorageOptions): LessonStore {
  const shelf = new Shelf(options);
  const read = (name: string) => own(shelf.read(), name);
  const done = () => idsIn(read('done'));
  const last = () => idIn(read('last'));
  return {
    get persistent() {
      return shelf.persistent;
    },
    done,
    setDone(id, wanted) {
      const [before, ids] = [read('done'), done()];
      const others = ids.filter((other) => other !== id);
      const isWhole = before === undefined || (Array.isArray(before) && before.length === ids.length);
      shelf.write({ done: wanted ? [...others, id] : others }, !isWhole);
    },
    last,
    setLast: (id) => shelf.write({ last: id }, read('last') !== last()),
    on: (listener) => shelf.on(listener),
  };
}
