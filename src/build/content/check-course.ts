import { inOrder, OWN_PARTS_FROM, type CourseData, type PlacedLesson } from '../../curriculum/index.ts';
import { faultAt, warnAt, type Entry, type LessonEntry, type Library } from './library.ts';
import { nearest } from './nearest.ts';

/** The plan and the lessons agree: places, titles, folders; nothing comes twice. */
export function checkCourse(library: Library): void {
  const { course } = library;
  const plan = course?.data && inOrder(course.data);
  if (course?.data) checkPlan(library, course, course.data);
  library.lessons.forEach((entry) => {
    checkFolders(library, entry);
    if (plan) checkPlace(library, entry, plan);
  });
  if (plan) checkOwnPlaces(library, plan);
}

function checkPlan(library: Library, entry: Entry<CourseData>, course: CourseData): void {
  course.parts.forEach(({ number }, index) => {
    if (number !== index + 1)
      faultAt(
        library,
        entry,
        ['parts', index, 'number'],
        `part ${number} stands in place ${index + 1}`,
        'parts are numbered from 1, in order',
      );
  });
  const ids = new Set<string>();
  for (const { id, part, order } of inOrder(course)) {
    if (ids.has(id))
      faultAt(library, entry, ['parts', part - 1, 'lessons', order - 1, 'id'], `"${id}" is in the course twice`);
    ids.add(id);
  }
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

/** A lesson of the plan stands where the plan has it; any other stands in a part that there is. */
function checkPlace(library: Library, entry: LessonEntry, plan: readonly PlacedLesson[]): void {
  if (!entry.data) return;
  const { id, part, order, title } = entry.data;
  const planned = plan.find((lesson) => lesson.id === id);
  if (!planned) return checkOwn(library, entry, part, plan);
  if (planned.part !== part || planned.order !== order)
    faultAt(
      library,
      entry,
      ['order'],
      `content/course.yaml has "${id}" as lesson ${planned.order} of part ${planned.part}, not ${order} of ${part}`,
      'content/site.yaml is the place to put lessons in another order',
    );
  if (planned.title !== title)
    faultAt(library, entry, ['title'], `content/course.yaml calls it "${planned.title}"`, 'one title in both places');
}

function checkOwn(library: Library, entry: LessonEntry, part: number, plan: readonly PlacedLesson[]): void {
  const parts = partNumbers(library);
  if (library.site?.data && !parts.includes(part))
    faultAt(library, entry, ['part'], `there is no part ${part}`, partHint(part, parts));
  const written = new Set(library.lessons.map(({ id }) => id));
  const meant = nearest(
    entry.id,
    plan.map(({ id }) => id).filter((id) => !written.has(id)),
  );
  if (meant)
    warnAt(
      library,
      entry,
      ['id'],
      `content/course.yaml plans a lesson "${meant}" that is not written`,
      `was that meant?`,
    );
}

/** The numbers of all parts, planned and of the school's own. */
export function partNumbers({ course, site }: Library): number[] {
  return [...(course?.data?.parts ?? []), ...(site?.data?.parts ?? [])].map(({ number }) => number);
}

/** What to do about a number that no part has. */
export function partHint(number: number, parts: readonly number[]): string {
  return number >= OWN_PARTS_FROM
    ? `a part of your own stands in content/site.yaml: parts: [{ number: ${number}, title: …, idea: … }]`
    : `there are: ${parts.join(', ')}; parts of your own are numbered from ${OWN_PARTS_FROM}, in content/site.yaml`;
}

/** Two lessons that the plan does not name need two places. */
function checkOwnPlaces(library: Library, plan: readonly PlacedLesson[]): void {
  const planned = new Set(plan.map(({ id }) => id));
  const first = new Map<string, string>();
  for (const entry of library.lessons) {
    if (!entry.data || planned.has(entry.data.id)) continue;
    const { part, order } = entry.data;
    const earlier = first.get(`${part}.${order}`);
    if (earlier)
      faultAt(
        library,
        entry,
        ['order'],
        `${earlier} is number ${order} of part ${part} already`,
        'give one of them another order',
      );
    else first.set(`${part}.${order}`, entry.file);
  }
}
