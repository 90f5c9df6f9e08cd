/**
 * What is kept for one visit alone: the exercises ticked for a sheet. It is gone when the tab is closed, and works for as
 * long as the page is open where the browser keeps nothing.
 */
import { browserArea, idsIn, keyOf, type StorageOptions } from './shelf.ts';

/** The exercises ticked in this visit. */
export interface Visit {
  /** Ids, in the order in which they were ticked. */
  ticked(): readonly string[];
  tick(id: string, on: boolean): void;
  untickAll(): void;
}

/**
 * Opens what is kept for this visit; never throws, however the browser answers.
 *
 * @example openVisit({ area: undefined }).ticked() // []
 */
export function openVisit(options: StorageOptions = {}): Visit {
  const area = 'area' in options ? options.area : browserArea('sessionStorage');
  const key = `${keyOf(options.base)}:ticked`;
  let ids = idsIn(attempt(() => JSON.parse(area?.getItem(key) ?? '[]') as unknown));
  const write = (next: string[]) => {
    ids = next;
    attempt(() => area?.setItem(key, JSON.stringify(next)));
  };
  return {
    ticked: () => ids,
    tick: (id, on) => write([...ids.filter((other) => other !== id), ...(on ? [id] : [])]),
    untickAll: () => write([]),
  };
}

/** A browser may refuse at any call, and anyone may have written anything. */
function attempt<T>(use: () => T): T | undefined {
  try {
    return use();
  } catch {
    return undefined;
  }
}
