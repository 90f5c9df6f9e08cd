import { must } from '../check.ts';
import { checkItem, checkItems, checkSticking } from './check-sticking.ts';
import type { Chord, GroupItem, Item, SlotItem, Sticking, StrokeText } from './types.ts';

const at = (surface?: string): string => (surface ? `@${surface}` : '');
const isLetter = (text: string): boolean => /^[A-Za-z]/.test(text);

/** Joins pieces, with a colon where a surface's name would run into the letter after it. */
function join(pieces: string[]): string {
  return pieces.reduce((text, piece) => text + (/@\w+$/.test(text) && isLetter(piece) ? ':' : '') + piece, '');
}

function printStroke(stroke: StrokeText): string {
  const graces = (stroke.graces ?? []).map((g) => g.hand.toLowerCase() + at(g.surface));
  const body = join([...graces, stroke.limb + (stroke.buzz ? 'z' : '') + at(stroke.surface)]);
  return stroke.ghost ? `(${body})` : (stroke.accent ?? '') + body;
}

const printChord = (chord: Chord): string => (chord.length ? chord.map(printStroke).join('+') : '-');

/** One slot as text. */
export function printSlot(slot: SlotItem): string {
  checkItem(slot);
  must(slot.kind === 'slot', 'kind of item', slot.kind, 'a slot');
  return slotText(slot);
}

const slotText = (slot: SlotItem): string => join(slot.parts.map(printChord));

const printGroup = (group: GroupItem): string => `{${itemsText(group.items)}}${group.count}`;

function printItem(item: Item): string {
  switch (item.kind) {
    case 'slot':
      return slotText(item);
    case 'hold':
      return '_';
    case 'bar':
      return '|';
    case 'head':
      return `[${item.meter}:${item.grid}]`;
    case 'group':
      return printGroup(item);
  }
}

/** Items as text, single spaces between them. */
export function printItems(items: readonly Item[]): string {
  checkItems(items);
  return itemsText(items);
}

const itemsText = (items: readonly Item[]): string => items.map(printItem).join(' ');

/**
 * The normal form of a sticking: single spaces, chords in the order R L K H, no needless colon.
 * @example
 * printSticking(parseSticking('K+L  >lR@snare:LL').sticking) // → 'L+K >lR@snare:LL'
 */
export function printSticking(sticking: Sticking): string {
  checkSticking(sticking);
  const hands = itemsText(sticking.hands);
  return sticking.feet ? `${hands}\nfeet: ${itemsText(sticking.feet)}` : hands;
}
