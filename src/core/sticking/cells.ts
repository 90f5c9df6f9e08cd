import { expand, slotCount, slotsOnly, type FlatItem } from './expand.ts';
import type { HoldItem, Item, SlotItem, Sticking } from './types.ts';

/**
 * A sticking cut into cells: each repeat of a top-level group is one, and so is what stands between groups. Holds that
 * begin a cell stay with the stroke they prolong, in the cell before; a foot that would ring into the next cell stops at
 * its edge.
 * @example
 * cellsOf(parseSticking('{>lR LL R}2 L').sticking).map(printSticking) // → ['>lR LL R', '>lR LL R', 'L']
 */
export function cellsOf(sticking: Sticking): Sticking[] {
  if (!sticking.hands.some((item) => item.kind === 'group')) return [sticking];
  return withFeet(pullHolds(cut(sticking.hands)), sticking.feet);
}

const hasSlots = (items: readonly Item[]): boolean => slotCount(items) > 0;

/** Cuts at the edges of groups. Bar lines stay with the cell they end, heads with the cell they begin. */
function cut(items: readonly Item[]): Item[][] {
  const cells: Item[][] = [];
  let loose: Item[] = [];
  for (const item of items) {
    if (item.kind === 'group') {
      const prefix = hasSlots(loose) ? [] : loose;
      if (hasSlots(loose)) cells.push(loose);
      for (let k = 0; k < item.count; k += 1) cells.push(k === 0 ? [...prefix, ...item.items] : [...item.items]);
      loose = [];
    } else if (item.kind === 'bar' && !hasSlots(loose)) cells[cells.length - 1].push(item);
    else loose.push(item);
  }
  if (loose.length) cells.push(loose);
  return cells;
}

function pullHolds(cells: Item[][]): Item[][] {
  const kept: Item[][] = [];
  for (const cell of cells) {
    const flat = expand(cell);
    const held = leadingHolds(flat);
    if (held && kept.length) kept[kept.length - 1].push(...flat.slice(0, held));
    const rest: Item[] = held && kept.length ? flat.slice(held) : cell;
    if (hasSlots(rest)) kept.push(rest);
    else if (kept.length) kept[kept.length - 1].push(...rest);
  }
  return kept;
}

/** How many items stand before the first stroke or rest, if a hold is among them. */
function leadingHolds(flat: FlatItem[]): number {
  const first = flat.findIndex((item) => item.kind === 'slot');
  const before = first < 0 ? flat : flat.slice(0, first);
  return before.some((item) => item.kind === 'hold') ? before.findLastIndex((item) => item.kind === 'hold') + 1 : 0;
}

function withFeet(cells: Item[][], feet: Item[] | undefined): Sticking[] {
  if (!feet) return cells.map((hands) => ({ hands }));
  const slots = slotsOnly(feet);
  let from = 0;
  return cells.map((hands) => {
    const under = slots.slice(from, (from += slotCount(hands)));
    const line = under.map((item, i) => (item.kind === 'hold' && startsHeld(under, i) ? REST : item));
    return line.some(sounds) ? { hands, feet: line } : { hands };
  });
}

const REST: SlotItem = { kind: 'slot', parts: [[]] };
const startsHeld = (line: (SlotItem | HoldItem)[], i: number): boolean =>
  line.slice(0, i + 1).every((item) => item.kind === 'hold');
const sounds = (item: Item): boolean => item.kind === 'slot' && item.parts.some((chord) => chord.length > 0);
