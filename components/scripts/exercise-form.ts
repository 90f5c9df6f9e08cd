/** The form of the filters as it stands in the page: what can be chosen, what is chosen, how many each would leave. */
import { readFilters, TEMPOS, type Asked, type Choice, type Field } from '../../src/curriculum/exercise-filter.ts';

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
export function readForm(form: HTMLFormElement, fields: readonly Field[]): Asked {
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
