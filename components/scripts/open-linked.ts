/** Unfolds what an address leads to, now and whenever the address changes; a link to where one is already unfolds it too. */
export function openLinked(page: Document, { location }: Pick<Window, 'location'>): void {
  const open = (hash: string) => {
    const asked = page.getElementById(decoded(hash.slice(1)));
    if (asked instanceof HTMLDetailsElement) asked.open = true;
  };
  page.addEventListener('click', ({ target }) => {
    const link = target instanceof Element ? target.closest<HTMLAnchorElement>('a[href^="#"]') : null;
    if (link) open(link.hash);
  });
  page.defaultView?.addEventListener('hashchange', () => open(location.hash));
  open(location.hash);
}

/** An address may hold anything. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
