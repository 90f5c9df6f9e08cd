import { exerciseFacts, ladders, type ExerciseFacts } from '../curriculum/index.ts';
import { getCells, getExercises, type ExerciseEntry } from './collections.ts';
import { lessonWords } from './lesson-words.ts';
import { once } from './once.ts';
import {
  getLessons,
  getParts,
  lessonNeighbors,
  lessonsWithExercise,
  type CoursePart,
  type LessonEntry,
} from './lessons.ts';

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
const getLadders = async (): Promise<PartLadders[]> =>
  keep(await allLadders(), ({ exercises }) => exercises.length > 0);

/** All ladders of the course, empty ones too. */
const allLadders = once(async (): Promise<PartLadders[]> => {
  const [parts, lessons, exercises] = await Promise.all([getParts(), getLessons(), getExercises()]);
  const rungs = ladders(
    lessons.map((lesson) => ({ id: lesson.data.id, shown: lessonWords(lesson).exercises })),
    exercises.map(({ id, data }) => ({ id, tags: data.tags })),
  );
  const entryOf = new Map(exercises.map((entry) => [entry.id, entry]));
  const of = (id: string) => (rungs.get(id) ?? []).flatMap((exercise) => entryOf.get(exercise) ?? []);
  const byPart = parts.map((part) => ({
    part,
    ladders: part.lessons.map(({ id, entry }) => ({ lesson: entry, exercises: of(id) })),
  }));
  return [...byPart, { ladders: [{ exercises: of('') }] }];
});

/** Parts with those of their ladders that fit, without parts that have none. */
const keep = (parts: readonly PartLadders[], fits: (ladder: Ladder) => boolean): PartLadders[] =>
  parts.map((part) => ({ ...part, ladders: part.ladders.filter(fits) })).filter(({ ladders }) => ladders.length > 0);

/** Some lessons and some exercises, in the order of the course: each lesson with those of its exercises. */
export async function laddersOf(
  lessons: readonly LessonEntry[],
  exercises: readonly ExerciseEntry[],
): Promise<PartLadders[]> {
  const ids = new Set(exercises.map(({ id }) => id));
  const some = (await allLadders()).map((part) => ({
    ...part,
    ladders: part.ladders.map((one) => ({ ...one, exercises: one.exercises.filter(({ id }) => ids.has(id)) })),
  }));
  const named = new Set(lessons.map(({ data }) => data.id));
  return keep(some, (one) => one.exercises.length > 0 || (one.lesson !== undefined && named.has(one.lesson.data.id)));
}

/** Where an exercise stands in the ladder of its lesson. */
export interface ExercisePlace {
  lesson: LessonEntry;
  /** From 1, of so many. */
  place: number;
  of: number;
  previous: ExerciseEntry | undefined;
  next: ExerciseEntry | undefined;
  /** The lesson after its own. */
  nextLesson: LessonEntry | undefined;
}

const places = once(async () => {
  const all = (await getLadders()).flatMap(({ ladders }) => ladders);
  return new Map(
    all.flatMap(({ lesson, exercises }) =>
      exercises.map(
        ({ id }, at) =>
          [
            id,
            lesson && {
              lesson,
              place: at + 1,
              of: exercises.length,
              previous: exercises[at - 1],
              next: exercises[at + 1],
            },
          ] as const,
      ),
    ),
  );
});

/** Where an exercise stands; nothing for one that belongs to no lesson or is hidden. */
export async function exercisePlace(id: string): Promise<ExercisePlace | undefined> {
  const place = (await places()).get(id);
  return place && { ...place, nextLesson: (await lessonNeighbors(place.lesson.data.id)).next };
}

/** The other lessons whose text shows an exercise that has its place in one. */
export async function otherLessons(id: string, place: ExercisePlace | undefined): Promise<LessonEntry[]> {
  return place ? (await lessonsWithExercise(id)).filter(({ data }) => data.id !== place.lesson.data.id) : [];
}

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
