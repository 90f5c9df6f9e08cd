import { readPuzzleAddress } from '../../core/index.ts';
import { ADDRESSES, fileBeside } from '../../curriculum/index.ts';
import { addressesOf } from './addresses.ts';
import type { Library } from './library.ts';
import { knownHint } from './nearest.ts';
import type { Reference } from './references.ts';

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
