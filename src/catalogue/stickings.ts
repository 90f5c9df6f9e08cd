import {
  ADDRESSES,
  barOfAttributes,
  barOfExercise,
  barOfRudiment,
  type BarSpec,
  type CellLookup,
} from '../curriculum/index.ts';
import { getCells, getExercises, getNamedCells, getRudiments, type ExerciseEntry } from './collections.ts';
import { lessonWords } from './lesson-words.ts';
import { getLessons, partsOfExercises } from './lessons.ts';

/** A bar as cells in order; one that is not made of cells is a cell without a name. */
export interface BarWithCells {
  cells: { text: string; name?: string }[];
  meter?: string;
  grid?: number;
  pickup?: number;
}

/** Something with bars: where it stands, what it is called, what it is about, and its bars. */
export interface WithBars {
  url: string;
  title: string;
  kind: 'lesson' | 'exercise' | 'rudiment' | 'cell';
  part?: number;
  rudiments?: string[];
  bars: BarWithCells[];
}

/** Everything that can be found by its sticking: rudiments and cells first, then lessons and exercises. */
export async function everyBar(): Promise<WithBars[]> {
  const cellOf = await getCells();
  return [
    ...(await rudimentBars()),
    ...(await cellBars()),
    ...(await lessonBars(cellOf)),
    ...(await exerciseBars(cellOf)),
  ];
}

/** The texts of its bars, each as one line; of two lines, hands and feet, the first cell stands for itself. */
export const textsOf = ({ bars }: WithBars): string[] =>
  bars.map(({ cells }) => {
    const texts = cells.map(({ text }) => text);
    return texts.some((text) => text.includes('\n')) ? texts[0] : texts.join(' ');
  });

/** The bar of a specification; its cells go by their own names, for those over the brackets may be others. */
function barWith({ cells, sticking, meter, grid, pickup }: BarSpec, cellOf: CellLookup): BarWithCells {
  const named = cells?.flatMap((id) => cellOf(id) ?? []).map(({ name, sticking: text }) => ({ text, name }));
  return { cells: named ?? [{ text: sticking ?? '' }], meter, grid, pickup };
}

async function rudimentBars(): Promise<WithBars[]> {
  const all = await getRudiments();
  return all.map(({ id, data }) => {
    const { spec, cellOf } = barOfRudiment(id, data);
    const { cells, ...bar } = barWith(spec, cellOf);
    const bars = [{ ...bar, cells: cells.map(({ text }) => ({ text })) }];
    return { kind: 'rudiment', url: ADDRESSES.rudiment(id), title: data.name, rudiments: [id], bars };
  });
}

/** A cell has no page of its own; it leads to the exercise that is made of the fewest others, the earliest of these. */
async function cellBars(): Promise<WithBars[]> {
  const [cells, exercises, partOf] = await Promise.all([getNamedCells(), getExercises(), partsOfExercises()]);
  const others = ({ data }: ExerciseEntry) => new Set(data.cells).size;
  const part = ({ id }: ExerciseEntry) => partOf.get(id) ?? Infinity;
  const plainest = exercises.sort((a, b) => others(a) - others(b) || part(a) - part(b) || 0);
  return [...cells].flatMap(([id, { name, elsewhere, sticking }]) => {
    const used = plainest.find((exercise) => exercise.data.cells?.includes(id));
    const title = elsewhere ? `${name} (${elsewhere})` : name;
    const bars = [{ cells: [{ text: sticking }] }];
    return used
      ? [{ kind: 'cell' as const, url: ADDRESSES.exercise(used.id), title, part: partOf.get(used.id), bars }]
      : [];
  });
}

async function exerciseBars(cellOf: CellLookup): Promise<WithBars[]> {
  const [all, partOf] = await Promise.all([getExercises(), partsOfExercises()]);
  return all.map(({ id, data }) => ({
    kind: 'exercise',
    url: ADDRESSES.exercise(id),
    title: data.title,
    part: partOf.get(id),
    rudiments: data.rudiments,
    bars: [barWith(barOfExercise(data), cellOf)],
  }));
}

async function lessonBars(cellOf: CellLookup): Promise<WithBars[]> {
  return (await getLessons()).map(({ data, body }) => ({
    kind: 'lesson',
    url: ADDRESSES.lesson(data.id),
    title: data.title,
    part: data.part,
    rudiments: data.rudiments,
    bars: lessonWords({ body }).bars.map((bar) => barWith(barOfAttributes(bar), cellOf)),
  }));
}
