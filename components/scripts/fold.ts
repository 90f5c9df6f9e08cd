/**
 * Opens and closes what a button stands for; where there is room, the page shows it anyway and hides the button. At the
 * end of the fold another button closes it and leads on to what it was opened for.
 */
export function foldAway(page: ParentNode): void {
  const fold = page.querySelector<HTMLButtonElement>('button.fold');
  const open = (is: boolean) => fold?.setAttribute('aria-expanded', String(is));
  fold?.addEventListener('click', () => open(fold.getAttribute('aria-expanded') !== 'true'));
  page.querySelector('button[data-fold-on]')?.addEventListener('click', () => {
    open(false);
    page.querySelector<HTMLElement>('[data-says-count]')?.focus();
  });
}
