/** Everything that has a use of its own for the arrow keys. */
const USES_ARROWS =
  'input, select, textarea, button, summary, audio, video, [contenteditable], [role=slider], [role=radiogroup], astro-island';

/** Lets the arrow keys turn to the page before and after, as a pedal on a music stand does. */
export function turnByArrowKeys(page: Document): void {
  page.addEventListener('keydown', (event) => {
    const rel = { ArrowLeft: 'prev', ArrowRight: 'next' }[event.key];
    if (!rel || isTaken(event)) return;
    page.querySelector<HTMLAnchorElement>(`[data-turn] [rel=${rel}]`)?.click();
  });
  page.querySelector('[data-turn]')?.dispatchEvent(new Event('awake', { bubbles: true }));
}

function isTaken(event: KeyboardEvent): boolean {
  const held = event.altKey || event.ctrlKey || event.metaKey || event.shiftKey;
  const target = event.target instanceof Element && event.target.closest(USES_ARROWS);
  return event.defaultPrevented || held || Boolean(target);
}
