/**
 * Where a site's data stands in a browser: one key, whose text is a JSON object. Nothing that was stored is ever lost:
 * fields that a page does not write stay as they are, and a text that cannot be read is kept under a key of its own
 * before another one takes its place.
 */

/** The part of the browser's `Storage` that is used. */
export type StorageArea = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Where to keep things; the browser's own where left out. */
export interface StorageOptions {
  area?: StorageArea | undefined;
  /** Two sites may share an origin under different paths; their players' data stay apart. */
  base?: string;
  /** Where `storage` events of other pages arrive. */
  events?: Pick<Window, 'addEventListener' | 'removeEventListener'> | undefined;
}

/** A JSON object, of which only its own fields count. */
export type Fields = Record<string, unknown>;

/** The version of the shape written here. Raise it with a change of shape, and read the older one in `fieldsIn`. */
export const VERSION = 1;

/** Texts that cannot be read and are kept, at most. */
const MOST_UNREAD = 9;

/** An area of the browser's own; reading the property alone throws where the browser blocks it. */
export function browserArea(name: 'localStorage' | 'sessionStorage' = 'localStorage'): StorageArea | undefined {
  try {
    return globalThis[name];
  } catch {
    return undefined;
  }
}

/** Under which key a site keeps its players' data; the path is that of this site where none is given. */
export const keyOf = (base: string = import.meta.env?.BASE_URL ?? '/'): string => `barwright:${base}`;

/** Whether a value is a JSON object. */
export const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** One field of an object; undefined where it has none of that name of its own. */
export const own = (fields: Fields, name: string): unknown => (Object.hasOwn(fields, name) ? fields[name] : undefined);

/** The object in a JSON text; undefined for every other text. */
export function objectIn(text: string): Fields | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return isFields(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** The fields of a stored text; undefined where this version cannot read it. */
export function fieldsIn(text: string): Fields | undefined {
  const fields = objectIn(text);
  return fields && own(fields, 'version') === VERSION ? fields : undefined;
}

const isId = (value: unknown): value is string => typeof value === 'string' && /^[a-z0-9-]{1,200}$/.test(value);

/** A permanent id: of a lesson, an exercise or a bar; undefined for any other value. */
export const idIn = (value: unknown): string | undefined => (isId(value) ? value : undefined);

/** The ids in a list, each once; empty for a value that is no list. */
export const idsIn = (value: unknown): string[] => [...new Set(Array.isArray(value) ? value.filter(isId) : [])];

/** Under which keys texts stand that could not be read. */
const unreadKeys = (key: string): string[] =>
  Array.from({ length: MOST_UNREAD }, (_, index) => `${key}:aside:${index + 1}`);

/** Keeps a text that cannot be read. Throws where there is no room, so that nothing is overwritten. */
export function setAside(area: StorageArea, key: string, text: string): void {
  const keys = unreadKeys(key);
  if (keys.some((one) => area.getItem(one) === text)) return;
  const free = keys.find((one) => area.getItem(one) === null);
  if (!free) throw new RangeError(`${MOST_UNREAD} texts that could not be read are kept, and no more`);
  area.setItem(free, text);
}

/** The texts that could not be read. Throws where the browser refuses. */
export const textsAside = (area: StorageArea, key: string): string[] =>
  unreadKeys(key).flatMap((one) => area.getItem(one) ?? []);

/** Deletes one of the texts that could not be read, or all of them. Throws where the browser refuses. */
export function deleteAside(area: StorageArea, key: string, text?: string): void {
  for (const one of unreadKeys(key)) if (text === undefined || area.getItem(one) === text) area.removeItem(one);
}

/** What stands under one key, held in memory as well, so that a refusal loses nothing while the page is open. */
export class Shelf {
  /** False once the browser has refused to keep something: what follows lasts until the page is left. */
  persistent: boolean;
  readonly #area: StorageArea | undefined;
  readonly #key: string;
  readonly #events: StorageOptions['events'];
  readonly #listeners = new Set<() => void>();
  #text: string | null = null;
  #fields: Fields | undefined = {};

  constructor(options: StorageOptions = {}) {
    this.#area = 'area' in options ? options.area : browserArea();
    this.#key = keyOf(options.base);
    this.#events = options.events ?? (typeof window === 'undefined' ? undefined : window);
    this.persistent = this.#area !== undefined;
    this.read();
  }

  /** What is kept now; another page may have changed it since. */
  read(): Fields {
    if (this.persistent) this.#attempt((area) => this.#take(area.getItem(this.#key)));
    return this.#fields ?? {};
  }

  /**
   * Puts fields in the place of those of the same names, on top of what other pages wrote. `unread` says that something
   * in the old ones could not be read: then the whole text is kept aside first.
   */
  write(fields: Fields, unread = false): void {
    const before = this.read();
    const aside = (unread || this.#fields === undefined) && this.#text;
    this.#fields = { version: VERSION, ...before, ...fields };
    const text = JSON.stringify(this.#fields);
    if (this.persistent)
      this.#attempt((area) => {
        if (aside) setAside(area, this.#key, aside);
        area.setItem(this.#key, text);
        this.#text = text;
      });
    this.#listeners.forEach((listener) => listener());
  }

  /** Calls back after every change, by this page or by another one of the same site; gives the way to stop it. */
  on(listener: () => void): () => void {
    // A null key means that everything was cleared.
    const hear = (event: StorageEvent) => {
      if (event.key === this.#key || event.key === null) listener();
    };
    this.#listeners.add(listener);
    this.#events?.addEventListener('storage', hear);
    return () => {
      this.#listeners.delete(listener);
      this.#events?.removeEventListener('storage', hear);
    };
  }

  #take(text: string | null): void {
    if (text === this.#text) return;
    this.#fields = text === null ? {} : fieldsIn(text);
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
