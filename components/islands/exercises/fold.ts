/** Opens and closes what a button stands for; where there is room, the page shows it anyway and hides the button. */
export function foldAway(page: ParentNode): void {
  for (const button of page.querySelectorAll<HTMLButtonElement>('button.fold'))
    button.addEventListener('click', () => {
      button.setAttribute('aria-expanded', String(button.getAttribute('aria-expanded') !== 'true'));
    });
}
