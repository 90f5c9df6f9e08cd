/**
 * The form of the filters and the list of exercises as they stand in the page: what can be chosen, what is chosen, how many
 * each would leave; what the rows hold, and which of them are shown.
 */
import {
  readFilters,
  TEMPOS,
  type FiltersRead,
  type Choice,
  type Field,
  type FilterRow,
} from '../../src/curriculum/exercise-filter.ts';

const selectsOf = (form: HTMLFormElement) => [...form.querySelectorAll('select')];
const ticksOf = (form: HTMLFormElement) => [...form.querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
const tempoOf = (form: HTMLFormElement) => form.querySelector<HTMLInputElement>(`input[name=${TEMPOS.name}]`);

/** What there is to choose by: every select, and every name that boxes share. */
export function fieldsOf(form: HTMLFormElement): Field[] {
  const single = selectsOf(form).map(({ name, options }) => ({ name, values: [...options].map(({ value }) => value) }));
  const names = [...new Set(ticksOf(form).map(({ name }) => name))];
  const several = names.map((name) => ({ name, values: valuesOf(form, name), several: true }));
  return [...single.map(withoutAny), ...several];
}

const withoutAny = (field: Field): Field => ({ ...field, values: field.values.filter(Boolean) });

const valuesOf = (form: HTMLFormElement, wanted: string): string[] =>
  ticksOf(form)
    .filter(({ name }) => name === wanted)
    .map(({ value }) => value);

/** What is chosen in the form; it is read as an address is. */
export function readForm(form: HTMLFormElement, fields: readonly Field[]): FiltersRead {
  const pairs = [...new FormData(form)].map(([name, value]) => [name, String(value)]);
  return readFilters(new URLSearchParams(pairs).toString(), fields);
}

/** Sets the form to these choices. */
export function writeForm(form: HTMLFormElement, choices: readonly Choice[]): void {
  const valueOf = (name: string) => choices.find((choice) => choice.startsWith(`${name}=`))?.slice(name.length + 1);
  for (const select of selectsOf(form)) select.value = valueOf(select.name) ?? '';
  for (const tick of ticksOf(form)) tick.checked = choices.includes(`${tick.name}=${tick.value}`);
  const tempo = tempoOf(form);
  if (tempo) tempo.value = valueOf(TEMPOS.name) ?? '';
}

/** Says beside every choice how many exercises it would leave. */
export function tellCounts(form: HTMLFormElement, counts: ReadonlyMap<Choice, number>): void {
  const countOf = (name: string, value: string) => counts.get(`${name}=${value}`) ?? 0;
  for (const { name, options } of selectsOf(form))
    for (const option of options)
      if (option.value) option.textContent = `${option.dataset.says} (${countOf(name, option.value)})`;
  for (const tick of ticksOf(form)) {
    const place = tick.parentElement?.querySelector('[data-count]');
    if (place) place.textContent = String(countOf(tick.name, tick.value));
  }
}

/** What a choice is called: its own words, or its field's label and them. */
export function sayChoice(form: HTMLFormElement, choice: Choice): string {
  const [name] = choice.split('=');
  const value = choice.slice(name.length + 1);
  const tick = ticksOf(form).find((one) => one.name === name && one.value === value);
  if (tick) return tick.dataset.says ?? value;
  const option = selectsOf(form)
    .find((select) => select.name === name)
    ?.querySelector<HTMLOptionElement>(`option[value="${CSS.escape(value)}"]`);
  return `${sayField(form, name)}: ${option?.dataset.says ?? value}`;
}

/** The label of a field. */
export function sayField(form: HTMLFormElement, name: string): string {
  return form.querySelector<HTMLElement>(`[data-label="${CSS.escape(name)}"]`)?.textContent ?? name;
}

/** The rows of a page and the headings over them. */
export interface ExerciseList {
  rows: FilterRow[];
  /** Shows these rows and no others; a heading with none left goes with them. */
  show(shown: readonly boolean[]): void;
}

/** Reads the list once; showing moves nothing, it only hides. */
export function readList(page: ParentNode): ExerciseList {
  const items = [...page.querySelectorAll<HTMLElement>('[data-exercise]')];
  const groups = [...page.querySelectorAll<HTMLElement>('[data-group]')].map((group) => ({
    group,
    places: items.flatMap((item, place) => (group.contains(item) ? place : [])),
  }));
  return {
    rows: items.map(rowOf),
    show: (shown) => {
      items.forEach((item, place) => (item.hidden = !shown[place]));
      groups.forEach(({ group, places }) => (group.hidden = !places.some((place) => shown[place])));
    },
  };
}

function rowOf({ dataset }: HTMLElement): FilterRow {
  const [from, to] = (dataset.tempo ?? '').split(' ').map(Number);
  return { facts: new Set((dataset.has ?? '').split(' ')), from, to };
}
