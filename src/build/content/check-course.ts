import { inOrder, type PlacedLesson } from '../../curriculum/index.ts';
import { faultAt, type LessonEntry, type Library } from './library.ts';
import { knownHint } from './nearest.ts';

/** The plan and the lessons agree: places, titles, folders; nothing comes twice. */
export function checkCourse(library: Library): void {
  const { course } = library;
  const plan = course?.data ? inOrder(course.data) : undefined;
  if (plan) checkPlan(library, plan);
  library.lessons.forEach((entry) => {
    checkFolders(library, entry);
    if (plan) checkPlace(library, entry, plan);
  });
}

function checkPlan(library: Library, plan: readonly PlacedLesson[]): void {
  const entry = library.course!;
  entry.data!.parts.forEach(({ number }, index) => {
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
  for (const { id, part, order } of plan) {
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

function checkPlace(library: Library, entry: LessonEntry, plan: readonly PlacedLesson[]): void {
  if (!entry.data) return;
  const { id, part, order, title } = entry.data;
  const planned = plan.find((lesson) => lesson.id === id);
  if (!planned)
    return faultAt(
      library,
      entry,
      ['id'],
      `content/course.yaml has no lesson "${id}"`,
      knownHint(
        id,
        plan.map((lesson) => lesson.id),
      ),
    );
  if (planned.part !== part || planned.order !== order)
    faultAt(
      library,
      entry,
      ['order'],
      `content/course.yaml has "${id}" as lesson ${planned.order} of part ${planned.part}, not ${order} of ${part}`,
    );
  if (planned.title !== title)
    faultAt(library, entry, ['title'], `content/course.yaml calls it "${planned.title}"`, 'one title in both places');
}
