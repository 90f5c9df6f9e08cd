import type { LeftOut } from './fitting.ts';
import { emptyStored, readAll, type Stored } from './kept.ts';
import {
  browserArea,
  deleteAside,
  fieldsIn,
  keyOf,
  setAside,
  Shelf,
  type StorageArea,
  type StorageOptions,
  textsAside,
} from './shelf.ts';

/** Everything kept, as it stands now. */
export interface Kept {
  stored: Stored;
  /** What stands among it and cannot be used. */
  leftOut: LeftOut[];
  /** The texts that cannot be read whole, word for word; the one that stands in the present place is the last. */
  unread: string[];
}

/** Everything a site keeps in a browser, as a whole: to be looked at, replaced or deleted. No call throws. */
export interface OwnData {
  /** False where the browser lets the site keep nothing. */
  readonly readable: boolean;
  read(): Kept;
  /**
   * Keeps this, with further texts that could not be read; one that stands there and cannot be read is set aside. False
   * where the browser refuses, and then everything is as it was.
   */
  write(stored: Stored, unread?: readonly string[]): boolean;
  /** Deletes texts that could not be read, all where none is named; false where the browser refuses. */
  deleteUnread(texts?: readonly string[]): boolean;
  /** Deletes everything, the texts that could not be read too; false where the browser refuses. */
  deleteAll(): boolean;
  /** Calls back when another page changes something; gives the way to stop it. */
  on(listener: () => void): () => void;
}

/**
 * Opens everything that is kept; apart from what players read, so that none of them carries it.
 *
 * @example openOwnData({ area: undefined }).readable // false
 */
export function openOwnData(options: StorageOptions = {}): OwnData {
  const area = 'area' in options ? options.area : browserArea();
  const key = keyOf(options.base);
  const attempt = <T>(otherwise: T, use: (area: StorageArea) => T): T => {
    try {
      return area ? use(area) : otherwise;
    } catch {
      return otherwise;
    }
  };
  return {
    get readable() {
      return attempt(false, (one) => (one.getItem(key), true));
    },
    read: () => attempt({ stored: emptyStored(), leftOut: [], unread: [] }, (one) => readKept(one, key)),
    write: (stored, unread = []) => attempt(false, (one) => (replace(one, key, stored, unread), true)),
    deleteUnread: (texts) =>
      attempt(false, (one) => {
        const { stored, unread } = readKept(one, key);
        const present = one.getItem(key);
        const gone = texts ?? unread;
        if (present !== null && gone.includes(present)) one.setItem(key, JSON.stringify(stored));
        gone.forEach((text) => deleteAside(one, key, text));
        return true;
      }),
    deleteAll: () => attempt(false, (one) => (one.removeItem(key), deleteAside(one, key), true)),
    on: (listener) => new Shelf(options).on(listener),
  };
}

function readKept(area: StorageArea, key: string): Kept {
  const text = area.getItem(key);
  const fields = text === null ? {} : fieldsIn(text);
  const { stored, leftOut } = readAll(fields ?? {});
  const aside = textsAside(area, key).filter((one) => one !== text);
  const isWhole = text === null || (fields !== undefined && leftOut.length === 0);
  return { stored, leftOut, unread: isWhole ? aside : [...aside, text] };
}

function replace(area: StorageArea, key: string, stored: Stored, added: readonly string[]): void {
  const before = textsAside(area, key);
  const unread = [...new Set([...readKept(area, key).unread, ...added])].filter((text) => !before.includes(text));
  try {
    unread.forEach((text) => setAside(area, key, text));
    area.setItem(key, JSON.stringify(stored));
  } catch (refusal) {
    unread.forEach((text) => deleteAside(area, key, text));
    throw refusal;
  }
}
