/** How far a player has come, on the pages that list the lessons; kept in step with what other tabs mark. */
import { openLessons } from '../../src/storage/index.ts';
import type { LessonStore } from '../../src/storage/index.ts';
import { doneOf, lessonsDone, PROGRESS_WORDS } from '../../src/words/lessons.ts';
import { whereToGoOn, type Onward } from '../../src/curriculum/onward.ts';

/** Shows the marks of a page and where to go on, now and after every change. */
export function showProgress(page: ParentNode, store: LessonStore = openLessons()): void {
  const show = () => {
    const done = store.done();
    showSummary(page, done, store.last());
    showRows(page, done, store.last());
  };
  store.on(show);
  show();
}

/** The element brings the titles of the lessons in order, and the pattern of their addresses. */
function showSummary(page: ParentNode, done: readonly string[], last: string | undefined): void {
  const place = page.querySelector<HTMLElement>('[data-progress]');
  if (!place) return;
  const titles = new Map(JSON.parse(place.dataset.progress ?? '[]') as [string, string][]);
  const lessons = [...titles.keys()];
  const count = lessons.filter((id) => done.includes(id)).length;
  tell(place.querySelector('[data-all-done]'), count > 0 && lessonsDone(count, lessons.length));
  const onward = whereToGoOn(lessons, done, last);
  const link = (when: string, is: boolean) =>
    showLink(place.querySelector(when), is ? onward : undefined, titles, place.dataset.lessons ?? '');
  link('[data-left]', onward?.next === false);
  link('[data-next]', onward?.next === true);
}

function showLink(
  place: HTMLElement | null,
  onward: Onward | undefined,
  titles: ReadonlyMap<string, string>,
  address: string,
): void {
  const link = place?.querySelector('a');
  if (!place || !link) return;
  place.hidden = !onward;
  if (!onward) return;
  link.textContent = titles.get(onward.id) ?? '';
  link.href = address.replace('*', onward.id);
}

function showRows(page: ParentNode, done: readonly string[], last: string | undefined): void {
  const rows = [...page.querySelectorAll<HTMLElement>('[data-lesson]')];
  const isDone = ({ dataset }: HTMLElement) => done.includes(dataset.lesson ?? '');
  const any = rows.some(isDone);
  for (const row of rows) {
    tell(row.querySelector('[data-done]'), isDone(row) && PROGRESS_WORDS.done);
    tell(row.querySelector('[data-here]'), row.dataset.lesson === last && PROGRESS_WORDS.here);
  }
  for (const part of page.querySelectorAll('[data-part]')) {
    const its = rows.filter((row) => part.contains(row));
    // Noughts down the page would greet a player who has just arrived.
    tell(part.querySelector('[data-part-done]'), any && doneOf(its.filter(isDone).length, its.length));
  }
}

function tell(place: HTMLElement | null, sentence: string | false): void {
  if (!place) return;
  place.hidden = !sentence;
  place.textContent = sentence || '';
}
