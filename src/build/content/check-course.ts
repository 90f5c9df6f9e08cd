import { type CourseData, OWN_PARTS_FROM } from '../../curriculum/index.ts';
import { type Entry, faultAt, type LessonEntry, type Library, warnAt } from './library.ts';
import { nearest } from './nearest.ts';

/** The course and the lessons agree: parts, folders, places; nothing comes twice. */
export function checkCourse(library: Library): void {
  const { course } = library;
  if (course?.data) checkList(library, course, course.data);
  library.lessons.forEach((entry) => {
    checkFolders(library, entry);
    checkPart(library, entry);
  });
  checkPlaces(library);
}

function checkList(library: Library, entry: Entry<CourseData>, { parts, lessons }: CourseData): void {
  parts.forEach(({ number }, index) => {
    if (number !== index + 1)
      faultAt(
        library,
        entry,
        ['parts', index, 'number'],
        `part ${number} is in place ${index + 1}`,
        'parts are numbered from 1, in order',
      );
  });
  const written = new Set(library.lessons.map(({ id }) => id));
  lessons.forEach((id, index) => {
    const path = ['lessons', index];
    if (lessons.indexOf(id) < index)
      faultAt(library, entry, path, `"${id}" is in the list twice`, 'keep one of the two');
    else if (!written.has(id)) missingLesson(library, entry, path, id, lessons);
  });
}

/** A lesson of the course has no file; one that is nearly called like it may be the one that is meant. */
function missingLesson(
  library: Library,
  entry: Entry<CourseData>,
  path: (string | number)[],
  id: string,
  listed: string[],
) {
  const others = library.lessons.map((lesson) => lesson.id).filter((other) => !listed.includes(other));
  const near = nearest(id, others);
  const hint = near ? `was "${near}" meant?` : 'write it, or take it out of the list';
  warnAt(library, entry, path, `there is no lesson "${id}"`, hint);
}

const FOLDER = /^(\d{2})-([a-z0-9-]+)$/;

function checkFolders(library: Library, entry: LessonEntry): void {
  const [, part, lesson] = entry.steps;
  const [partName, lessonName] = [part, lesson].map((name) => FOLDER.exec(name));
  if (!partName || !lessonName)
    return faultAt(
      library,
      entry,
      [],
      `the folders are "${part}/${lesson}"`,
      'each begins with two digits: 06-the-flam-drag/01-the-flam-drag',
    );
  if (!entry.data) return;
  const { id, part: number, order } = entry.data;
  if (Number(partName[1]) !== number)
    faultAt(library, entry, ['part'], `part is ${number}, but the folder is "${part}"`);
  if (Number(lessonName[1]) !== order)
    faultAt(library, entry, ['order'], `order is ${order}, but the folder is "${lesson}"`);
  if (lessonName[2] !== id)
    faultAt(
      library,
      entry,
      ['id'],
      `id is "${id}", but the folder is "${lesson}"`,
      `name the folder ${lessonName[1]}-${id}`,
    );
}

/** A lesson is in a part that there is. */
function checkPart(library: Library, entry: LessonEntry): void {
  const parts = partNumbers(library);
  if (!entry.data || !library.site?.data || !library.course?.data || parts.includes(entry.data.part)) return;
  faultAt(library, entry, ['part'], `there is no part ${entry.data.part}`, partHint(entry.data.part, parts));
}

/** The numbers of all parts, of the course and of the school's own. */
export function partNumbers({ course, site }: Library): number[] {
  return [...(course?.data?.parts ?? []), ...(site?.data?.parts ?? [])].map(({ number }) => number);
}

/** What to do about a number that no part has. */
export function partHint(number: number, parts: readonly number[]): string {
  return number >= OWN_PARTS_FROM
    ? `a part of your own stands in content/site.yaml: parts: [{ number: ${number}, title: …, idea: … }]`
    : `there are: ${parts.join(', ')}; parts of your own are numbered from ${OWN_PARTS_FROM}, in content/site.yaml`;
}

/** Two lessons of the course need two places, and so do two of the school's own; one of each may share a number. */
function checkPlaces(library: Library): void {
  const ours = new Set(library.course?.data?.lessons);
  const first = new Map<string, string>();
  for (const entry of library.lessons) {
    if (!entry.data) continue;
    const { id, part, order } = entry.data;
    const place = `${ours.has(id) ? '' : 'own '}${part}.${order}`;
    const earlier = first.get(place);
    if (earlier)
      faultAt(
        library,
        entry,
        ['order'],
        `${earlier} is number ${order} of part ${part} already`,
        'give one of them another order',
      );
    else first.set(place, entry.file);
  }
}

const PART = /\bPart (\d+)\b/g;

/** Parts that the text of a lesson speaks of and nobody finds: the school hides them, or they are nowhere. */
export function checkSpokenParts(library: Library): void {
  const { site, course } = library;
  if (!site?.data || !course?.data) return;
  const hidden = site.data.hide.parts;
  const shown = partNumbers(library).filter((number) => !hidden.includes(number));
  for (const { file, lesson, data } of library.lessons) {
    // Who reads a hidden lesson has come by a link of their own.
    if (!lesson || !data || hidden.includes(data.part)) continue;
    lesson.text.split('\n').forEach((line, index) => {
      for (const { 1: number, index: at } of line.matchAll(PART))
        if (!shown.includes(Number(number)))
          library.warnings.push({
            file,
            line: index + 1,
            column: at + 1,
            message: `the text speaks of Part ${number}, which is not shown`,
          });
    });
  }
}
