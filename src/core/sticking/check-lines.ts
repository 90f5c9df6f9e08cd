import { isHand } from './limbs.ts';
import { slotNames } from '../time/slot-names.ts';
import { slotsOf } from '../time/meter.ts';
import { countItems, expand, isSlot, slotCount, slotsOnly, type FlatItem } from './expand.ts';
import { type Chord, type HeadItem, type HoldItem, type Item, LIMITS, type SlotItem } from './types.ts';
import type { Places } from './parse-line.ts';
import type { Reader } from './reader.ts';

const place = (places: Places, item: Item): number => places.get(item) ?? 0;

/** Refuses a line that is longer than the limits, before its groups are written out. */
export function checkSize(reader: Reader, items: Item[]): void {
  const slots = slotCount(items);
  if (slots > LIMITS.slots)
    reader.refuse(
      `${slots} slots are too many; a sticking has at most ${LIMITS.slots}`,
      `at most ${LIMITS.slots} slots`,
      0,
      String(slots),
    );
  const edges = Math.max(countItems(items, 'bar'), countItems(items, 'head'));
  if (edges > LIMITS.bars) refuseBars(reader, edges);
}

function refuseBars(reader: Reader, bars: number): never {
  return reader.refuse(
    `${bars} bars are too many; a sticking has at most ${LIMITS.bars}`,
    `at most ${LIMITS.bars} bars`,
    0,
    String(bars),
  );
}

/** Where the walk along a line stands. */
interface Walk {
  slot: number;
  /** First slot of the bar that a bar line would end. */
  barFrom: number;
  head?: HeadItem;
  headFrom: number;
  bars: number;
  rang: boolean;
  last?: FlatItem['kind'];
}

/** Walks the hands' line: holds, bar lines and heads where they may stand. Returns the slots after which a bar line stands. */
export function checkHands(reader: Reader, items: Item[], places: Places): Set<number> {
  const walk: Walk = { slot: 0, barFrom: 0, headFrom: 0, bars: 0, rang: false };
  const lines = new Set<number>();
  for (const item of expand(items)) {
    const at = place(places, item);
    if (item.kind === 'head') checkHead(reader, walk, item, at);
    else if (item.kind === 'bar') lines.add(checkBarLine(reader, walk, at));
    else walk.rang = checkRinging(reader, walk.rang, item, at);
    if (isSlot(item)) walk.slot += 1;
    walk.last = item.kind;
  }
  closeBar(reader, walk, 0);
  if (walk.bars > LIMITS.bars) refuseBars(reader, walk.bars);
  return lines;
}

function checkRinging(reader: Reader, rang: boolean, item: SlotItem | HoldItem, at: number): boolean {
  if (item.kind === 'slot') return item.parts[item.parts.length - 1].length > 0;
  if (!rang)
    reader.refuse(
      '"_" lets the stroke before ring on; none rings here, so "-" can stand here',
      '"-" or a stroke',
      at,
      '_',
    );
  return true;
}

const barSlots = (head: HeadItem): number => slotsOf(head.meter, head.grid);

/** Slots since the head that stand over whole bars. */
const over = (walk: Walk): number => (walk.head ? (walk.slot - walk.headFrom) % barSlots(walk.head) : 0);

function closeBar(reader: Reader, walk: Walk, at: number): void {
  const slots = walk.slot - walk.barFrom;
  if (slots === 0) return;
  walk.bars += walk.head ? Math.ceil(slots / barSlots(walk.head)) : 1;
  const bounded = !walk.head && walk.bars > 1;
  if (bounded && slots > LIMITS.barSlots) refuseLongBar(reader, slots, at);
  walk.barFrom = walk.slot;
}

function refuseLongBar(reader: Reader, slots: number, at: number): never {
  return reader.refuse(
    `${slots} slots in one bar are too many; a bar has at most ${LIMITS.barSlots}`,
    `a bar line within ${LIMITS.barSlots} slots`,
    at,
    String(slots),
  );
}

function checkBarLine(reader: Reader, walk: Walk, at: number): number {
  if (walk.slot === walk.barFrom)
    reader.refuse('this bar is empty; slots belong before the bar line', 'a slot', at, '|');
  checkBarEnd(reader, walk, at, '|', 'a bar line stands');
  if (!walk.head && walk.slot - walk.barFrom > LIMITS.barSlots) refuseLongBar(reader, walk.slot - walk.barFrom, at);
  closeBar(reader, walk, at);
  return walk.slot;
}

function checkBarEnd(reader: Reader, walk: Walk, at: number, found: string, what: string): void {
  const left = over(walk);
  if (!walk.head || left === 0) return;
  const { one, many } = slotNames(walk.head.meter, walk.head.grid);
  const more = barSlots(walk.head) - left;
  reader.refuse(
    `${what} at a bar's end; here ${left === 1 ? 'is' : 'are'} ${left} of ${barSlots(walk.head)} ${many}`,
    `${more} more ${more === 1 ? one : many}`,
    at,
    found,
  );
}

function checkHead(reader: Reader, walk: Walk, head: HeadItem, at: number): void {
  if (walk.last === 'head') reader.refuse('two heads follow each other; slots belong between them', 'a slot', at, '[');
  checkBarEnd(reader, walk, at, '[', 'a head stands');
  closeBar(reader, walk, at);
  walk.head = head;
  walk.headFrom = walk.slot;
}

const FEET = 'K, H, a rest "-" and "_"';

/** Checks the feet's line against the hands' line: limbs, length, bar lines, and no limb twice at one tick. */
export function checkFeet(reader: Reader, hands: Item[], feet: Item[], places: Places, lines: Set<number>): void {
  let slot = 0;
  let rang = false;
  const total = slotCount(hands);
  for (const item of expand(feet)) {
    const at = place(places, item);
    if (item.kind === 'head')
      reader.refuse(`a head stands in the hands' line; the feet's line takes ${FEET}`, FEET, at, '[');
    else if (item.kind === 'bar') checkFeetBar(reader, lines, slot, at);
    else {
      if (slot === total) refuseLength(reader, slotCount(feet), total, at);
      if (item.kind === 'slot') checkFeetLimbs(reader, item, at);
      rang = checkRinging(reader, rang, item, at);
      slot += 1;
    }
  }
  if (slot !== total) refuseLength(reader, slot, total, reader.end - 1);
  checkClash(reader, hands, feet, places);
}

function checkFeetBar(reader: Reader, lines: Set<number>, slot: number, at: number): void {
  if (!lines.has(slot))
    reader.refuse("a bar line in the feet's line stands under one of the hands' line", 'a slot', at, '|');
}

const inSlots = (n: number): string => `${n} ${n === 1 ? 'slot' : 'slots'}`;

function refuseLength(reader: Reader, feet: number, hands: number, at: number): never {
  return reader.refuse(
    `the feet's line has ${inSlots(feet)} and the hands' line ${hands}; they run slot by slot`,
    inSlots(hands),
    at,
    inSlots(feet),
  );
}

function checkFeetLimbs(reader: Reader, item: SlotItem, at: number): void {
  const hand = item.parts.flat().find((s) => isHand(s.limb));
  if (hand) reader.refuse(`"${hand.limb}" is a hand; the feet's line takes ${FEET}`, FEET, at, hand.limb);
}

function checkClash(reader: Reader, hands: Item[], feet: Item[], places: Places): void {
  const over = slotsOnly(hands);
  slotsOnly(feet).forEach((item, i) => {
    const above = over[i];
    if (item.kind !== 'slot' || above.kind !== 'slot') return;
    const limb = sharedLimb(above.parts, item.parts);
    if (limb)
      reader.refuse(
        `"${limb}" is already struck here in the hands' line; each limb can strike once at a time`,
        'a rest "-" or the other foot',
        place(places, item),
        limb,
      );
  });
}

/** A limb that strikes at one moment in both lines: part p of P and q of Q fall together where p·Q = q·P. */
function sharedLimb(a: Chord[], b: Chord[]): string | undefined {
  for (const [p, above] of a.entries())
    for (const [q, below] of b.entries())
      if (p * b.length === q * a.length) {
        const shared = below.find((s) => above.some((t) => t.limb === s.limb));
        if (shared) return shared.limb;
      }
  return undefined;
}
