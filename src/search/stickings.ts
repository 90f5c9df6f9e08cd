/** What contains a sticking, and where in it. */
import { findSticking, saySlot, slotCount, slotsOf, slotsOnly } from '../core/index.ts';
import type { CountSystem, Match, Sticking } from '../core/index.ts';
import type { Filters } from './filters.ts';
import { slotsOfBar, type BarSlots, type StickingBar, type StickingEntry } from './sticking-index.ts';

/** How a sticking is looked for; the other hand is always let in. */
export interface StickingOptions {
  /** Also from any of its slots on, and over the end of a bar to its beginning, as it is played when it repeats. */
  turned?: boolean;
  filters?: Filters;
  /** In which counts are said. */
  counting?: CountSystem;
}

/** Where in an entry a sticking was found. */
export interface StickingPlace {
  /** The entry is this sticking and nothing else, once or over and over, by either hand. */
  whole: boolean;
  /** The text of the bar it was found in, cells that repeat in curly brackets. */
  text: string;
  /** Which of the entry's figures, from 1, and how many there are. */
  figure: number;
  figures: number;
  /** The cell that holds all of it, where it has a name. */
  cell?: string;
  /** The bar of the figure, from 1, where it has more than one; 0 is a pickup. */
  bar?: number;
  /** The count it begins on, as a teacher says it: `the e of 2`. */
  count?: string;
  /** Led by the other hand. */
  mirrored: boolean;
  /** Turned round, or over the end of the bar to its beginning. */
  turned: boolean;
}

/** An entry that was found, and where. */
export interface StickingFound extends Pick<StickingEntry, 'url' | 'title' | 'kind'> {
  place: StickingPlace;
}

/**
 * What contains a sticking: as written before turned round, before the other hand; then what is that sticking and nothing
 * else before what has more in it; on the snare before round the kit; the shorter first.
 */
export function searchStickings(
  entries: readonly StickingEntry[],
  sought: Sticking,
  options: StickingOptions = {},
): StickingFound[] {
  const filters = options.filters ?? {};
  return entries
    .filter((entry) => passes(entry, filters))
    .flatMap((entry) => {
      const hits = entry.bars.flatMap((bar, index) => hitIn(bar, index, sought, options, filters));
      const [best] = hits.sort((a, b) => a.rank - b.rank);
      return best ? [{ entry, ...best }] : [];
    })
    .sort((a, b) => a.rank - b.rank || named(a.entry, a.hit) - named(b.entry, b.hit) || a.length - b.length)
    .map(({ entry, hit }) => {
      const { url, title, kind, bars } = entry;
      return { url, title, kind, place: placeOf(bars, hit, options.counting) };
    });
}

/** What has this sticking as its name comes first: rudiments, then cells. */
const named = ({ kind }: StickingEntry, { whole }: Hit): number => (whole ? NAMED.indexOf(kind) : 0);
const NAMED: readonly StickingEntry['kind'][] = ['rudiment', 'cell', 'exercise', 'lesson'];

function passes({ kind, part, rudiments = [] }: StickingEntry, filters: Filters): boolean {
  return (
    (!filters.kind || filters.kind === kind) &&
    (!filters.part || filters.part === String(part)) &&
    (!filters.rudiment || rudiments.includes(filters.rudiment))
  );
}

/** A bar in which a sticking was found. */
interface Hit {
  bar: StickingBar;
  index: number;
  match: Match;
  whole: boolean;
  turned: boolean;
  /** How many slots were looked for. */
  size: number;
}

/** What is found in a bar: none or one, with its rank (the lower, the nearer) and the length of the bar. */
function hitIn(bar: StickingBar, index: number, sought: Sticking, { turned = false }: StickingOptions, only: Filters) {
  const { slots, grids } = slotsOfBar(bar);
  if (only.grid && !grids.includes(Number(only.grid))) return [];
  const size = slotCount(sought.hands);
  // Known before thousands of slots are written out for every bar of the site.
  if (size > slots.length) return [];
  const match = findSticking(sought, { hands: slots }, { mirrored: true, rotated: turned, repeats: turned });
  if (!match) return [];
  const whole = isWhole(slots, sought);
  const isTurned = match.rotation > 0 || match.slot + size > slots.length;
  const moved = !hasSurfaces(slotsOnly(sought.hands)) && hasSurfaces(slots.slice(match.slot, match.slot + size));
  const rank = (match.mirrored ? 8 : 0) + (isTurned ? 4 : 0) + (whole ? 0 : 2) + (moved ? 1 : 0);
  return [{ hit: { bar, index, match, whole, turned: isTurned, size }, rank, length: slots.length }];
}

/** Whether any stroke has its surface written. */
const hasSurfaces = (slots: BarSlots['slots']): boolean =>
  slots.some((slot) => slot.kind === 'slot' && slot.parts.flat().some(({ surface }) => surface !== undefined));

/** Whether slots are a sticking once or over and over, each time led by either hand. */
function isWhole(slots: BarSlots['slots'], sought: Sticking): boolean {
  const size = slotCount(sought.hands);
  const times = Array.from({ length: slots.length / size }, (_, time) => slots.slice(time * size, (time + 1) * size));
  return (
    slots.length % size === 0 &&
    times.every((hands) => findSticking(sought, { hands }, { mirrored: true })?.rotation === 0)
  );
}

function placeOf(bars: readonly StickingBar[], hit: Hit, counting: CountSystem | undefined): StickingPlace {
  const { bar, index, match, whole, turned } = hit;
  const cell = cellAround(hit);
  return {
    whole,
    text: textOf(bar),
    figure: index + 1,
    figures: bars.length,
    ...(cell !== undefined && { cell }),
    ...countAt(bar, match.slot, counting),
    mirrored: match.mirrored,
    turned,
  };
}

/** The name of the cell that holds all of what was found. */
function cellAround({ bar, match, size }: Hit): string | undefined {
  const { starts, slots } = slotsOfBar(bar);
  const cell = starts.findLastIndex((start) => start <= match.slot);
  const end = starts[cell + 1] ?? slots.length;
  return match.slot + size <= end ? bar.cells[cell]?.name : undefined;
}

/** The bar and the count of a slot; nothing where the bar does not say its meter, or changes it. */
function countAt(bar: StickingBar, slot: number, counting?: CountSystem): Pick<StickingPlace, 'bar' | 'count'> {
  const { meter, grid, pickup = 0 } = bar;
  const { slots, changes } = slotsOfBar(bar);
  if (meter === undefined || grid === undefined || changes) return {};
  const size = slotsOf(meter, grid);
  const place = slot - pickup;
  const number = Math.floor(place / size) + 1;
  const count = saySlot(meter, grid, place - (number - 1) * size, counting);
  return slots.length - pickup > size || pickup > 0 ? { bar: number, count } : { count };
}

/** The text of a bar, cells that come again at once in curly brackets: `{R L L}5 K`. */
function textOf({ cells }: StickingBar): string {
  const runs: { text: string; times: number }[] = [];
  for (const { text } of cells) {
    const last = runs.at(-1);
    if (last?.text === text) last.times += 1;
    else runs.push({ text, times: 1 });
  }
  return runs.map(({ text, times }) => (times > 1 ? `{${text}}${times}` : text)).join(' ');
}
