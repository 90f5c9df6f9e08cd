/** As much of a lesson as tells which exercises it holds. */
export interface LadderLesson {
  id: string;
  /** Ids of those its text shows, in order. */
  shown: readonly string[];
}

/** As much of an exercise as tells which lesson it belongs to. */
export interface LadderExercise {
  id: string;
  tags: readonly string[];
}

/** An exercise tagged so stands before those that the text shows. */
const FIRST = 'first';

/**
 * The exercises of each lesson in the order of its ladder: first as the text shows them, then those that only their
 * tags give to the lesson. An exercise stands once, under the first lesson that shows it; those of no lesson are under
 * the empty id.
 *
 * @example
 * ladders([{ id: 'one', shown: ['b'] }], [{ id: 'a', tags: ['one'] }, { id: 'b', tags: [] }])
 * // Map { 'one' → ['b', 'a'], '' → [] }
 */
export function ladders(lessons: readonly LadderLesson[], exercises: readonly LadderExercise[]): Map<string, string[]> {
  const left = new Map(exercises.map((exercise) => [exercise.id, exercise]));
  const take = (ids: readonly string[]) => ids.filter((id) => left.delete(id));
  const shown = lessons.map((lesson) => take(lesson.shown));
  const rungs = lessons.map(({ id }, at): [string, string[]] => {
    const tagged = [...left.values()].filter(({ tags }) => tags.includes(id));
    const [first, later] = [true, false].map((is) => tagged.filter(({ tags }) => tags.includes(FIRST) === is));
    return [id, [...take(idsOf(first)), ...shown[at], ...take(idsOf(later))]];
  });
  return new Map([...rungs, ['', [...left.keys()]]]);
}

const idsOf = (exercises: readonly LadderExercise[]): string[] => exercises.map(({ id }) => id);
