import type { SiteData } from '../../curriculum/index.ts';
import { partHint, partNumbers } from './check-course.ts';
import { faultAt, warnAt, writtenLessons, type Entry, type Library } from './library.ts';
import { knownHint } from './nearest.ts';

/** What a school sets names what is there: lessons, exercises, parts, cells. */
export function checkSite(library: Library): void {
  const { site } = library;
  if (!site?.data) return;
  checkHidden(library, site, site.data);
  checkOwnParts(library, site, site.data);
  checkOrder(library, site, site.data);
  checkAliases(library, site, site.data);
}

type Path = readonly PropertyKey[];

function checkHidden(library: Library, site: Entry<SiteData>, { hide }: SiteData): void {
  checkNames(library, site, ['hide', 'lessons'], hide.lessons, 'lesson', lessonIds(library));
  checkNames(library, site, ['hide', 'exercises'], hide.exercises, 'exercise', [...library.exercises.keys()]);
  checkNumbers(library, site, ['hide', 'parts'], hide.parts);
}

/** Lessons that are listed or written. */
function lessonIds({ course, lessons }: Library): string[] {
  return [...new Set([...(course?.data?.lessons ?? []), ...lessons.map(({ id }) => id)])];
}

function checkNames(
  library: Library,
  site: Entry<SiteData>,
  path: Path,
  names: readonly string[],
  what: string,
  known: readonly string[],
): void {
  names.forEach((name, index) => {
    if (!known.includes(name))
      faultAt(library, site, [...path, index], `there is no ${what} "${name}"`, knownHint(name, known));
  });
}

function checkNumbers(library: Library, site: Entry<SiteData>, path: Path, numbers: readonly number[]): void {
  const parts = partNumbers(library);
  numbers.forEach((number, index) => {
    if (!parts.includes(number))
      faultAt(library, site, [...path, index], `there is no part ${number}`, partHint(number, parts));
  });
}

function checkOwnParts(library: Library, site: Entry<SiteData>, { parts, order }: SiteData): void {
  const used = new Set(writtenLessons(library).map(({ part }) => part));
  parts.forEach(({ number }, index) => {
    const path = ['parts', index, 'number'];
    if (parts.findIndex((part) => part.number === number) < index)
      faultAt(library, site, path, `part ${number} is there already`, 'give it another number');
    else if (!used.has(number) && !order.lessons[number]?.length)
      warnAt(library, site, path, `part ${number} has no lesson yet, so it is not shown`);
  });
}

function checkOrder(library: Library, site: Entry<SiteData>, { order }: SiteData): void {
  checkNumbers(library, site, ['order', 'parts'], order.parts);
  const parts = partNumbers(library);
  const ids = lessonIds(library);
  const before = new Map<string, string>();
  for (const [part, lessons] of Object.entries(order.lessons)) {
    const path = ['order', 'lessons', part];
    if (!parts.includes(Number(part)))
      faultAt(library, site, path, `there is no part ${part}`, partHint(Number(part), parts));
    checkNames(library, site, path, lessons, 'lesson', ids);
    lessons.forEach((id, index) => {
      const earlier = before.get(id);
      if (earlier) faultAt(library, site, [...path, index], `"${id}" is put into part ${earlier} already`);
      else before.set(id, part);
    });
  }
}

/** A cell goes by one name, and no two by the same. */
function checkAliases(library: Library, site: Entry<SiteData>, { aliases }: SiteData): void {
  const names = new Map([...library.cells].map(([id, { data }]) => [aliases[id] ?? data?.name, id]));
  for (const [id, alias] of Object.entries(aliases)) {
    const path = ['aliases', id];
    if (!library.cells.has(id))
      faultAt(library, site, path, `there is no cell "${id}"`, knownHint(id, library.cells.keys()));
    else if (names.get(alias) !== id)
      faultAt(library, site, path, `"${alias}" is the name of the cell "${names.get(alias)}" already`);
  }
}
