import { cellIds } from '../curriculum/index.ts';
import { getExercises, getNamedCells, type ExerciseEntry, type NamedCell } from './collections.ts';
import { lessonWords } from './lesson-words.ts';
import type { LessonEntry } from './lessons.ts';

/** The cells of an exercise, each once. */
export async function cellsOfExercise({ data }: ExerciseEntry): Promise<NamedCell[]> {
  const cells = await getNamedCells();
  return [...new Set(data.cells)].flatMap((id) => cells.get(id) ?? []);
}

/** Both names of each cell that the school calls something else: by either the page is found. */
export const bothNames = (cells: readonly NamedCell[]): string[] =>
  cells.flatMap(({ name, elsewhere }) => (elsewhere ? [name, elsewhere] : []));

/** Both names of each cell of a lesson, in its bars and in its exercises, that the school calls something else. */
export async function bothNamesInLesson(lesson: LessonEntry): Promise<string[]> {
  const cells = await getNamedCells();
  if (![...cells.values()].some(({ elsewhere }) => elsewhere)) return [];
  const { bars, exercises } = lessonWords(lesson);
  const used = new Set([
    ...bars.flatMap((bar) => cellIds(bar.cells ?? '')),
    ...(await getExercises()).filter(({ id }) => exercises.includes(id)).flatMap(({ data }) => data.cells ?? []),
  ]);
  const names = new Set(bars.map(({ name }) => name));
  return bothNames(
    [...cells].filter(([id, { elsewhere }]) => used.has(id) || names.has(elsewhere)).map(([, cell]) => cell),
  );
}
