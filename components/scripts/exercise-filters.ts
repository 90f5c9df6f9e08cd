/** The filters of the list of exercises: form, list and address kept in step. */
import { EXERCISE_WORDS, exerciseCount, notAmong, withoutChoice } from '../../src/words/exercises.ts';
import {
  printFilters,
  readFilters,
  sift,
  TEMPOS,
  type FiltersRead,
  type Choice,
  type Sifted,
} from '../../src/curriculum/exercise-filter.ts';
import { fieldsOf, readForm, sayChoice, sayField, tellCounts, writeForm, readList } from './exercise-form.ts';

/** Wires the filters of a page; does nothing where it has none. */
export function filterExercises(page: Document): void {
  const form = page.querySelector<HTMLFormElement>('form[data-filters]');
  if (!form) return;
  const fields = fieldsOf(form);
  const list = readList(page);
  const says = saysOf(page, form);
  /** What was touched last: going on with it is one step of the way back, not many. */
  let touched = '';

  const show = (choices: readonly Choice[]) => {
    const sifted = sift(list.rows, choices, fields);
    list.show(sifted.shown);
    tellCounts(form, sifted.counts);
    says.count(choices, sifted);
  };
  const go = (choices: readonly Choice[], by: string) => {
    const address = location.pathname + printFilters(choices, location.search, fields);
    const step = by === touched ? 'replaceState' : 'pushState';
    if (address !== location.pathname + location.search) history[step](null, '', address);
    touched = by;
    show(choices);
  };
  const choose = (choices: readonly Choice[], by: string) => {
    writeForm(form, choices);
    says.unknown('');
    go(choices, by);
    says.focus();
  };
  const follow = () => {
    const asked = readFilters(location.search, fields);
    touched = '';
    writeForm(form, asked.choices);
    says.unknown(unknownIn(form, asked));
    show(asked.choices);
  };

  form.addEventListener('submit', (event) => event.preventDefault());
  // A tempo is filtered by while it is typed, and noted in the address once it is.
  form.addEventListener('input', () => show(readForm(form, fields).choices));
  form.addEventListener('change', ({ target }) => {
    const { name, value } = target as HTMLInputElement;
    const { choices, unknown } = readForm(form, fields);
    says.unknown(unknown.length > 0 ? EXERCISE_WORDS.tempoLimits : '');
    go(choices, name === TEMPOS.name ? name : `${name} ${(target as Element).matches('select') ? '' : value}`);
  });
  says.onClear(() => choose([], 'clear'));
  says.onWithout((choice) =>
    choose(
      readForm(form, fields).choices.filter((one) => one !== choice),
      'without',
    ),
  );
  addEventListener('popstate', follow);
  follow();
  form.dispatchEvent(new Event('awake', { bubbles: true }));
}

const unknownIn = (form: HTMLFormElement, { unknown }: FiltersRead): string =>
  notAmong(unknown.map(({ name, value }) => ({ field: sayField(form, name), value })));

/** The lines between form and list, and the buttons in them. */
function saysOf(page: Document, form: HTMLFormElement) {
  const place = (name: string) => page.querySelector<HTMLElement>(`[data-says-${name}]`)!;
  const [count, chosen, unknown, empty, oneLess] = ['count', 'chosen', 'unknown', 'empty', 'one-less'].map(place);
  const clears = [...page.querySelectorAll<HTMLButtonElement>('button[data-clear]')];
  const ways = empty.querySelector('ul')!;
  return {
    count(choices: readonly Choice[], { total, shown, without }: Sifted) {
      count.textContent = total ? exerciseCount(total, shown.length) : EXERCISE_WORDS.none;
      tell(chosen, choices.map((choice) => sayChoice(form, choice)).join('; '));
      clears.forEach((clear) => (clear.hidden = choices.length === 0));
      empty.hidden = total > 0;
      const some = [...without].filter(([, left]) => left > 0);
      oneLess.textContent = some.length ? EXERCISE_WORDS.oneLess : EXERCISE_WORDS.noneLess;
      ways.replaceChildren(
        ...(total ? [] : some.map(([choice, left]) => wayOut(choice, sayChoice(form, choice), left))),
      );
    },
    unknown: (sentence: string) => tell(unknown, sentence),
    focus: () => count.focus(),
    onClear: (clear: () => void) => clears.forEach((button) => button.addEventListener('click', clear)),
    onWithout: (go: (choice: Choice) => void) =>
      ways.addEventListener('click', ({ target }) => {
        const way = (target as Element).closest<HTMLElement>('[data-without]');
        if (way) go(way.dataset.without!);
      }),
  };
}

function tell(place: HTMLElement, sentence: string): void {
  place.textContent = sentence;
  place.hidden = sentence === '';
}

function wayOut(choice: Choice, says: string, left: number): HTMLLIElement {
  const [item, button] = [document.createElement('li'), document.createElement('button')];
  button.type = 'button';
  button.className = 'quiet';
  button.dataset.without = choice;
  button.textContent = withoutChoice(says, left);
  item.append(button);
  return item;
}

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
