import { getCollection, type CollectionEntry } from 'astro:content';
import { arrange, neighbors, withoutHidden, type PlacedLesson, type PlacedPart } from '../curriculum/index.ts';
import { lessonWords } from './lesson-words.ts';
import { once } from './once.ts';
import { said } from './said.ts';
import { getCourse, getSite } from './site.ts';

/** A lesson with its text; its `part` and `order` are where it stands on this site. */
export type LessonEntry = CollectionEntry<'lessons'>;

/** A lesson at its place in the course, with its entry. */
export interface CourseLesson extends PlacedLesson {
  entry: LessonEntry;
}

/** A part of the course with its lessons. */
export type CoursePart = PlacedPart<CourseLesson>;

/** The whole course with what the school hides, and without. */
const courses = once(async () => {
  const [course, site, entries] = await Promise.all([getCourse(), getSite(), getCollection('lessons')]);
  const lessons = entries.map((entry): CourseLesson => {
    const data = said(entry.data);
    const { id, part, order, title, idea } = data;
    return { id, part, order, title, idea, entry: { ...entry, data } };
  });
  const all = arrange(course, site, lessons).map((part) => said(part));
  return { all: all.map(settled), shown: withoutHidden(all, site).map(settled) };
});

/** Entries say where the school has put their lesson. */
const settled = (part: CoursePart): CoursePart => ({
  ...part,
  lessons: part.lessons.map((lesson) => {
    const { part: number, order, entry } = lesson;
    return { ...lesson, entry: { ...entry, data: { ...entry.data, part: number, order } } };
  }),
});

const writtenOf = (parts: readonly CoursePart[]): LessonEntry[] =>
  parts.flatMap(({ lessons }) => lessons.map(({ entry }) => entry));

const shownLessons = once(async () => writtenOf((await courses()).shown));

/** The lessons that are written and shown, in the order they are taken. */
export const getLessons = async (): Promise<LessonEntry[]> => [...(await shownLessons())];

/**
 * Every lesson that is written, those the school hides too: their pages stay where they were, so that no link to them
 * breaks, and are listed nowhere.
 */
export async function everyLesson(): Promise<{ lesson: LessonEntry; hidden: boolean }[]> {
  const { all, shown } = await courses();
  const visible = new Map(writtenOf(shown).map((lesson) => [lesson.data.id, lesson]));
  return writtenOf(all).map((lesson) => ({
    lesson: visible.get(lesson.data.id) ?? lesson,
    hidden: !visible.has(lesson.data.id),
  }));
}

/** The parts of the course in order, each with its lessons, without what the school hides. */
export const getParts = async (): Promise<CoursePart[]> => [...(await courses()).shown];

/** The part a lesson belongs to, hidden or not. Throws RangeError for a number that no part has. */
export async function getPart(number: number): Promise<CoursePart> {
  const { all, shown } = await courses();
  const part = [...shown, ...all].find((one) => one.number === number);
  if (!part) throw new RangeError(`there is no part ${number}`);
  return part;
}

/** The written lessons before and after one, across the parts; none around a hidden one. */
export async function lessonNeighbors(id: string): Promise<{ previous?: LessonEntry; next?: LessonEntry }> {
  return neighbors(await shownLessons(), id);
}

/** The lessons of every exercise, found once a build: to look through all lessons for each exercise takes too long. */
const lessonsByExercise = once(async () => {
  const found = new Map<string, LessonEntry[]>();
  for (const lesson of await shownLessons())
    for (const id of new Set(lessonWords(lesson).exercises)) found.set(id, [...(found.get(id) ?? []), lesson]);
  return found;
});

/** The lessons whose text has an exercise in it. */
export const lessonsWithExercise = async (id: string): Promise<LessonEntry[]> => [
  ...((await lessonsByExercise()).get(id) ?? []),
];

/** The part of the course that each exercise belongs to: that of the first lesson with it. */
export async function partsOfExercises(): Promise<Map<string, number>> {
  return new Map([...(await lessonsByExercise())].map(([id, [lesson]]) => [id, lesson.data.part]));
}

/** The lessons that name a rudiment or a term in their front matter. */
export async function lessonsAbout(kind: 'rudiments' | 'terms', id: string): Promise<LessonEntry[]> {
  return (await shownLessons()).filter(({ data }) => data[kind].includes(id));
}
