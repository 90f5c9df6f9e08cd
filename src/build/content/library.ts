import type { z } from 'astro/zod';
import {
  cellSchema,
  courseSchema,
  exerciseSchema,
  FILM_FILE,
  ID_PATTERN,
  ID_SAYS,
  lessonSchema,
  pageSchema,
  PICTURE_FILE,
  rudimentSchema,
  siteSchema,
  termSchema,
  type CellData,
  type CourseData,
  type ExerciseData,
  type LessonData,
  type PageData,
  type RudimentData,
  type SiteData,
  type TermData,
} from '../../curriculum/index.ts';
import type { ContentFault, Position } from './content-fault.ts';
import { type LessonFile, type PageFile, readLesson, readPage } from './text-files.ts';
import { type FoundFile, readText } from './files.ts';
import { judge } from './schema-faults.ts';
import { readYaml, type YamlText } from './yaml-text.ts';

/** A file of one kind: what it says, undefined where it is faulty, and where. */
export interface Entry<T> {
  id: string;
  file: string;
  data?: T;
  yaml?: YamlText;
}

/** A lesson: its front matter and its text taken apart. */
export interface LessonEntry extends Entry<LessonData> {
  steps: string[];
  lesson?: LessonFile;
}

/** A page of text: its front matter and its text taken apart. */
export interface PageEntry extends Entry<PageData> {
  page?: PageFile;
}

/** Everything a school has written, with the faults of its form. */
export interface Library {
  cells: Map<string, Entry<CellData>>;
  exercises: Map<string, Entry<ExerciseData>>;
  rudiments: Map<string, Entry<RudimentData>>;
  glossary: Map<string, Entry<TermData>>;
  site?: Entry<SiteData>;
  course?: Entry<CourseData>;
  lessons: LessonEntry[];
  pages: Map<string, PageEntry>;
  /** Pictures beside the lessons and pages, relative to the root. */
  pictures: Set<string>;
  /** Films beside the lessons and their captions, relative to the root. */
  films: Set<string>;
  faults: ContentFault[];
  /** What need not be wrong, but is worth a look. */
  warnings: ContentFault[];
}

/** The folders whose files are one thing each. */
const KINDS = {
  cells: { schema: cellSchema, what: 'a cell' },
  exercises: { schema: exerciseSchema, what: 'an exercise' },
  rudiments: { schema: rudimentSchema, what: 'a rudiment' },
  glossary: { schema: termSchema, what: 'a term' },
} as const;

const isKind = (name: string): name is keyof typeof KINDS => Object.hasOwn(KINDS, name);

const LESSON_PATH = 'lessons/NN-part/NN-lesson/index.mdx';

/** Reads every content file. */
export function readLibrary(files: readonly FoundFile[]): Library {
  const library: Library = {
    cells: new Map(),
    exercises: new Map(),
    rudiments: new Map(),
    glossary: new Map(),
    lessons: [],
    pages: new Map(),
    pictures: new Set(),
    films: new Set(),
    faults: [],
    warnings: [],
  };
  files.forEach((found) => shelve(library, found));
  return library;
}

function shelve(library: Library, found: FoundFile): void {
  const [folder, name, ...deeper] = found.steps;
  if (found.steps.length === 1) return shelveTop(library, found);
  if (isKind(folder) && deeper.length === 0) return shelveKind(library, folder, name, found);
  if (folder === 'lessons') return shelveLesson(library, found);
  if (folder === 'pages' && deeper.length === 0) return shelvePage(library, found);
  misplaced(library, found, `content has the folders lessons, pages, ${Object.keys(KINDS).join(', ')}`);
}

function misplaced(library: Library, { file }: FoundFile, hint: string): void {
  library.faults.push({ file, line: 1, column: 1, message: 'this file does not belong here', hint });
}

function shelveTop(library: Library, found: FoundFile): void {
  const [name] = found.steps;
  if (name === 'site.yaml') library.site = readEntry(library, found, siteSchema, 'the site');
  else if (name === 'course.yaml') library.course = readEntry(library, found, courseSchema, 'the course');
  else if (name !== 'README.md') misplaced(library, found, 'beside the folders stand only site.yaml and course.yaml');
}

function shelveKind(library: Library, kind: keyof typeof KINDS, name: string, found: FoundFile): void {
  if (!name.endsWith('.yaml')) return misplaced(library, found, `files in content/${kind} end in .yaml`);
  const { schema, what } = KINDS[kind];
  const entry = readEntry(library, found, schema as z.ZodType, what);
  checkId(library, found.file, entry.id);
  (library[kind] as Map<string, Entry<unknown>>).set(entry.id, entry);
}

function checkId(library: Library, file: string, id: string): void {
  if (!ID_PATTERN.test(id))
    library.faults.push({
      file,
      line: 1,
      column: 1,
      message: `"${id}" cannot be an address`,
      hint: `the file is named by ${ID_SAYS}`,
    });
}

function readEntry<T>(
  library: Library,
  { file, steps, path }: FoundFile,
  schema: z.ZodType<T>,
  what: string,
): Entry<T> {
  const entry: Entry<T> = { id: steps[steps.length - 1].replace(/\.yaml$/, ''), file };
  const read = readText(file, path);
  if ('fault' in read) {
    library.faults.push(read.fault);
    return entry;
  }
  const parsed = readYaml(read.text);
  if (!parsed.ok) {
    library.faults.push({ file, ...parsed.fault });
    return entry;
  }
  return { ...entry, yaml: parsed.yaml, data: judgeYaml(library, file, parsed.yaml, schema, what) };
}

function judgeYaml<T>(
  library: Library,
  file: string,
  yaml: YamlText,
  schema: z.ZodType<T>,
  what: string,
): T | undefined {
  const judged = judge(schema, yaml.value, what);
  if (judged.ok) return judged.data;
  for (const { path, atKey, message, hint } of judged.said) {
    const place = yaml.positionOf(path, atKey);
    library.faults.push({ file, ...place, message, hint: hint ?? lineHint(yaml.lineAt(place.line)) });
  }
  return undefined;
}

/** What a line of YAML may have been meant to say: a # begins a remark, and curly quotes are letters. */
function lineHint(line: string): string | undefined {
  const color = /^\s*([\w-]+):\s*(#[0-9a-f]{3,8})\s*$/i.exec(line);
  if (color) return `after a # nothing is read; put the color in quotes: ${color[1]}: "${color[2]}"`;
  return /:\s*[“”„‘’]/.test(line) ? 'these are curly quotes; type straight ones: "' : undefined;
}

function shelveLesson(library: Library, found: FoundFile): void {
  const { file, steps, path } = found;
  if (steps.length === 4 && PICTURE_FILE.test(steps[3])) return void library.pictures.add(file);
  if (steps.length === 4 && FILM_FILE.test(steps[3])) return void library.films.add(file);
  if (steps.length !== 4 || steps[3] !== 'index.mdx')
    return misplaced(library, found, `a lesson is content/${LESSON_PATH}, with its pictures and films beside it`);
  const entry: LessonEntry = { id: steps[2].replace(/^\d+-/, ''), file, steps };
  const read = readText(file, path);
  if ('fault' in read) library.faults.push(read.fault);
  else fillLesson(library, entry, readLesson(file, read.text));
  library.lessons.push(entry);
}

function fillLesson(library: Library, entry: LessonEntry, lesson: LessonFile): void {
  library.faults.push(...lesson.faults);
  entry.lesson = lesson;
  entry.yaml = lesson.frontmatter;
  if (lesson.frontmatter)
    entry.data = judgeYaml(library, entry.file, lesson.frontmatter, lessonSchema, 'the front matter');
  entry.id = entry.data?.id ?? entry.id;
}

function shelvePage(library: Library, found: FoundFile): void {
  const { file, steps, path } = found;
  if (PICTURE_FILE.test(steps[1])) return void library.pictures.add(file);
  if (!steps[1].endsWith('.md')) return misplaced(library, found, 'files in content/pages end in .md');
  const entry: PageEntry = { id: steps[1].replace(/\.md$/, ''), file };
  checkId(library, file, entry.id);
  library.pages.set(entry.id, entry);
  const read = readText(file, path);
  if ('fault' in read) return void library.faults.push(read.fault);
  entry.page = readPage(file, read.text);
  entry.yaml = entry.page.frontmatter;
  library.faults.push(...entry.page.faults);
  if (entry.yaml) entry.data = judgeYaml(library, file, entry.yaml, pageSchema, 'the front matter');
}

/** What the lessons say of themselves, without those whose front matter is faulty. */
export const writtenLessons = ({ lessons }: Library): LessonData[] => lessons.flatMap(({ data }) => data ?? []);

/** Notes a fault at a place of an entry's YAML. */
export function faultAt(
  { faults }: Library,
  entry: Entry<unknown>,
  path: readonly PropertyKey[],
  message: string,
  hint?: string,
): void {
  faults.push({ file: entry.file, ...positionIn(entry, path), message, hint });
}

/** Notes something worth a look at a place of an entry's YAML. */
export function warnAt(
  { warnings }: Library,
  entry: Entry<unknown>,
  path: readonly PropertyKey[],
  message: string,
  hint?: string,
): void {
  warnings.push({ file: entry.file, ...positionIn(entry, path), message, hint });
}

const positionIn = (entry: Entry<unknown>, path: readonly PropertyKey[]): Position =>
  entry.yaml?.positionOf(path) ?? { line: 1, column: 1 };
