import { expand, slotCount, slotsOnly, type FlatItem } from './expand.ts';
import type { HoldItem, Item, SlotItem, Sticking } from './types.ts';

/**
 * A sticking cut into cells: each repeat of a top-level group is one, and so is what stands between groups. Holds and bar
 * lines that begin a cell stay with the stroke they prolong and the bar they end, in the cell before; a foot that would
 * ring into the next cell stops at its edge.
 * @example
 * cellsOf(parseSticking('{>lR LL R}2 L').sticking).map(printSticking) // → ['>lR LL R', '>lR LL R', 'L']
 */
export function cellsOf(sticking: Sticking): Sticking[] {
  if (!sticking.hands.some((item) => item.kind === 'group')) return [sticking];
  return withFeet(pullBack(cut(sticking.hands)), sticking.feet);
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

function pullBack(cells: Item[][]): Item[][] {
  const kept: Item[][] = [];
  for (const cell of cells) {
    const flat = expand(cell);
    const back = kept.length ? leading(flat) : 0;
    if (back) kept[kept.length - 1].push(...flat.slice(0, back));
    const rest: Item[] = grouped(cell.slice(0, back)) ? flat.slice(back) : cell.slice(back);
    if (hasSlots(rest)) kept.push(rest);
    else if (kept.length) kept[kept.length - 1].push(...rest);
  }
  return kept;
}

const grouped = (items: readonly Item[]): boolean => items.some((item) => item.kind === 'group');

/** How many items before the first stroke or rest go back to the cell before: up to the last hold or bar line. */
function leading(flat: readonly FlatItem[]): number {
  const first = flat.findIndex((item) => item.kind === 'slot');
  const before = first < 0 ? flat : flat.slice(0, first);
  return before.findLastIndex((item) => item.kind !== 'head') + 1;
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
