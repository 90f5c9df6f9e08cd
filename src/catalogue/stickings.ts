import { ADDRESSES, barOfExercise, barRequest, cellIds, type CellLookup } from '../curriculum/index.ts';
import { getCells, getExercises, getNamedCells, getRudiments } from './collections.ts';
import { getLessons } from './lessons.ts';

/** Something with bars: where it stands, what it is called, and the texts of its bars. */
export interface WithBars {
  url: string;
  title: string;
  kind: 'lesson' | 'exercise' | 'rudiment' | 'cell';
  texts: string[];
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

async function rudimentBars(): Promise<WithBars[]> {
  const all = await getRudiments();
  return all.map(({ id, data }) => ({
    kind: 'rudiment',
    url: ADDRESSES.rudiment(id),
    title: data.name,
    texts: [data.sticking],
  }));
}

/** A cell has no page of its own; it leads to the exercises that are made of it, or to the lesson that shows it. */
async function cellBars(): Promise<WithBars[]> {
  const [cells, exercises] = await Promise.all([getNamedCells(), getExercises()]);
  return [...cells].flatMap(([id, { name, elsewhere, sticking }]) => {
    const used = exercises.find((exercise) => exercise.data.cells?.includes(id));
    const title = elsewhere ? `${name} (${elsewhere})` : name;
    return used ? [{ kind: 'cell' as const, url: ADDRESSES.exercise(used.id), title, texts: [sticking] }] : [];
  });
}

async function exerciseBars(cellOf: CellLookup): Promise<WithBars[]> {
  const all = await getExercises();
  return all.map(({ id, data }) => ({
    kind: 'exercise',
    url: ADDRESSES.exercise(id),
    title: data.title,
    texts: [textOf(barRequest(barOfExercise(data), cellOf).cells.map(({ text }) => text))],
  }));
}

/** The cells of a phrase as one line; texts of two lines are left to be found by themselves. */
const textOf = (texts: string[]): string => (texts.some((text) => text.includes('\n')) ? texts[0] : texts.join(' '));

const BAR = /<(?:Bar)\b[^>]*?\b(sticking|cells)="([^"]*)"/g;

async function lessonBars(cellOf: CellLookup): Promise<WithBars[]> {
  return (await getLessons()).map(({ data, body }) => ({
    kind: 'lesson',
    url: ADDRESSES.lesson(data.id),
    title: data.title,
    texts: [...(body ?? '').matchAll(BAR)].map(([, attribute, value]) =>
      attribute === 'cells'
        ? textOf(barRequest({ cells: cellIds(value) }, cellOf).cells.map(({ text }) => text))
        : value,
    ),
  }));
}
