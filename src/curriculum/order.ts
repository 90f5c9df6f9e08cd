import type { CourseData, PartData, PlannedLesson } from './course.ts';
import type { SiteData } from './site.ts';

/** A lesson of the course at its place. */
export interface PlacedLesson extends PlannedLesson {
  part: number;
  /** From 1 in its part. */
  order: number;
}

/** A part with its lessons, in the order they are taken. */
export interface PlacedPart {
  number: number;
  title: string;
  idea: string;
  lessons: PlacedLesson[];
}

/** A lesson that is written, as its front matter says. */
export type WrittenLesson = Pick<PlacedLesson, 'id' | 'part' | 'order' | 'title' | 'idea'>;

/** What a school has set about the course. */
export type CourseSettings = Pick<SiteData, 'hide' | 'parts' | 'order'>;

/** The lessons of the plan in the order they are taken, across the parts. */
export function inOrder(course: CourseData): PlacedLesson[] {
  return course.parts.flatMap((part) => placed(part));
}

function placed(part: PartData): PlacedLesson[] {
  return part.lessons.map((lesson, index) => ({ ...lesson, part: part.number, order: index + 1 }));
}

/**
 * The whole course as a school arranges it, with what it hides.
 *
 * - A lesson that the plan does not name stands where its file says: in its part, after the planned lesson of the same
 *   number; behind all of them where its number is higher.
 * - Lessons that the school lists under a part come first in it, in that order, wherever else they stood; parts likewise.
 * - A lesson of a part that is nowhere is left out; the content checker refuses it.
 */
export function arrange(
  course: CourseData,
  site: CourseSettings,
  written: readonly WrittenLesson[] = [],
): PlacedPart[] {
  const planned = new Set(inOrder(course).map(({ id }) => id));
  const own = written.filter(({ id }) => !planned.has(id));
  const parts = [...course.parts, ...site.parts.map((part) => ({ ...part, lessons: [] }))].map((part) => ({
    number: part.number,
    title: part.title,
    idea: part.idea,
    lessons: withOwn(
      placed(part),
      own.filter((lesson) => lesson.part === part.number),
    ),
  }));
  return firstOf(moved(parts, site.order.lessons), site.order.parts, ({ number }) => number).map(counted);
}

/** Sorting keeps the order of equals, so a lesson of the plan stands before one of the school's with its number. */
function withOwn(planned: readonly PlacedLesson[], own: readonly WrittenLesson[]): PlacedLesson[] {
  const added = own.map(({ id, part, order, title, idea }) => ({ id, part, order, title, idea }));
  return [...planned, ...added].sort((a, b) => a.order - b.order);
}

/** The parts with the lessons that are listed under a part moved to its beginning. */
function moved(parts: readonly PlacedPart[], lists: Readonly<Record<string, readonly string[]>>): PlacedPart[] {
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
function counted(part: PlacedPart): PlacedPart {
  const lessons = part.lessons.map((lesson, index) => ({ ...lesson, part: part.number, order: index + 1 }));
  return { ...part, lessons };
}

/** The parts without what the school hides, and without those that have no lesson left; places are counted anew. */
export function withoutHidden(parts: readonly PlacedPart[], { hide }: Pick<CourseSettings, 'hide'>): PlacedPart[] {
  return parts
    .filter(({ number }) => !hide.parts.includes(number))
    .map((part) => counted({ ...part, lessons: part.lessons.filter(({ id }) => !hide.lessons.includes(id)) }))
    .filter(({ lessons }) => lessons.length > 0);
}

/**
 * What stands before and after an item of a list, told by id; undefined at its ends.
 *
 * @example `neighbours([{ id: 'a' }, { id: 'b' }], 'a')` has only `next`
 */
export function neighbours<T extends { id: string }>(list: readonly T[], id: string): { previous?: T; next?: T } {
  const at = list.findIndex((item) => item.id === id);
  return at < 0 ? {} : { previous: list[at - 1], next: list[at + 1] };
}
