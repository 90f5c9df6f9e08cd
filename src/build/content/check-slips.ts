import { statSync } from 'node:fs';
import { join } from 'node:path';
import { contrast, PAPER, type SiteData } from '../../curriculum/index.ts';
import { warnAt, type Entry, type Library } from './library.ts';

/** Slips that hurt no build but show on the page: each is told, and nothing is refused. */
export function checkSlips(library: Library, root: string): void {
  const files: Entry<unknown>[] = [
    ...library.lessons,
    ...library.exercises.values(),
    ...library.cells.values(),
    ...library.glossary.values(),
    ...library.rudiments.values(),
    ...library.pages.values(),
    ...(library.site ? [library.site] : []),
  ];
  files.forEach((entry) => {
    checkRemarks(library, entry);
    checkTemplate(library, entry);
  });
  for (const { file, lesson } of library.lessons) if (lesson) templateLines(library, file, lesson.text);
  if (library.site?.data) checkContrast(library, library.site, library.site.data);
  library.pictures.forEach((file) => checkSize(library, root, file));
}

const fieldsOf = (data: unknown): [string, unknown][] =>
  typeof data === 'object' && data !== null ? Object.entries(data) : [];

/** Fields that are sentences and titles, in which a # is likelier a number sign than the beginning of a remark. */
const SAID = ['name', 'school', 'contact', 'title', 'idea', 'purpose', 'enough', 'term', 'says', 'note'];

/** A # with a space before it ends a text that has no quotes. */
function checkRemarks(library: Library, entry: Entry<unknown>): void {
  for (const [name] of fieldsOf(entry.data)) {
    if (!SAID.includes(name) || !entry.yaml) continue;
    const line = entry.yaml.lineAt(entry.yaml.positionOf([name]).line);
    const rest = /^[\w-]+:\s+[^\s'"].*?\s(#.*)$/.exec(line)?.[1];
    if (rest)
      warnAt(
        library,
        entry,
        [name],
        `"${rest}" is taken as a remark and left out of "${name}"`,
        'put the whole text in quotes if it belongs to it',
      );
  }
}

/** What `npm run new` writes for the author to replace. */
const TEMPLATE = /\bSay here\b/;
/** Whether a text is still the template's. */
export const isTemplate = (text: string): boolean => TEMPLATE.test(text);
const TEMPLATE_SAYS = 'this is still the text of the template';

function checkTemplate(library: Library, entry: Entry<unknown>): void {
  for (const [name, value] of fieldsOf(entry.data))
    if (SAID.includes(name) && typeof value === 'string' && isTemplate(value))
      warnAt(library, entry, [name], TEMPLATE_SAYS, 'write your own, or delete it');
}

function templateLines(library: Library, file: string, text: string): void {
  const body = text.indexOf('\n---', 3);
  const first = text.slice(0, body).split('\n').length;
  text.split('\n').forEach((line, index) => {
    if (index > first && isTemplate(line))
      library.warnings.push({
        file,
        line: index + 1,
        column: line.search(TEMPLATE) + 1,
        message: TEMPLATE_SAYS,
        hint: 'write your own, or delete it',
      });
  });
}

/** WCAG 2.2, 1.4.3: text needs a contrast of 4.5 to 1. */
const LEAST_CONTRAST = 4.5;

function checkContrast(library: Library, site: Entry<SiteData>, { colors }: SiteData): void {
  const pairs = [
    ['warm', colors?.warm, PAPER.light, 'light'],
    ['warmDark', colors?.warmDark, PAPER.dark, 'dark'],
  ] as const;
  const key = Object.hasOwn(Object(site.yaml?.value), 'colours') ? 'colours' : 'colors';
  for (const [name, color, paper, kind] of pairs) {
    if (!color || contrast(color, paper) >= LEAST_CONTRAST) continue;
    const found = contrast(color, paper).toFixed(1);
    warnAt(
      library,
      site,
      [key, name],
      `${color} on ${kind} paper has a contrast of ${found} to 1; text needs ${LEAST_CONTRAST}`,
      kind === 'light' ? 'choose a darker color' : 'choose a lighter color, or leave warmDark out',
    );
  }
}

/** A page with a larger picture is slow on a phone. */
const MOST_BYTES = 1_000_000;

function checkSize(library: Library, root: string, file: string): void {
  const bytes = statSync(join(root, file), { throwIfNoEntry: false })?.size ?? 0;
  if (bytes <= MOST_BYTES) return;
  library.warnings.push({
    file,
    line: 1,
    column: 1,
    message: `this picture has ${(bytes / 1e6).toFixed(1)} MB; 1 is plenty`,
    hint: 'save it smaller, at most 2,000 pixels wide; the page shows it smaller anyway',
  });
}
