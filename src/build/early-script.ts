/**
 * Runs in the browser, in the head of every page, before anything of it is there: it has to stay small.
 *
 * A part of a page whose script has yet to run has the attribute `data-waits`. What someone does there meanwhile (a
 * press of a button, an answer sent, a choice) is caught, and repeated once the part says `awake`, an event that
 * bubbles. A part with `data-waits="keys"` listens for keys on the whole page: it gets the last one pressed.
 */
type Field = HTMLInputElement;

const LISTENED = ['keydown', 'click', 'submit', 'input', 'change'];

/** What is to be repeated, by the element it was done to; the later act stands behind the earlier one. */
const acts = new Map<EventTarget, { part: Element; repeat: () => void }>();
let lastKey: KeyboardEvent | undefined;

const listen = (change: 'addEventListener' | 'removeEventListener') =>
  LISTENED.forEach((type) => window[change](type, onAct, { capture: true }));

function onAct(event: Event): void {
  if (event.type === 'keydown') lastKey = event as KeyboardEvent;
  else if (event.target instanceof Element) catchAct(event, event.target);
}

function catchAct(event: Event, target: Element): void {
  const part = target.closest('[data-waits]');
  if (!part) return;
  const keep = (element: Element, repeat: () => void) => {
    acts.delete(element);
    acts.set(element, { part, repeat });
  };
  const button = target.closest('button');
  if (event.type === 'click' && !button) return;
  if (event.type === 'input' || event.type === 'change') return keep(target, entry(target as Field));
  // What the browser would do by itself, such as loading the page anew, would lose what was done.
  event.preventDefault();
  event.stopImmediatePropagation();
  part.setAttribute('aria-busy', 'true');
  if (button) keep(button, () => button.click());
  else keep(target, () => (target as HTMLFormElement).requestSubmit());
}

/** Enters again what stands in a field now: the part may set its fields when it wakes. */
function entry(field: Field): () => void {
  const { value, checked } = field;
  return () => {
    Object.assign(field, { value, checked });
    for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, { bubbles: true }));
  };
}

function repeatActs(part: Element): void {
  const forKeys = part.getAttribute('data-waits') === 'keys';
  part.removeAttribute('data-waits');
  part.removeAttribute('aria-busy');
  acts.forEach((act, element) => {
    if (act.part !== part) return;
    acts.delete(element);
    act.repeat();
  });
  if (forKeys && lastKey) lastKey.target?.dispatchEvent(new KeyboardEvent('keydown', lastKey));
}

listen('addEventListener');
window.addEventListener('awake', ({ target }) => repeatActs(target as Element));
// Where a script does not arrive nothing will be repeated, and the browser does what it does by itself.
window.addEventListener(
  'error',
  (event) => event.target instanceof HTMLScriptElement && listen('removeEventListener'),
  {
    capture: true,
  },
);

export {};
