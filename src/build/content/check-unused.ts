import { ADDRESSES } from '../../curriculum/index.ts';
import type { Library } from './library.ts';

/**
 * Exercises of the school's own that no lesson shows; ours are also there for practice beside their lesson, which their
 * first tag names. Somebody may still mean to use them: they are told, and nothing is refused. Cells are offered in bar
 * math, whether a bar uses them or not.
 */
export function checkUnused(library: Library): void {
  const used = usedExercises(library);
  const ours = new Set(library.course?.data?.lessons);
  const unused = [...library.exercises].flatMap(([id, { data }]) =>
    used.has(id) || ours.has(data?.tags[0] ?? '') ? [] : [id],
  );
  if (unused.length)
    library.warnings.push({
      file: 'content/exercises',
      line: 1,
      column: 1,
      message: `${unused.length} of the exercises ${unused.length === 1 ? 'is' : 'are'} in no lesson:`,
      hint: unused.join(', '),
    });
}

/** Shown in a lesson or linked from one. */
function usedExercises(library: Library): Set<string> {
  const linked = new Set(library.lessons.flatMap(({ lesson }) => lesson?.references ?? []).map(({ url }) => url));
  const ids = [...library.exercises.keys()].filter((id) => linked.has(ADDRESSES.exercise(id)));
  return new Set([...ids, ...attributes(library, 'Exercise', 'id')]);
}

/** What an attribute of a word says in all lessons. */
function attributes({ lessons }: Library, word: string, name: string): string[] {
  return lessons.flatMap(({ lesson }) =>
    (lesson?.words ?? []).flatMap((use) =>
      use.word.name === word && use.attributes?.[name] !== undefined ? [`${use.attributes[name]}`] : [],
    ),
  );
}
