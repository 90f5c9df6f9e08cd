/**
 * Runs in the browser, in the page itself, before any other script: it has to stay small.
 *
 * An island that wants words while it loads has one element with `data-wanted-note`; what it says there is written in
 * that element's `data-loading` and `data-failed`.
 *
 * An island that an address can set something for has an element with `data-wanted-by`, the names of the parameters. It
 * is loaded at once where the address has one of them and leads to that island: the first at or after the place that its
 * fragment names, or, where there is no such place, the first of the page. That element then has `data-linked`.
 */
import type { ClientDirective } from 'astro';

/** Signs that someone is about to use the island. */
const SIGNS = ['pointerover', 'focusin', 'touchstart', 'keydown', 'input', 'change', 'click'] as const;
/** A wait shorter than this needs no words. */
const PATIENCE_MS = 300;

/** Says that a panel of the page has come to life. */
const PANEL = 'panel';

type Field = HTMLInputElement;

/**
 * Loads an island on the first sign of intention, or with `client:wanted="now"` at once; presses and entries made meanwhile
 * are repeated once it is there.
 */
// The framework takes a directive from its default export.
export default ((load, { value }, island) => {
  const presses = new Set<HTMLElement>();
  const entries = new Map<Field, string>();
  const complete = new Set<Field>();
  /** The last key that the browser itself did nothing for. */
  let key: KeyboardEvent | undefined;
  let loading = false;

  const isPanel = () => island.querySelector('[data-wanted-by]');
  const note = () => island.querySelector<HTMLElement>('[data-wanted-note]');
  const say = (words: 'loading' | 'failed' | undefined) => {
    const place = note();
    if (place) place.textContent = (words && place.dataset[words]) ?? '';
  };
  const listen = (change: 'addEventListener' | 'removeEventListener') =>
    SIGNS.forEach((sign) => island[change](sign, onSign, { capture: true }));

  const onSign = (event: Event) => {
    // A key that comes once the island is awake has been heard.
    if (event.type === 'keydown') key = island.hasAttribute('ssr') ? (event as KeyboardEvent) : key;
    else if (event.type !== 'focusin') key = undefined;
    if (event.type === 'click') catchPress(event);
    if (event.type === 'input' || event.type === 'change') catchEntry(event);
    if (!loading) void start();
  };

  const catchEntry = ({ type, target }: Event) => {
    const field = target as Field;
    entries.set(field, field.value);
    if (type === 'change') complete.add(field);
    else complete.delete(field);
  };

  const catchPress = (event: Event) => {
    presses.add(event.target as HTMLElement);
    event.preventDefault();
    event.stopImmediatePropagation();
  };

  const start = async () => {
    loading = true;
    const patience = setTimeout(() => {
      island.setAttribute('aria-busy', 'true');
      say('loading');
    }, PATIENCE_MS);
    const hydrate = await load();
    clearTimeout(patience);
    island.removeAttribute('aria-busy');
    say(undefined);
    await hydrate();
    // Waking puts back what the page was built with; the next key must find what was typed.
    entries.forEach((value, field) => (field.value = value));
    // The attribute goes with hydration; where it stays, the script did not arrive.
    if (island.hasAttribute('ssr')) return forget();
    if (isPanel()) document.dispatchEvent(new Event(PANEL));
    // One turn later the island's own first effects have run. What is typed until then is caught as well: repeating an
    // older entry over it would lose a letter.
    setTimeout(repeat);
  };

  const forget = () => {
    loading = false;
    if (presses.size) say('failed');
    presses.clear();
    entries.clear();
    key = undefined;
  };

  const repeat = () => {
    listen('removeEventListener');
    entries.forEach((value, field) => {
      field.value = value;
      enter(field, 'input');
      // Someone may still be typing: then the entry is complete when the field is left.
      if (field === document.activeElement && !complete.has(field)) {
        field.addEventListener('blur', () => enter(field, 'change'), { once: true });
      } else enter(field, 'change');
    });
    presses.forEach((target) => target.click());
    if (key) key.target?.dispatchEvent(new KeyboardEvent('keydown', key));
  };

  const enter = (field: Field, type: string) => field.dispatchEvent(new Event(type, { bubbles: true }));

  // What one panel remembers, all of them show.
  document.addEventListener(PANEL, () => isPanel() && !loading && void start(), { once: true });

  const follow = () => {
    const place = island.querySelector<HTMLElement>('[data-wanted-by]');
    const query = new URLSearchParams(location.search);
    if (!place?.dataset.wantedBy!.split(' ').some((name) => query.has(name))) return;
    const target = document.getElementById(location.hash.slice(1));
    const places = [...document.querySelectorAll<HTMLElement>('[data-wanted-by]')];
    const isThere = (one: Element) => target!.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING;
    if (place !== ((target && places.find(isThere)) ?? places[0])) return;
    place.dataset.linked = '';
    if (!loading) void start();
  };

  // The failure is told in words beside the controls.
  island.addEventListener('astro:hydration-error', (event) => event.preventDefault());
  listen('addEventListener');
  if (value === 'now') void start();
  // Which place comes first is known when all of the page has been read.
  if (document.readyState === 'loading') addEventListener('DOMContentLoaded', follow);
  else follow();
}) satisfies ClientDirective;
