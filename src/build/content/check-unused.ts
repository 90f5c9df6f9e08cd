import { ADDRESSES, cellIds } from '../../curriculum/index.ts';
import type { Library } from './library.ts';

/** Cells and exercises that no lesson shows. Somebody may still mean to use them: they are told, and nothing is refused. */
export function checkUnused(library: Library): void {
  const cells = usedCells(library);
  const exercises = usedExercises(library);
  warnOf(library, 'cells', 'in no exercise and no lesson', (id) => cells.has(id));
  warnOf(library, 'exercises', 'in no lesson', (id) => exercises.has(id));
}

/** One line for all of a kind: a list is read, thirty faults are not. */
function warnOf(library: Library, kind: 'cells' | 'exercises', where: string, used: (id: string) => boolean): void {
  const unused = [...library[kind].keys()].filter((id) => !used(id));
  if (unused.length)
    library.warnings.push({
      file: `content/${kind}`,
      line: 1,
      column: 1,
      message: `${unused.length} of the ${kind} ${unused.length === 1 ? 'stands' : 'stand'} ${where}:`,
      hint: unused.join(', '),
    });
}

function usedCells(library: Library): Set<string> {
  return new Set([
    ...[...library.exercises.values()].flatMap(({ data }) => data?.cells ?? []),
    ...attributes(library, 'Bar', 'cells').flatMap(cellIds),
  ]);
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
