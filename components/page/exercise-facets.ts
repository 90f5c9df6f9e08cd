/** What the list of exercises can be filtered by, gathered from the exercises that are listed. */
import type { ExerciseData, ExerciseFacts } from '../../src/curriculum/index.ts';
import { INGREDIENTS, PLAYED_BY } from '../../src/curriculum/index.ts';
import {
  EXERCISE_WORDS,
  gridSays,
  INGREDIENT_WORDS,
  ON_PAD,
  PLAYER_WORDS,
  slotsLong,
  subdivision,
} from '../../src/words/exercises.ts';

/** An exercise of the list. */
export interface Listed {
  id: string;
  data: ExerciseData;
  facts: ExerciseFacts;
  /** The part of the course it belongs to. */
  part?: { number: number; title: string } | undefined;
}

/** A value that can be chosen. */
export interface Option {
  value: string;
  says: string;
  /** How many exercises have it. */
  count: number;
}

/** What can be chosen under one label. */
export interface Facet {
  name: keyof Facts;
  label: string;
  options: Option[];
}

type Value = string | number;
/** All that holds for an exercise, by what it is filtered by. */
type Facts = Record<
  'part' | 'grid' | 'meter' | 'slots' | 'cell' | 'rudiment' | 'limb' | 'with' | 'on',
  readonly Value[]
>;

function factsOf({ data, facts, part }: Listed): Facts {
  return {
    part: part ? [part.number] : [],
    grid: facts.grids,
    meter: facts.meters,
    slots: [facts.slots],
    cell: facts.cells,
    rudiment: data.rudiments,
    limb: facts.playedBy,
    with: facts.ingredients,
    on: facts.pad ? ['pad'] : [],
  };
}

/**
 * What an exercise's row carries for the filters: names and values, a space between.
 *
 * @example rowFacts(exercise) // 'part=6 grid=3 meter=4/4 slots=12 cell=3 limb=hands with=flams on=pad'
 */
export function rowFacts(exercise: Listed): string {
  const pairs = Object.entries(factsOf(exercise)).flatMap(([name, values]) =>
    values.map((value) => `${name}=${value}`),
  );
  return pairs.join(' ');
}

/** What is chosen from lists and what is ticked, each value with how many exercises have it; values of none are left out. */
export function facetsOf(
  all: readonly Listed[],
  rudiments: readonly { id: string; data: { name: string } }[],
): { lists: Facet[]; boxes: Facet[] } {
  const facet = (name: keyof Facts, says: (value: string) => string, order?: readonly string[]): Facet => ({
    name,
    label: EXERCISE_WORDS[name],
    options: optionsOf(all, name, says, order),
  });
  const titles = new Map(all.map(({ part }) => [String(part?.number), part?.title]));
  const names = new Map(rudiments.map(({ id, data }) => [id, data.name]));
  const long = (slots: string) => slotsLong(Number(slots));
  const lists = [
    facet('part', (number) => `${number} · ${titles.get(number)}`),
    facet('grid', (grid) => gridSays(Number(grid), gridNames(all, Number(grid)))),
    facet('meter', (meter) => meter),
    facet('limb', (limb) => PLAYER_WORDS[limb], PLAYED_BY),
    facet('rudiment', (slug) => names.get(slug) ?? slug, [...names.keys()]),
    facet('slots', long),
    facet('cell', long),
  ];
  const boxes = [facet('with', (name) => INGREDIENT_WORDS[name], INGREDIENTS), facet('on', () => ON_PAD)];
  return { lists: lists.filter(hasOptions), boxes: boxes.filter(hasOptions) };
}

const hasOptions = ({ options }: Facet): boolean => options.length > 0;

/** Values in their own order, numbers by size. */
function optionsOf(
  all: readonly Listed[],
  name: keyof Facts,
  says: (value: string) => string,
  order: readonly string[] = [],
): Option[] {
  const counts = new Map<string, number>();
  for (const exercise of all)
    for (const value of factsOf(exercise)[name]) counts.set(`${value}`, (counts.get(`${value}`) ?? 0) + 1);
  return [...counts]
    .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b) || a.localeCompare(b, 'en', { numeric: true }))
    .map(([value, count]) => ({ value, says: says(value), count }));
}

/** What the trade calls a subdivision, in all the meters it is used in here. */
function gridNames(all: readonly Listed[], grid: number): string[] {
  const meters = all.filter(({ facts }) => facts.grids.includes(grid)).flatMap(({ facts }) => facts.meters);
  return [...new Set(meters.map((meter) => subdivision(meter, grid)!))];
}
