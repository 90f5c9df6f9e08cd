import type { CourseData, PartData, PlannedLesson } from './course.ts';

/** A lesson of the plan at its place in the course. */
export interface PlacedLesson extends PlannedLesson {
  part: number;
  /** From 1 in its part. */
  order: number;
}

/** The lessons of the plan in the order they are taken, across the parts. */
export function inOrder(course: CourseData): PlacedLesson[] {
  return course.parts.flatMap((part) => placed(part));
}

function placed(part: PartData): PlacedLesson[] {
  return part.lessons.map((lesson, index) => ({ ...lesson, part: part.number, order: index + 1 }));
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
