/** The part of the browser's `Storage` that is used. */
export type StorageArea = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** An area of the browser's own; reading the property alone throws where the browser blocks it. */
export function browserArea(name: 'localStorage' | 'sessionStorage' = 'localStorage'): StorageArea | undefined {
  try {
    return globalThis[name];
  } catch {
    return undefined;
  }
}

/** Copies of unreadable data that are kept, at most. */
const ASIDES = 9;

/**
 * Under which key a site keeps its players' data; two sites may share a host under different paths. The path is that of
 * this site where none is given.
 */
export const keyOf = (base: string = import.meta.env?.BASE_URL ?? '/'): string => `barwright:${base}`;

/** The keys under which texts stand that could not be read whole. */
const asidesOf = (key: string): string[] => Array.from({ length: ASIDES }, (_, index) => `${key}:aside:${index + 1}`);

/**
 * Keeps a text that could not be read whole under a key of its own. Throws where there is no room, so that nothing is
 * overwritten.
 */
export function putAside(area: StorageArea, key: string, text: string): void {
  const names = asidesOf(key);
  if (names.some((name) => area.getItem(name) === text)) return;
  const free = names.find((name) => area.getItem(name) === null);
  if (!free) throw new RangeError(`Nowhere to keep unreadable data aside: ${ASIDES} copies are kept, and no more`);
  area.setItem(free, text);
}

/** Takes everything of a site out of the browser, unreadable copies too. Throws where the browser refuses. */
export function clearKeys(area: StorageArea, key: string): void {
  for (const name of [key, ...asidesOf(key)]) area.removeItem(name);
}

/** The texts that could not be read whole and are kept aside. Throws where the browser refuses. */
export function asideTexts(area: StorageArea, key: string): string[] {
  return asidesOf(key).flatMap((name) => area.getItem(name) ?? []);
}
