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

/** An exercise with what its bars say about it and where it stands. */
export interface ListedExercise extends Pick<ExerciseEntry, 'id' | 'data'> {
  facts: ExerciseFacts;
  part: CoursePart | undefined;
}

/** The ladders with what their exercises' bars say about them. */
export async function getListedExercises(): Promise<
  (Pick<PartLadders, 'part'> & { ladders: (Pick<Ladder, 'lesson'> & { exercises: ListedExercise[] })[] })[]
> {
  const [parts, cellOf] = await Promise.all([getLadders(), getCells()]);
  return parts.map(({ part, ladders }) => ({
    part,
    ladders: ladders.map(({ lesson, exercises }) => ({
      lesson,
      exercises: exercises.map(({ id, data }) => ({ id, data, facts: exerciseFacts(data, cellOf), part })),
    })),
  }));
}

/** How many exercises each part of the course has, by its number. */
export async function countByPart(): Promise<Map<number, number>> {
  const count = ({ ladders }: PartLadders) => ladders.reduce((sum, { exercises }) => sum + exercises.length, 0);
  return new Map((await getLadders()).flatMap((part) => (part.part ? [[part.part.number, count(part)] as const] : [])));
}
