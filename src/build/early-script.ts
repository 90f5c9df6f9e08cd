/**
 * Runs in the browser, in the head of every page, before anything of it is there: it has to stay small.
 *
 * A part of a page whose script has yet to run has the attribute `data-waits`. What someone does there meanwhile (the
 * press of a button, an answer, a choice) is caught, and repeated once the part says `awake`, an event that bubbles. A
 * part with `data-waits="keys"` listens for keys on the whole page: it gets the last one pressed.
 */

/** How to repeat what was done, by the element it was done to. */
const acts = new Map<Element, () => void>();
let lastKey: KeyboardEvent | undefined;
/** Where a script did not arrive nothing will be repeated, and the browser does what it does by itself. */
let failed = false;

const listen = (type: string, heard: (event: Event, target: HTMLInputElement) => void) =>
  addEventListener(type, (event) => heard(event, event.target as HTMLInputElement), true);
const waits = (target: Element) => !failed && target.closest('[data-waits]');

listen('keydown', (event) => (lastKey = event as KeyboardEvent));

listen('click', (event, target) => {
  const button = target.closest('button');
  if (!button || !waits(target)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  acts.set(button, () => button.click());
});

listen('input', (_, field) => {
  const { value, checked } = field;
  // A part may set its fields when it wakes.
  if (waits(field))
    acts.set(field, () => {
      Object.assign(field, { value, checked });
      for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, { bubbles: true }));
    });
});

listen('error', (_, target) => (failed ||= target.localName === 'script'));

listen('awake', (_, part) => {
  const keys = part.dataset.waits;
  delete part.dataset.waits;
  acts.forEach((repeat, element) => part.contains(element) && acts.delete(element) && repeat());
  if (keys && lastKey) lastKey.target!.dispatchEvent(new KeyboardEvent('keydown', lastKey));
});

export {};
