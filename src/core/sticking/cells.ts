import { must } from '../check.ts';
import { checkSticking } from './check-sticking.ts';
import { countItems, expand, type FlatItem } from './expand.ts';
import { type GroupItem, type HoldItem, type Item, LIMITS, type SlotItem, type Sticking } from './types.ts';
import { printItems } from './print.ts';

/**
 * A sticking cut into cells: each repeat of a top-level group is one, and so is what stands between groups. Holds and bar
 * lines that begin a cell stay with the stroke they prolong and the bar they end, in the cell before; a foot that would
 * ring into the next cell stops at its edge.
 * @example
 * cellsOf(parseSticking('{>lR LL R}2 L').sticking).map(printSticking) // → ['>lR LL R', '>lR LL R', 'L']
 */
export function cellsOf(sticking: Sticking): Sticking[] {
  checkSticking(sticking);
  if (!sticking.hands.some((item) => item.kind === 'group')) return [sticking];
  return withFeet(pullBack(cut(sticking.hands)).map(shortened), sticking.feet);
}

const slots = (items: readonly Item[]): number => countItems(items, 'slot', 'hold');
const hasSlots = (items: readonly Item[]): boolean => slots(items) > 0;

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
    } else if (item.kind === 'bar' && cells.length > 0 && !hasSlots(loose)) cells[cells.length - 1].push(item);
    else loose.push(item);
  }
  if (loose.length) cells.push(loose);
  return cells;
}

function pullBack(cells: Item[][]): Item[][] {
  const kept: Item[][] = [];
  for (const cell of cells) {
    const left = [...cell].reverse();
    if (kept.length) kept[kept.length - 1].push(...take(left, leading(expand(cell))));
    const rest = left.reverse();
    if (hasSlots(rest)) kept.push(rest);
    else if (kept.length) kept[kept.length - 1].push(...rest);
  }
  return kept;
}

/** How many items before the first stroke or rest go back to the cell before: up to the last hold or bar line. */
function leading(flat: readonly FlatItem[]): number {
  const first = flat.findIndex((item) => item.kind === 'slot');
  const before = first < 0 ? flat : flat.slice(0, first);
  return before.findLastIndex((item) => item.kind !== 'head') + 1;
}

/** Takes the first so many items, groups written out, from a list in reverse order; whole repeats stay groups. */
function take(reversed: Item[], count: number): Item[] {
  const taken: Item[] = [];
  while (count > 0) {
    const item = reversed.pop();
    must(item !== undefined, 'slots of the feet', 'fewer', 'as many as the hands have');
    if (item.kind !== 'group') {
      taken.push(item);
      count -= 1;
      continue;
    }
    const size = countItems(item.items, 'slot', 'hold', 'bar', 'head');
    const times = Math.min(item.count, Math.floor(count / size));
    const left = item.count - times;
    taken.push(...repeated(item, times));
    count -= times * size;
    const inside = count > 0 && left > 0;
    reversed.push(...repeated(item, inside ? left - 1 : left).toReversed());
    if (inside) reversed.push(...item.items.toReversed());
  }
  return taken;
}

const repeated = (group: GroupItem, count: number): Item[] =>
  count === 0 ? [] : count === 1 ? group.items : [{ ...group, count }];

/** Long rows of holds as groups, where they would print longer than a text may be. */
function shortened(cell: Item[]): Item[] {
  if (printItems(cell).length <= LIMITS.characters) return cell;
  const rows: Item[][] = [];
  cell.forEach((item, i) => {
    if (i > 0 && isHold(item) && isHold(cell[i - 1])) rows[rows.length - 1].push(item);
    else rows.push([item]);
  });
  return rows.flatMap((row): Item[] =>
    row.length > 2 ? [{ kind: 'group', items: [{ kind: 'hold' }], count: row.length }] : row,
  );
}

function withFeet(cells: Item[][], feet: Item[] | undefined): Sticking[] {
  if (!feet) return cells.map((hands) => ({ hands }));
  const left = withoutBars(feet).reverse();
  return cells.map((hands) => {
    const line = take(left, slots(hands));
    return line.some(sounds) ? { hands, feet: withoutRinging(line) } : { hands };
  });
}

const withoutBars = (items: readonly Item[]): Item[] =>
  items
    .filter((item) => item.kind !== 'bar')
    .map((item) => (item.kind === 'group' ? { ...item, items: withoutBars(item.items) } : item));

const REST: SlotItem = { kind: 'slot', parts: [[]] };
const isHold = (item: Item): item is HoldItem => item.kind === 'hold';

/** Holds that begin a line, after the stroke of another cell, as rests. */
function withoutRinging(line: Item[]): Item[] {
  const held = expand(line).findIndex((item) => !isHold(item));
  const left = line.toReversed();
  const ringing = take(left, Math.max(0, held));
  return [...ringing.map(atRest), ...left.reverse()];
}

const atRest = (item: Item): Item => (item.kind === 'group' ? { ...item, items: item.items.map(atRest) } : REST);

const sounds = (item: Item): boolean =>
  item.kind === 'group'
    ? item.items.some(sounds)
    : item.kind === 'slot' && item.parts.some((chord) => chord.length > 0);
