/**
 * What an exercise in a frame tells the page around it: `{ barwright: 'height', id, height }` in CSS pixels, whenever the
 * height changes and when it is asked with `{ barwright: 'ask' }`. A height is no secret, so it is told to any page.
 */

/** Tells the page around this one how high it is, from now on; a page that stands alone tells nobody. */
export function tellHeight(page: Document, id: string): void {
  if (parent === window) return;
  const root = page.documentElement;
  const tell = () => {
    const height = Math.ceil(root.getBoundingClientRect().height);
    parent.postMessage({ barwright: 'height', id, height }, '*');
  };
  new ResizeObserver(tell).observe(root);
  addEventListener('message', ({ data }) => {
    if ((data as { barwright?: unknown } | null)?.barwright === 'ask') tell();
  });
}
