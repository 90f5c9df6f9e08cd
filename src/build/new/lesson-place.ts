import { arrange, type PlacedPart } from '../../curriculum/index.ts';
import { partHint } from '../content/check-course.ts';
import { writtenLessons, type Library } from '../content/library.ts';

/** Where a new lesson goes, or why it cannot. */
export type LessonPlace = { ok: true; part: PlacedPart; order: number; folder: string } | { ok: false; says: string };

const LAST = 99;

/** A place for a lesson in a part: after all others, or where it is asked for. */
export function placeFor(library: Library, asked: { part?: string; order?: string }): LessonPlace {
  const { course, site } = library;
  if (!course?.data || !site?.data)
    return refuse('content/course.yaml and content/site.yaml have faults; npm run check:content tells them');
  const parts = arrange(course.data, site.data, writtenLessons(library));
  const number = asked.part;
  if (number === undefined) return refuse(`Which part? Write --part and its number. ${known(parts)}`);
  const part = parts.find((one) => String(one.number) === number);
  if (!part) return refuse(`There is no part "${number}": ${partHint(Number(number), numbers(parts))}`);
  return orderIn(library, new Set(course.data.lessons), part, asked.order);
}

const refuse = (says: string): LessonPlace => ({ ok: false, says });
const numbers = (parts: readonly PlacedPart[]) => parts.map(({ number }) => number);
const known = (parts: readonly PlacedPart[]) =>
  `There are:\n${parts.map(({ number, title }) => `  ${number}  ${title}`).join('\n')}`;

function orderIn(
  library: Library,
  ours: ReadonlySet<string>,
  part: PlacedPart,
  asked: string | undefined,
): LessonPlace {
  const order = asked === undefined ? nextOrder(library, part.number) : Number(asked);
  if (!Number.isInteger(order) || order < 1 || order > LAST)
    return refuse(`--order is a whole number from 1 to ${LAST}, not "${asked ?? order}"`);
  const there = library.lessons.find(
    ({ data }) => data && !ours.has(data.id) && data.part === part.number && data.order === order,
  );
  if (there) return refuse(`${there.file} is number ${order} of part ${part.number} already; choose another --order`);
  return { ok: true, part, order, folder: folderOf(library, part) };
}

/** One more than any lesson of the part has. */
function nextOrder(library: Library, part: number): number {
  const orders = writtenLessons(library).filter((lesson) => lesson.part === part);
  return 1 + Math.max(0, ...orders.map(({ order }) => order));
}

/** The folder that the part has already, or one made of its title. */
function folderOf({ lessons }: Library, { number, title }: PlacedPart): string {
  const digits = String(number).padStart(2, '0');
  const there = lessons.find(({ steps }) => steps[1].startsWith(`${digits}-`));
  return there ? there.steps[1] : `${digits}-${idOf(title) || 'part'}`;
}

/**
 * An id made of words.
 *
 * @example idOf('Our warm-up, no. 2!') // 'our-warm-up-no-2'
 */
export function idOf(words: string): string {
  return words
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}
