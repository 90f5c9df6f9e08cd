import { refuse, type Result } from '../fault.ts';
import { checkFeet, checkHands, checkSize } from './check-lines.ts';
import { type Item, LIMITS, type Sticking } from './types.ts';
import { mirror } from './mirror.ts';
import { readLine, type Places } from './parse-line.ts';
import { printSticking } from './print.ts';
import { Reader, Refusal } from './reader.ts';

const NEWLINE = /\r\n|\r|\n/g;
const FEET = 'feet:';
const STROKES = 'R, L, K, H, a rest "-" or a grace note r, l';

/**
 * Reads a sticking. Never throws, whatever the text; a fault points into it.
 * @example
 * parseSticking('>lR LL R').ok // → true
 * parseSticking('Q').fault.message // → '"Q" is not a stroke; R, L, K, H, a rest "-" or a grace note r, l can stand here'
 */
export function parseSticking(text: string): Result<'sticking', Sticking> {
  if (typeof text !== 'string') return refuse(0, typeof text, 'a text', 'a sticking is written as text');
  if (text.length > LIMITS.characters) return tooLong(text.length);
  try {
    const sticking = readText(text);
    const printed = printedLength(sticking);
    return printed > LIMITS.characters ? tooLong(printed) : { ok: true, sticking };
  } catch (thrown) {
    if (thrown instanceof Refusal) return { ok: false, fault: thrown.fault };
    throw thrown;
  }
}

/** Characters of the normal form, or of its mirror, which may need a colon where the one does without. */
function printedLength(sticking: Sticking): number {
  const length = printSticking(sticking).length;
  return length <= LIMITS.characters / 2 ? length : Math.max(length, printSticking(mirror(sticking)).length);
}

function tooLong(length: number): Result<'sticking', Sticking> {
  const most = `at most ${LIMITS.characters} characters`;
  return refuse(
    LIMITS.characters - 1,
    `${length} characters`,
    most,
    `${length} characters are too many; ${most} can stand here`,
  );
}

function readText(text: string): Sticking {
  const start = text.length - text.trimStart().length;
  const end = text.trimEnd().length;
  if (start >= end)
    new Reader(text, 0, 0).refuse(`nothing is written here; ${STROKES} can stand here`, STROKES, 0, 'nothing');
  const [first, second] = lines(text, start, end);
  const places: Places = new Map();
  const hands = readHands(text, first, places);
  const edges = checkHands(new Reader(text, ...first), hands, places);
  return second ? { hands, feet: readFeet(text, second, places, hands, edges) } : { hands };
}

function readHands(text: string, line: [number, number], places: Places): Item[] {
  const reader = new Reader(text, ...line);
  if (text.startsWith(FEET, line[0]))
    reader.refuse(`the hands' line comes first; a bar of rests is written "-"`, STROKES, line[0], FEET);
  const items = readLine(reader, places);
  checkSize(reader, items);
  if (!items.some((item) => item.kind === 'slot' || item.kind === 'hold' || item.kind === 'group'))
    reader.refuse(`no slot is written here; ${STROKES} can stand here`, STROKES, line[0]);
  return items;
}

function readFeet(text: string, line: [number, number], places: Places, hands: Item[], edges: Set<number>): Item[] {
  const reader = new Reader(text, ...line);
  if (!text.startsWith(FEET, line[0]))
    reader.refuse('a second line begins with "feet:" and lays feet under the hands', '"feet:"', line[0]);
  reader.at += FEET.length;
  const items = readLine(reader, places);
  checkSize(reader, items);
  checkFeet(reader, hands, items, places, edges);
  return items;
}

/** Where each line that is not blank begins and ends; a third one is refused. */
function lines(text: string, start: number, end: number): [number, number][] {
  const found: [number, number][] = [];
  let from = start;
  for (const hit of [...text.slice(0, end).matchAll(NEWLINE), { index: end, 0: '' }]) {
    if (hit.index < start) continue;
    const line = text.slice(from, hit.index);
    const lead = line.length - line.trimStart().length;
    if (line.trim() !== '') found.push([from + lead, from + line.trimEnd().length]);
    from = hit.index + hit[0].length;
  }
  if (found.length > 2)
    new Reader(text, ...found[2]).refuse('a sticking has two lines at most: hands and feet', 'the end of the text');
  return found;
}
