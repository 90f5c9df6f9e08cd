/**
 * Which exercises have what was asked for. A choice is written in one way everywhere, `grid=4`: on the row of an
 * exercise, in the form and in the address.
 */
import { TEMPO_LIMITS } from '../core/time/units.ts';

/** A name and a value: `grid=4`, `with=flams`, `tempo=80`. */
export type Choice = string;

/** Something to choose by: one of its values, or several of them. */
export interface Field {
  name: string;
  values: readonly string[];
  /** Whether several values may be chosen; an exercise must then have all of them. */
  several?: boolean;
}

/** A tempo in beats a minute; every whole number between these two can be asked for. */
export const TEMPOS = { name: 'tempo', ...TEMPO_LIMITS } as const;

/** What an address asks for, and what it asks for that is not to be had. */
export interface FiltersRead {
  /** In the order of the fields and their values, the tempo last. */
  choices: Choice[];
  unknown: { name: string; value: string }[];
}

/** An exercise, as far as it is filtered. */
export interface FilterRow {
  /** All that holds for it, as choices. */
  facts: ReadonlySet<Choice>;
  /** Its tempos, in beats a minute. */
  from: number;
  to: number;
}

/** What is left of the rows, and what each further choice would leave. */
export interface Sifted {
  /** By row. */
  shown: boolean[];
  total: number;
  /** By choice: how many rows there are with it, all choices of other fields kept. */
  counts: ReadonlyMap<Choice, number>;
  /** By choice that was made: how many rows there are without it, all others kept. */
  without: ReadonlyMap<Choice, number>;
}

const nameOf = (choice: Choice): string => choice.slice(0, choice.indexOf('='));
const valueOf = (choice: Choice): string => choice.slice(choice.indexOf('=') + 1);

/**
 * Reads what an address asks for. Parameters that are no field's are nobody's business here; a plus sign may have
 * become a space on the way (`2+2+3/8`).
 *
 * @example readFilters('?with=kicks,flams', [{ name: 'with', values: ['flams', 'kicks'], several: true }]).choices // ['with=flams', 'with=kicks']
 */
export function readFilters(search: string, fields: readonly Field[]): FiltersRead {
  const given = new URLSearchParams(search);
  const valuesOf = (name: string) => given.getAll(name).map((value) => value.trim().replaceAll(' ', '+'));
  const read = fields.map((field) => readField(field, valuesOf(field.name)));
  const all = [...read, readTempo(valuesOf(TEMPOS.name))];
  return { choices: all.flatMap(({ choices }) => choices), unknown: all.flatMap(({ unknown }) => unknown) };
}

function readField({ name, values, several }: Field, given: string[]): FiltersRead {
  const asked = (several ? given.flatMap((value) => value.split(',')) : given.slice(0, 1)).filter(Boolean);
  return {
    choices: values.filter((value) => asked.includes(value)).map((value) => `${name}=${value}`),
    unknown: asked.filter((value) => !values.includes(value)).map((value) => ({ name, value })),
  };
}

function readTempo([value = '']: string[]): FiltersRead {
  const { name, min, max } = TEMPOS;
  const fits = /^\d{1,3}$/.test(value) && Number(value) >= min && Number(value) <= max;
  return { choices: fits ? [`${name}=${Number(value)}`] : [], unknown: value && !fits ? [{ name, value }] : [] };
}

/**
 * Writes choices as the end of an address; nothing for none. What else `search` holds stays, after them.
 *
 * @example printFilters(['with=flams', 'with=kicks'], '', [{ name: 'with', values: ['flams', 'kicks'] }]) // '?with=flams,kicks'
 */
export function printFilters(choices: readonly Choice[], search: string, fields: readonly Field[]): string {
  const names = [...fields.map(({ name }) => name), TEMPOS.name];
  const ours = names.flatMap((name) => {
    const values = choices.filter((choice) => nameOf(choice) === name).map(valueOf);
    return values.length ? `${name}=${values.join(',')}` : [];
  });
  const others = new URLSearchParams(search);
  names.forEach((name) => others.delete(name));
  const all = [...ours, ...(others.size ? [others.toString()] : [])];
  return all.length ? `?${all.join('&')}` : '';
}

/**
 * Shows the rows that have all that was chosen, and counts in the same pass what every choice would leave: a row that
 * fails in one field alone counts for the other values of that field.
 */
export function sift(rows: readonly FilterRow[], choices: readonly Choice[], fields: readonly Field[]): Sifted {
  const several = new Set(fields.filter((field) => field.several).map(({ name }) => name));
  const counts = new Map<Choice, number>();
  const without = new Map(choices.map((choice) => [choice, 0]));
  const shown = rows.map((row) => {
    const missing = choices.filter((choice) => !has(row, choice));
    if (missing.length === 0) row.facts.forEach((fact) => add(counts, fact));
    if (missing.length === 1) {
      add(without, missing[0]);
      const name = nameOf(missing[0]);
      if (!several.has(name)) row.facts.forEach((fact) => nameOf(fact) === name && add(counts, fact));
    }
    return missing.length === 0;
  });
  const total = shown.filter(Boolean).length;
  return { shown, total, counts, without: new Map([...without].map(([choice, more]) => [choice, more + total])) };
}

function has({ facts, from, to }: FilterRow, choice: Choice): boolean {
  if (nameOf(choice) !== TEMPOS.name) return facts.has(choice);
  const tempo = Number(valueOf(choice));
  return from <= tempo && tempo <= to;
}

const add = (counts: Map<Choice, number>, choice: Choice) => counts.set(choice, (counts.get(choice) ?? 0) + 1);
