const ADDRESS = /https?:\S+?\.js/;

/**
 * Loads a module, and where that fails once more under another address. A browser remembers that a module did not
 * arrive and refuses it for as long as the page is open (Chromium 153 does; the HTML standard allows it), so that
 * asking again for the same address would never help. Rejects where it does not arrive either way.
 *
 * @example
 * await loadAgain(() => import('./engine.ts'));
 */
export async function loadAgain<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (error) {
    const address = ADDRESS.exec(String(error))?.[0];
    if (!address) throw error;
    // The address is the one that failed: it cannot be written out here.
    // eslint-disable-next-line no-restricted-syntax
    return (await import(/* @vite-ignore */ `${address}?again=${Date.now()}`)) as T;
  }
}
