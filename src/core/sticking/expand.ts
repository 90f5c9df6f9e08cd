import { isObject, must } from '../check.ts';
import { checkItems } from './check-sticking.ts';
import type { BarLineItem, HeadItem, HoldItem, Item, SlotItem } from './types.ts';

/** An item that is no group. */
export type FlatItem = SlotItem | HoldItem | BarLineItem | HeadItem;

/** Items with every group written out. */
export function expand(items: readonly Item[]): FlatItem[] {
  checkItems(items);
  return writtenOut(items);
}

const writtenOut = (items: readonly Item[]): FlatItem[] =>
  items.flatMap((item) => (item.kind === 'group' ? repeat(writtenOut(item.items), item.count) : [item]));

function repeat<T>(items: T[], count: number): T[] {
  return Array.from({ length: count }, () => items).flat();
}

/** How many items of these kinds there are once groups are written out, found without writing them out. */
export function countItems(items: readonly Item[], ...kinds: FlatItem['kind'][]): number {
  let sum = 0;
  for (const item of items) {
    if (item.kind === 'group') sum += item.count * countItems(item.items, ...kinds);
    else if (kinds.includes(item.kind)) sum += 1;
  }
  return sum;
}

/** Slots of a line, groups written out. */
export function slotCount(items: readonly Item[]): number {
  checkItems(items);
  return countItems(items, 'slot', 'hold');
}

/** Whether an item takes up a slot. */
export function isSlot(item: FlatItem): item is SlotItem | HoldItem {
  must(isObject(item), 'item', item, 'an item of a sticking');
  return item.kind === 'slot' || item.kind === 'hold';
}

/** The slots of a line, groups written out, bar lines and heads left out. */
export const slotsOnly = (items: readonly Item[]): (SlotItem | HoldItem)[] => expand(items).filter(isSlot);
