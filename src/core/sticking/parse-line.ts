import { isGrid, MAX_GRID, readMeter } from '../time/meter.ts';
import { readSlot } from './parse-slot.ts';
import { isSpace, type Reader } from './reader.ts';
import type { GroupItem, HeadItem, Item } from './types.ts';

/** Items with the index at which each was written, which the sticking itself does not keep. */
export type Places = Map<Item, number>;

const COUNT = /\d+/y;
const HEAD = /\[([^[\]\s]*)\]/y;
const DEEPEST = 2;
const MOST_REPEATS = 4096;

/** Reads a line of items; the places of all of them go into `places`. */
export function readLine(reader: Reader, places: Places): Item[] {
  const items = readItems(reader, places, 0);
  if (!reader.done)
    reader.refuse('"}" closes nothing; a group begins with "{"', 'a slot, a bar line or the end of the line');
  return items;
}

function readItems(reader: Reader, places: Places, depth: number): Item[] {
  const items: Item[] = [];
  for (;;) {
    reader.skipSpaces();
    if (reader.done || reader.here === '}') return items;
    const at = reader.at;
    const item = readItem(reader, places, depth);
    places.set(item, at);
    items.push(item);
    checkGap(reader);
  }
}

function checkGap(reader: Reader): void {
  if (!reader.done && !isSpace(reader.here) && reader.here !== '}')
    reader.refuse(`a space belongs before "${reader.found}"`, 'a space');
}

function readItem(reader: Reader, places: Places, depth: number): Item {
  if (reader.here === '{') return readGroup(reader, places, depth + 1);
  if (reader.here === '[') return readHead(reader);
  if (reader.take('|')) return { kind: 'bar' };
  return readSlot(reader);
}

function readGroup(reader: Reader, places: Places, depth: number): GroupItem {
  const open = reader.at;
  if (depth > DEEPEST) reader.refuse('groups nest once; this one stands inside two others', 'slots');
  reader.take('{');
  const items = readItems(reader, places, depth);
  if (!reader.take('}')) reader.refuse('this group is not closed; "}" and a number belong after it', '"}"', open, '{');
  if (!items.some((item) => item.kind !== 'bar' && item.kind !== 'head'))
    reader.refuse('a group holds at least one slot', 'a slot', open, '{');
  return { kind: 'group', items, count: readCount(reader) };
}

function readCount(reader: Reader): number {
  const at = reader.at;
  const digits = reader.match(COUNT);
  const count = Number(digits);
  if (!digits) reader.refuse('how many times? a number belongs after "}"', 'a number from 1', at - 1, '}');
  if (count < 1 || count > MOST_REPEATS)
    reader.refuse(`a group is played 1 to ${MOST_REPEATS} times, not ${digits}`, `1 to ${MOST_REPEATS}`, at, digits);
  return count;
}

function readHead(reader: Reader): HeadItem {
  const at = reader.at;
  const text = reader.match(HEAD);
  const example = 'a head such as [4/4:3]: the meter, a colon, slots a beat';
  const parts = /^\[([^:]*):([^:]*)\]$/.exec(text);
  if (!parts) reader.refuse(`this is not a head; ${example} can stand here`, example, at, text || reader.found);
  const meter = readMeter(parts[1]);
  if (!meter.ok) reader.refuse(meter.fault.message, meter.fault.expected, at + 1 + meter.fault.at, meter.fault.found);
  const grid = /^\d$/.test(parts[2]) ? Number(parts[2]) : NaN;
  if (!isGrid(grid))
    reader.refuse(
      `"${parts[2]}" is not a number of slots a beat; 1 to ${MAX_GRID} can stand here`,
      `1 to ${MAX_GRID}`,
      at + parts[1].length + 2,
      parts[2],
    );
  return { kind: 'head', meter: parts[1], grid };
}
