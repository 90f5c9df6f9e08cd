import { getCollection, type CollectionEntry } from 'astro:content';
import { inOrder, neighbours, type PlacedLesson } from '../curriculum/index.ts';
import { getCourse } from './site.ts';

/** A lesson with its text. */
export type LessonEntry = CollectionEntry<'lessons'>;

/** A lesson of the plan: its entry where it is written, none where it is still coming. */
export interface CourseLesson extends PlacedLesson {
  entry?: LessonEntry;
}

/** A part of the course with its lessons, written or coming. */
export interface CoursePart {
  number: number;
  title: string;
  idea: string;
  lessons: CourseLesson[];
}

/** The lessons that are written, in the order they are taken. */
export async function getLessons(): Promise<LessonEntry[]> {
  const lessons = await getCollection('lessons');
  return lessons.sort((a, b) => a.data.part - b.data.part || a.data.order - b.data.order);
}

/** The parts of the course in order, each with its lessons. */
export async function getParts(): Promise<CoursePart[]> {
  const [course, written] = await Promise.all([getCourse(), getLessons()]);
  const byId = new Map(written.map((entry) => [entry.data.id, entry]));
  const lessons = inOrder(course).map((lesson) => withEntry(lesson, byId.get(lesson.id)));
  return course.parts.map(({ number, title, idea }) => ({
    number,
    title,
    idea,
    lessons: lessons.filter((lesson) => lesson.part === number),
  }));
}

/** A lesson that is written is called what it calls itself. */
function withEntry(lesson: PlacedLesson, entry: LessonEntry | undefined): CourseLesson {
  return entry ? { ...lesson, title: entry.data.title, idea: entry.data.idea, entry } : lesson;
}

/** The part a lesson belongs to. Throws RangeError for a number that no part has. */
export async function getPart(number: number): Promise<CoursePart> {
  const part = (await getParts()).find((one) => one.number === number);
  if (!part) throw new RangeError(`there is no part ${number}`);
  return part;
}

/** The written lessons before and after one, across the parts. */
export async function lessonNeighbours(id: string): Promise<{ previous?: LessonEntry; next?: LessonEntry }> {
  return neighbours(await getLessons(), id);
}

/** The lessons whose text has an exercise in it. */
export async function lessonsWithExercise(id: string): Promise<LessonEntry[]> {
  const tag = new RegExp(`<Exercise\\s+id="${id}"`);
  return (await getLessons()).filter(({ body }) => tag.test(body ?? ''));
}

/** The lessons that name a rudiment or a term in their front matter. */
export async function lessonsAbout(kind: 'rudiments' | 'terms', id: string): Promise<LessonEntry[]> {
  return (await getLessons()).filter(({ data }) => data[kind].includes(id));
}
