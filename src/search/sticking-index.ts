/** The index of stickings: what is in it, and how it travels. */
import { expand, isSlot, parseSticking } from '../core/index.ts';
import type { FlatItem, HoldItem, SlotItem } from '../core/index.ts';
import type { KINDS } from './filters.ts';

/** A bar, or the bars of one phrase, as cells in order; a bar without named cells is one cell without a name. */
export interface StickingBar {
  cells: { text: string; name?: string }[];
  meter?: string;
  /** Slots a beat. */
  grid?: number;
  /** Slots before bar 1. */
  pickup?: number;
}

/** What can be found by its sticking: where it stands, what it is called, its bars. */
export interface StickingEntry {
  /** Below the base path. */
  url: string;
  title: string;
  kind: (typeof KINDS)[number] | 'cell';
  /** The part of the course it belongs to. */
  part?: number;
  /** The slugs of the rudiments it is about. */
  rudiments?: string[];
  bars: StickingBar[];
}

/** A bar as it travels: numbers in the lists of meters and cells; a text of its own as it is. */
type PackedBar = [meter: number, grid: number, pickup: number, ...cells: (number | string)[]];

/** The index as it is stored: a line of fields for each entry, what is said often as numbers. */
export interface StickingIndex {
  kinds: string[];
  meters: string[];
  cells: [name: string, text: string][];
  entries: [kind: number, url: string, title: string, part: number, rudiments: string, ...bars: PackedBar[]][];
}

/** Where the index stands below the base path. */
export const STICKING_INDEX = 'stickings.json';

/** Numbers things in the order they come. */
function numbering<T>(keyOf: (thing: T) => string): { list: T[]; of: (thing: T) => number } {
  const list: T[] = [];
  const known = new Map<string, number>();
  const add = (thing: T, key: string) => (known.set(key, list.length), list.push(thing) - 1);
  return { list, of: (thing) => known.get(keyOf(thing)) ?? add(thing, keyOf(thing)) };
}

/** Packs entries; a bar that an entry has twice is kept once. */
export function packStickings(entries: readonly StickingEntry[]): StickingIndex {
  const kinds = numbering<string>(String);
  const meters = numbering<string>(String);
  const cells = numbering<[string, string]>((cell) => cell.join('\n'));
  const bar = ({ cells: parts, meter, grid = 0, pickup = 0 }: StickingBar): PackedBar => [
    meter === undefined ? -1 : meters.of(meter),
    grid,
    pickup,
    ...parts.map(({ name, text }) => (name === undefined ? text : cells.of([name, text]))),
  ];
  const packed = entries.map(
    ({ kind, url, title, part = 0, rudiments = [], bars }): StickingIndex['entries'][number] => [
      kinds.of(kind),
      url,
      title,
      part,
      rudiments.join(' '),
      ...different(bars.map(bar)),
    ],
  );
  return { kinds: kinds.list, meters: meters.list, cells: cells.list, entries: packed };
}

const different = (bars: PackedBar[]): PackedBar[] => [
  ...new Map(bars.map((bar) => [JSON.stringify(bar), bar])).values(),
];

/** The entries of a packed index. */
export function unpackStickings({ kinds, meters, cells, entries }: StickingIndex): StickingEntry[] {
  const cellOf = (cell: number | string) =>
    typeof cell === 'string' ? { text: cell } : { name: cells[cell][0], text: cells[cell][1] };
  const bar = ([meter, grid, pickup, ...parts]: PackedBar): StickingBar => ({
    cells: parts.map(cellOf),
    ...(meter >= 0 && { meter: meters[meter] }),
    ...(grid > 0 && { grid }),
    ...(pickup > 0 && { pickup }),
  });
  return entries.map(([kind, url, title, part, rudiments, ...bars]) => ({
    kind: kinds[kind] as StickingEntry['kind'],
    url,
    title,
    ...(part > 0 && { part }),
    ...(rudiments && { rudiments: rudiments.split(' ') }),
    bars: bars.map(bar),
  }));
}

/** What a bar's text says when it is read. */
export interface BarSlots {
  /** What the hands play, slot by slot. */
  slots: (SlotItem | HoldItem)[];
  /** On which slot each cell begins. */
  starts: number[];
  /** The subdivisions it is in; more than one where it changes on the way. */
  grids: number[];
  /** Whether its text says a meter or a subdivision of its own. */
  changes: boolean;
}

const read = new WeakMap<StickingBar, BarSlots>();

/** The slots of a bar, read once. A text that does not parse has none; the content checker has told of it. */
export function slotsOfBar(bar: StickingBar): BarSlots {
  const known = read.get(bar) ?? readBar(bar);
  read.set(bar, known);
  return known;
}

function readBar({ cells, grid }: StickingBar): BarSlots {
  const lines = cells.map(({ text }) => itemsOf(text));
  const slots = lines.map((line) => line.filter(isSlot));
  let next = 0;
  const starts = slots.map((line) => (next += line.length) - line.length);
  const heads = lines.flat().flatMap((item) => (item.kind === 'head' ? [item.grid] : []));
  return { slots: slots.flat(), starts, grids: [...(grid ? [grid] : []), ...heads], changes: heads.length > 0 };
}

function itemsOf(text: string): FlatItem[] {
  const answer = parseSticking(text);
  return answer.ok ? expand(answer.sticking.hands) : [];
}

/** Loads the index from below a base path; undefined where it is not there. */
export async function loadStickings(base: string, get: typeof fetch = fetch): Promise<StickingEntry[] | undefined> {
  try {
    const answer = await get(`${base.replace(/\/$/, '')}/${STICKING_INDEX}`);
    return answer.ok ? unpackStickings((await answer.json()) as StickingIndex) : undefined;
  } catch {
    return undefined;
  }
}
