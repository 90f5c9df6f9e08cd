import { asideTexts, browserArea, clearKeys, keyOf, type StorageArea } from './keys.ts';
import { emptyStored, readStored } from './shape.ts';
import type { Stored } from './shape.ts';

/** Everything a site keeps in a browser, as a whole: to be looked at, put back, or taken away. No call throws. */
export interface OwnData {
  /** False where the browser lets the site keep nothing. */
  readonly readable: boolean;
  /** A copy of what is kept. */
  read(): Stored;
  /** The texts that could not be read whole, kept aside by an earlier visit. */
  unread(): string[];
  /** Keeps this and nothing else; false where the browser refuses, and then what was kept is still there. */
  write(all: Stored): boolean;
  /** Takes everything out of the browser, the texts kept aside too; false where the browser refuses. */
  forget(): boolean;
}

/**
 * Opens everything that is kept; apart from the players' store, so that no player carries it.
 *
 * @example openOwnData({ area: undefined }).readable // false
 */
export function openOwnData(options: { area?: StorageArea | undefined; base?: string } = {}): OwnData {
  const area = 'area' in options ? options.area : browserArea();
  const key = keyOf(options.base);
  const attempt = <T>(otherwise: T, use: (area: StorageArea) => T): T => tried(area, otherwise, use);
  return {
    get readable() {
      return attempt(false, (one) => (one.getItem(key), true));
    },
    read: () => attempt(emptyStored(), (one) => readStored(one.getItem(key) ?? '').stored),
    unread: () => attempt([], (one) => asideTexts(one, key)),
    write: (all) => attempt(false, (one) => (one.setItem(key, JSON.stringify(all)), true)),
    forget: () => attempt(false, (one) => (clearKeys(one, key), true)),
  };
}

function tried<T>(area: StorageArea | undefined, otherwise: T, use: (area: StorageArea) => T): T {
  try {
    return area ? use(area) : otherwise;
  } catch {
    return otherwise;
  }
}
