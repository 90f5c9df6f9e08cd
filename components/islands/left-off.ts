/** Where a player left off: noted by every lesson, shown on the first page. */
import { openStorage } from '../../src/storage/index.ts';

/** Notes the lesson that is read. */
export function noteLesson(id: string): void {
  openStorage().setLast(id);
}

/**
 * Shows a link to the lesson last read, where there is one that the course still has. The element that holds it brings
 * the titles by id and the pattern of a lesson's address.
 */
export function showWhereLeftOff(page: ParentNode): void {
  const place = page.querySelector<HTMLElement>('[data-left-off]');
  const link = place?.querySelector('a');
  const id = openStorage().last();
  if (!place || !link || id === undefined) return;
  const titles = JSON.parse(place.dataset.leftOff ?? '{}') as Record<string, string>;
  if (!Object.hasOwn(titles, id)) return;
  link.textContent = titles[id];
  link.href = (place.dataset.lessons ?? '').replace('*', id);
  place.hidden = false;
}
