/**
 * Asks for something once a build and gives the same answer again; the dev server asks anew each time, since files change
 * under it. What is handed out is shared: nobody may change it.
 */
export function once<T>(ask: () => Promise<T>): () => Promise<T> {
  let answer: Promise<T> | undefined;
  return () => (import.meta.env.DEV ? ask() : (answer ??= ask()));
}
