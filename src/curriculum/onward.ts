/** A lesson to go on with. */
export interface Onward {
  id: string;
  /** Whether it is a new one, because the one last read is done. */
  next: boolean;
}

/**
 * Where to go on: with the lesson last read, or, once that is done, with the first one after it that is not; at the
 * end of the course with the first one anywhere. Nowhere where nothing was read, or all is done.
 *
 * @example whereToGoOn(['a', 'b', 'c'], ['a', 'b'], 'a') // { id: 'c', next: true }
 */
export function whereToGoOn(
  lessons: readonly string[],
  done: readonly string[],
  last: string | undefined,
): Onward | undefined {
  const at = lessons.indexOf(last ?? '');
  if (at < 0) return undefined;
  if (!done.includes(lessons[at])) return { id: lessons[at], next: false };
  const id = [...lessons.slice(at), ...lessons].find((lesson) => !done.includes(lesson));
  return id === undefined ? undefined : { id, next: true };
}
