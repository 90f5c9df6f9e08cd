import { ADDRESSES, FIXED_PAGES } from '../../curriculum/index.ts';
import type { Reference } from './references.ts';
import type { Library } from './library.ts';
import { knownHint } from './nearest.ts';

/** Links lead somewhere, pictures are there and say what they show. */
export function checkReferences(library: Library, text: { file: string; references: Reference[] }): void {
  for (const reference of text.references) {
    const said =
      reference.kind === 'picture' ? pictureFault(library, text.file, reference) : linkFault(library, reference);
    if (said) library.faults.push({ file: text.file, line: reference.line, column: reference.column, ...said });
  }
}

interface Said {
  message: string;
  hint?: string;
}

function pictureFault(library: Library, file: string, { url, alt }: Reference): Said | undefined {
  if (alt.trim() === '') return { message: 'the picture does not say what it shows', hint: `![what it shows](${url})` };
  const name = url.replace(/^\.\//, '');
  if (library.pictures.has(file.replace(/[^/]+$/, name))) return undefined;
  return {
    message: `there is no picture "${url}" beside this file`,
    hint: 'a picture is a file in the same folder; none is fetched from elsewhere',
  };
}

const ELSEWHERE = /^(https:\/\/|mailto:)/;

function linkFault(library: Library, { url }: Reference): Said | undefined {
  if (ELSEWHERE.test(url) || /^#./.test(url)) return undefined;
  if (!url.startsWith('/') || url.startsWith('//'))
    return {
      message: `"${url}" is no address of this site`,
      hint: 'write it from the top, like /lessons/the-flam-drag/; other sites begin with https://',
    };
  const path = url.split(/[?#]/, 1)[0];
  if (!path.endsWith('/')) return { message: `"${url}" lacks the slash at its end`, hint: `write ${path}/` };
  return resolves(library, url, path)
    ? undefined
    : { message: `"${url}" leads nowhere`, hint: knownHint(path, addresses(library)) };
}

function resolves(library: Library, url: string, path: string): boolean {
  const term = url.startsWith(`${ADDRESSES.glossary}#`) ? url.slice(ADDRESSES.glossary.length + 1) : undefined;
  return term === undefined ? addresses(library).has(path) : library.glossary.has(term);
}

/** Every address that a link may lead to. */
function addresses(library: Library): Set<string> {
  return new Set([
    ...FIXED_PAGES,
    ...[...library.pages.keys()].map((id) => `/${id}/`),
    ...library.lessons.map(({ id }) => ADDRESSES.lesson(id)),
    ...[...library.exercises.keys()].map(ADDRESSES.exercise),
    ...[...library.rudiments.keys()].map(ADDRESSES.rudiment),
  ]);
}
