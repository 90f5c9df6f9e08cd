import { cellIds, exercisesIn } from '../curriculum/index.ts';
import { getExercises, getNamedCells, type ExerciseEntry, type NamedCell } from './collections.ts';
import type { LessonEntry } from './lessons.ts';

/** The cells of an exercise, each once. */
export async function cellsOfExercise({ data }: ExerciseEntry): Promise<NamedCell[]> {
  const cells = await getNamedCells();
  return [...new Set(data.cells)].flatMap((id) => cells.get(id) ?? []);
}

/** Both names of each cell that the school calls something else: by either the page is found. */
export const bothNames = (cells: readonly NamedCell[]): string[] =>
  cells.flatMap(({ name, elsewhere }) => (elsewhere ? [name, elsewhere] : []));

const CELLS = /<Bar\b[^>]*?\bcells="([^"]*)"/g;
const NAMES = /<Bar\b[^>]*?\bname="([^"]*)"/g;

const all = (pattern: RegExp, text: string): string[] => [...text.matchAll(pattern)].map(([, value]) => value);

/** Both names of each cell of a lesson, in its bars and in its exercises, that the school calls something else. */
export async function bothNamesInLesson({ body = '' }: LessonEntry): Promise<string[]> {
  const cells = await getNamedCells();
  const renamed = [...cells].filter(([, { elsewhere }]) => elsewhere);
  if (renamed.length === 0) return [];
  const exercises = new Set(exercisesIn(body));
  const used = new Set([
    ...all(CELLS, body).flatMap(cellIds),
    ...(await getExercises()).filter(({ id }) => exercises.has(id)).flatMap(({ data }) => data.cells ?? []),
  ]);
  const names = new Set(all(NAMES, body));
  return bothNames(
    renamed.filter(([id, { elsewhere }]) => used.has(id) || names.has(elsewhere!)).map(([, cell]) => cell),
  );
}
