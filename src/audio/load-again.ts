const ADDRESS = /https?:\S+?\.js/;

/** Code that did not arrive: the connection may be gone, or the file. */
export class LoadError extends Error {}

/**
 * Loads a module, and where that fails once more under another address. A browser remembers that a module did not
 * arrive and refuses it for as long as the page is open (Chromium 153 does; the HTML standard allows it), so that
 * asking again for the same address would never help. Rejects with a `LoadError` where it does not arrive either way.
 *
 * @example
 * await loadAgain(() => import('./engine.ts'));
 */
export async function loadAgain<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (error) {
    return loadElsewhere<T>(error);
  }
}

async function loadElsewhere<T>(error: unknown): Promise<T> {
  const address = ADDRESS.exec(String(error))?.[0];
  try {
    if (!address) throw error;
    // The address is the one that failed: it cannot be written out here.
    // eslint-disable-next-line no-restricted-syntax
    return (await import(/* @vite-ignore */ `${address}?again=${Date.now()}`)) as T;
  } catch (cause) {
    throw new LoadError(`${address ?? 'a module'} did not load`, { cause });
  }
}
