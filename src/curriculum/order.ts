import type { CourseData } from './course.ts';
import type { LessonData } from './lesson.ts';
import type { SiteData } from './site.ts';

/** A lesson at its place in the course, as its front matter has it. */
export type PlacedLesson = Pick<LessonData, 'id' | 'part' | 'order' | 'title' | 'idea'>;

/** A part with its lessons, in the order they are taken. */
export interface PlacedPart<L extends PlacedLesson = PlacedLesson> {
  number: number;
  title: string;
  idea: string;
  lessons: L[];
}

/** What a school has set about the course. */
export type CourseSettings = Pick<SiteData, 'hide' | 'parts' | 'order'>;

/**
 * The whole course as a school arranges it, with what it hides.
 *
 * - A lesson goes where its file says. One of the school's own comes after a lesson of the course of the same number.
 * - Lessons that the school lists under a part come first in it, in that order, wherever else they were; parts likewise.
 * - A lesson of a part that is nowhere is left out; the content checker refuses it.
 */
export function arrange<L extends PlacedLesson>(
  course: CourseData,
  site: CourseSettings,
  lessons: readonly L[],
): PlacedPart<L>[] {
  const ours = new Set(course.lessons);
  const isOwn = ({ id }: L): number => Number(!ours.has(id));
  const sorted = lessons.toSorted((a, b) => a.order - b.order || isOwn(a) - isOwn(b));
  const parts = [...course.parts, ...site.parts].map(({ number, title, idea }) => ({
    number,
    title,
    idea,
    lessons: sorted.filter(({ part }) => part === number),
  }));
  return firstOf(moved(parts, site.order.lessons), site.order.parts, ({ number }) => number).map(counted);
}

/** The parts with the lessons that are listed under a part moved to its beginning. */
function moved<L extends PlacedLesson>(
  parts: readonly PlacedPart<L>[],
  lists: Readonly<Record<string, readonly string[]>>,
): PlacedPart<L>[] {
  const byId = new Map(parts.flatMap(({ lessons }) => lessons).map((lesson) => [lesson.id, lesson]));
  const listed = new Set(Object.values(lists).flat());
  return parts.map((part) => ({
    ...part,
    lessons: [
      ...(lists[part.number] ?? []).flatMap((id) => byId.get(id) ?? []),
      ...part.lessons.filter(({ id }) => !listed.has(id)),
    ],
  }));
}

/** A list with those that are named at its beginning, in the order they are named. */
function firstOf<T extends object, K>(list: readonly T[], named: readonly K[], keyOf: (item: T) => K): T[] {
  const first = named.flatMap((key) => list.find((item) => keyOf(item) === key) ?? []);
  return [...first, ...list.filter((item) => !first.includes(item))];
}

/** A part whose lessons know where they stand now. */
function counted<L extends PlacedLesson>(part: PlacedPart<L>): PlacedPart<L> {
  const lessons = part.lessons.map((lesson, index) => ({ ...lesson, part: part.number, order: index + 1 }));
  return { ...part, lessons };
}

/** The parts without what the school hides, and without those that have no lesson left; places are counted anew. */
export function withoutHidden<L extends PlacedLesson>(
  parts: readonly PlacedPart<L>[],
  { hide }: Pick<CourseSettings, 'hide'>,
): PlacedPart<L>[] {
  return parts
    .filter(({ number }) => !hide.parts.includes(number))
    .map((part) => counted({ ...part, lessons: part.lessons.filter(({ id }) => !hide.lessons.includes(id)) }))
    .filter(({ lessons }) => lessons.length > 0);
}

/**
 * What stands before and after an item of a list, told by id; undefined at its ends.
 *
 * @example `neighbors([{ id: 'a' }, { id: 'b' }], 'a')` has only `next`
 */
export function neighbors<T extends { id: string }>(list: readonly T[], id: string): { previous?: T; next?: T } {
  const at = list.findIndex((item) => item.id === id);
  return at < 0 ? {} : { previous: list[at - 1], next: list[at + 1] };
}
