/** The player's own mark on a lesson: done, or not yet. */
import { openLessons } from '../../src/storage/index.ts';
import type { LessonStore } from '../../src/storage/index.ts';

/** Notes that a lesson is read, and wires the mark at its foot. */
export function keepLesson(page: ParentNode, id: string, store: LessonStore = openLessons()): void {
  store.setLast(id);
  offerMark(page, store);
}

/** A press sets the mark, another one takes it back. The element that holds the button brings id and sentences. */
function offerMark(page: ParentNode, store: LessonStore): void {
  const place = page.querySelector<HTMLElement>('[data-mark]');
  const button = place?.querySelector('button');
  const note = place?.querySelector('[role=status]');
  if (!place || !button || !note) return;
  const { mark = '', kept = '', notKept = '', taken = '' } = place.dataset;
  const isDone = () => store.done().includes(mark);
  const show = () => button.setAttribute('aria-pressed', String(isDone()));
  button.addEventListener('click', () => {
    store.setDone(mark, !isDone());
    note.textContent = !isDone() ? taken : store.persistent ? kept : notKept;
  });
  store.on(show);
  show();
  place.dispatchEvent(new Event('awake', { bubbles: true }));
}
