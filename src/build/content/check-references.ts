import { PUZZLE_KINDS, readPuzzleAddress } from '../../core/index.ts';
import { ADDRESSES, arrange, fileBeside, FIXED_PAGES, withoutHidden } from '../../curriculum/index.ts';
import { LESSONS_ON } from '../../words/bar-math.ts';
import { type LessonEntry, type Library, writtenLessons } from './library.ts';
import { knownHint } from './nearest.ts';
import type { Reference } from './mdx-tree.ts';
import type { WordUse } from './text-files.ts';

/** A text with what it leads to. */
interface Text {
  file: string;
  references: readonly Reference[];
  anchors: readonly string[];
}

/** Links lead somewhere, pictures are there and say what they show: in every lesson and page. */
export function checkReferences(library: Library): void {
  const addresses = addressesOf(library);
  const texts = [
    ...library.lessons.flatMap(({ id, lesson }) => (lesson ? [{ text: lesson, self: ADDRESSES.lesson(id) }] : [])),
    ...[...library.pages].flatMap(([id, { page }]) => (page ? [{ text: page, self: `/${id}/` }] : [])),
  ];
  for (const { text, self } of texts) checkText(library, text, { addresses, self });
}

/** Where links may lead, and the address of the text itself. */
interface Way {
  addresses: ReadonlyMap<string, ReadonlySet<string>>;
  self: string;
}

function checkText(library: Library, text: Text, way: Way): void {
  for (const reference of text.references) {
    const { line, column } = reference;
    const said = reference.kind === 'picture' ? pictureFault(library, text.file, reference) : linkFault(way, reference);
    if (said) library.faults.push({ file: text.file, line, column, ...said });
  }
}

interface Said {
  message: string;
  hint?: string;
}

function pictureFault(library: Library, file: string, { url, alt }: Reference): Said | undefined {
  if (alt.trim() === '') return { message: 'the picture does not say what it shows', hint: `![what it shows](${url})` };
  if (library.pictures.has(fileBeside(file, url))) return undefined;
  return {
    message: `there is no picture "${url}" beside this file`,
    hint: 'a picture is a file in the same folder; none is fetched from elsewhere',
  };
}

const ELSEWHERE = /^(https:\/\/|mailto:)/;

function linkFault(way: Way, { url }: Reference): Said | undefined {
  if (ELSEWHERE.test(url)) return undefined;
  if (url.startsWith('#')) return anchorFault(way, url, way.self);
  if (!url.startsWith('/') || url.startsWith('//'))
    return {
      message: `"${url}" is no address of this site`,
      hint: 'write it from the top, like /lessons/the-flam-drag/; other sites begin with https://',
    };
  const path = url.split(/[?#]/, 1)[0];
  if (!path.endsWith('/')) return { message: `"${url}" lacks the slash at its end`, hint: `write ${path}/` };
  return way.addresses.has(path)
    ? anchorFault(way, url, path)
    : { message: `"${url}" leads nowhere`, hint: knownHint(path, way.addresses.keys()) };
}

/** An anchor that the page does not have opens the page at its top, and nobody knows why. */
function anchorFault({ addresses }: Way, url: string, path: string): Said | undefined {
  const anchor = url.split('#')[1];
  const anchors = addresses.get(path);
  // The frame of every page has this one.
  if (anchor === undefined || anchor === 'page' || !anchors || anchors.has(anchor)) return undefined;
  if (path.startsWith(ADDRESSES.puzzles) && path !== ADDRESSES.puzzles) return puzzleFault(url, anchor);
  // What is asked of a sum stands behind its name: `#fit&cell=R+L+L`.
  if (path === ADDRESSES.barMath && anchors.has(anchor.split('&', 1)[0])) return undefined;
  return { message: `"${url}" leads nowhere: that page has no #${anchor}`, hint: knownHint(anchor, anchors) };
}

/** A puzzle is named by its number. */
function puzzleFault(url: string, number: string): Said | undefined {
  const read = readPuzzleAddress(number);
  return read.ok ? undefined : { message: `"${url}" leads to no puzzle: ${read.fault.message}` };
}

/** Which attributes name a file beside the lesson, and what kind of file. */
const FILES: Record<string, Record<string, 'pictures' | 'films'>> = {
  Picture: { file: 'pictures' },
  Video: { file: 'films', poster: 'pictures', captions: 'films' },
};

/** The pictures and films of lessons are there; what an attribute may look like is the vocabulary's to say. */
export function checkMedia(library: Library): void {
  for (const { file, lesson } of library.lessons) for (const use of lesson?.words ?? []) checkWord(library, file, use);
}

function checkWord(library: Library, file: string, use: WordUse): void {
  for (const [attribute, shelf] of Object.entries(FILES[use.word.name] ?? {})) {
    const name = use.attributes?.[attribute];
    if (typeof name !== 'string' || library[shelf].has(fileBeside(file, name))) continue;
    library.faults.push({
      file,
      ...use.positionOf(attribute),
      message: `there is no file "${name}" beside this lesson`,
      hint: knownHint(name.replace(/^\.\//, ''), namesBeside(library[shelf], file)),
    });
  }
}

/** The names of the files of a kind that lie beside a lesson. */
function namesBeside(shelf: ReadonlySet<string>, lesson: string): string[] {
  const folder = fileBeside(lesson, '');
  return [...shelf].filter((path) => path.startsWith(folder)).map((path) => path.slice(folder.length));
}

/** Every address that a link may lead to, with the anchors that may stand behind it. */
function addressesOf(library: Library): Map<string, ReadonlySet<string>> {
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
