import { exerciseFacts, ladders, type ExerciseFacts } from '../curriculum/index.ts';
import { getCells, getExercises, type ExerciseEntry } from './collections.ts';
import { getLessons, getParts, type CoursePart, type LessonEntry } from './lessons.ts';

/** A lesson's exercises, in the order of its ladder. */
export interface Ladder {
  /** None for the exercises that belong to no lesson. */
  lesson?: LessonEntry;
  exercises: ExerciseEntry[];
}

/** The ladders of a part of the course. */
export interface PartLadders {
  /** None for the exercises that belong to no lesson. */
  part?: CoursePart;
  ladders: Ladder[];
}

/** Every exercise once, in the order of the course: by part, by lesson, by ladder; those of no lesson last. */
export async function getLadders(): Promise<PartLadders[]> {
  const [parts, lessons, exercises] = await Promise.all([getParts(), getLessons(), getExercises()]);
  const rungs = ladders(
    lessons.map(({ data, body }) => ({ id: data.id, body: body ?? '' })),
    exercises.map(({ id, data }) => ({ id, tags: data.tags })),
  );
  const entryOf = new Map(exercises.map((entry) => [entry.id, entry]));
  const of = (id: string) => (rungs.get(id) ?? []).map((exercise) => entryOf.get(exercise)!);
  const byPart = parts.map((part) => ({
    part,
    ladders: part.lessons.flatMap(({ id, entry }) => (entry ? [{ lesson: entry, exercises: of(id) }] : [])),
  }));
  return [...byPart, { ladders: [{ exercises: of('') }] }]
    .map(withoutEmpty)
    .filter(({ ladders }) => ladders.length > 0);
}

const withoutEmpty = (part: PartLadders): PartLadders => ({
  ...part,
  ladders: part.ladders.filter(({ exercises }) => exercises.length > 0),
});

/** What the bars of every exercise say about it, by its id. */
export async function getExerciseFacts(): Promise<Map<string, ExerciseFacts>> {
  const [exercises, cellOf] = await Promise.all([getExercises(), getCells()]);
  return new Map(exercises.map(({ id, data }) => [id, exerciseFacts(data, cellOf)]));
}
