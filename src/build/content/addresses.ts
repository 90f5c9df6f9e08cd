import { PUZZLE_KINDS } from '../../core/index.ts';
import { ADDRESSES, arrange, FIXED_PAGES, withoutHidden } from '../../curriculum/index.ts';
import { LESSONS_ON } from '../../words/bar-math.ts';
import { writtenLessons, type LessonEntry, type Library } from './library.ts';

/** Every address that a link may lead to, with the anchors that may stand behind it. */
export function addressesOf(library: Library): Map<string, ReadonlySet<string>> {
  const none: ReadonlySet<string> = new Set();
  return new Map<string, ReadonlySet<string>>([
    ...FIXED_PAGES.map((page): [string, ReadonlySet<string>] => [page, none]),
    [ADDRESSES.barMath, new Set(Object.keys(LESSONS_ON))],
    ...PUZZLE_KINDS.map((kind): [string, ReadonlySet<string>] => [`${ADDRESSES.puzzles}${kind}/`, none]),
    ...[...library.exercises.keys()].map((id): [string, ReadonlySet<string>] => [ADDRESSES.exercise(id), none]),
    ...[...library.rudiments.keys()].map((id): [string, ReadonlySet<string>] => [ADDRESSES.rudiment(id), none]),
    [ADDRESSES.course, partAnchors(library)],
    [ADDRESSES.glossary, new Set(library.glossary.keys())],
    ...[...library.pages].map(([id, { page }]): [string, ReadonlySet<string>] => [`/${id}/`, new Set(page?.anchors)]),
    ...library.lessons.map((entry): [string, ReadonlySet<string>] => [
      ADDRESSES.lesson(entry.id),
      lessonAnchors(library, entry),
    ]),
  ]);
}

/** A part that is hidden, or has no lessons, does not stand in the contents. */
function partAnchors(library: Library): ReadonlySet<string> {
  const [course, site] = [library.course?.data, library.site?.data];
  const parts = course && site ? withoutHidden(arrange(course, site, writtenLessons(library)), site) : [];
  return new Set(parts.map(({ number }) => `part-${number}`));
}

/** Headings, exercises that are not hidden, bars with a name. */
function lessonAnchors({ site }: Library, { lesson }: LessonEntry): ReadonlySet<string> {
  const hidden = site?.data?.hide.exercises ?? [];
  const named = (word: string) =>
    (lesson?.words ?? []).flatMap((use) =>
      use.word.name === word && use.attributes?.id ? [`${use.attributes.id}`] : [],
    );
  return new Set([
    ...(lesson?.anchors ?? []),
    ...named('Exercise').filter((exercise) => !hidden.includes(exercise)),
    ...named('Bar').map((bar) => `bar-${bar}`),
  ]);
}
