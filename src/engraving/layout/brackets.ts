import type { Ticks, Timeline, WrittenBar, WrittenFragment } from '../../core/index.ts';
import { columnsOf } from './columns.ts';
import { linesOf, type Layout } from './lines.ts';
import { costOf, fitsWithin, placeNames, type Named, type NameText } from './names.ts';
import { SIZE } from './sizes.ts';
import type { Spacing } from './spacing.ts';

/** The part of a cell's bracket that stands in one fragment, in the fragment's own x. */
export interface BracketPart {
  left: number;
  right: number;
  opens: boolean;
  closes: boolean;
}

/** A row of a name over a fragment, in the fragment's own x, and the layouts in which it is shown, by columns; all where left out. */
export interface BracketName extends NameText {
  size: number;
  at?: number[];
}

/** What stands over one fragment. */
export interface Over {
  parts: BracketPart[];
  names: BracketName[];
}

/** Between two brackets. */
const GAP = 4;
/** How far names may stand out over the start of a line, where clef or meter is below them, and over its end. */
const BEFORE_LINE = 26;
const AFTER_LINE = 6;

/** A named cell in the piece's own x, and how far the bar line beyond its end stands over the edge of its picture. */
interface Cell {
  name: string;
  left: number;
  right: number;
  over: number;
}

/** The named cells of a piece: the bracket of each begins before its first note's grace notes. */
function cellsIn(
  timeline: Timeline,
  names: readonly (string | null)[],
  bars: readonly WrittenBar[],
  { pad, pixels, over }: Spacing,
): Cell[] {
  const reach = new Map(bars.flatMap(columnsOf).map((column) => [column.tick, column.left]));
  const barEnds = new Map(bars.map((bar) => [bar.tick + bar.ticks, over.get(bar.number) ?? 0]));
  const starts = new Set(bars.flatMap((bar) => bar.fragments).map((fragment) => fragment.tick));
  const startOf = (tick: Ticks): number => pad + tick * pixels - (reach.get(tick) ?? SIZE.head) - 1;
  return timeline.cells.flatMap(({ tick, ticks }, i): Cell[] => {
    const name = names[i];
    if (name === null || name === undefined) return [];
    const end = tick + ticks;
    // A bracket that ends with a picture reaches no further: a line may end there.
    const edge = starts.has(end) ? end * pixels : Infinity;
    const right = barEnds.has(end) ? end * pixels - GAP : Math.min(startOf(end) - GAP, edge);
    return [{ name, left: startOf(tick), right, over: barEnds.get(end) ?? 0 }];
  });
}

/** A bracket as one fragment sees it. */
interface Seen extends BracketPart {
  index: number;
}

/** A bracket's parts by fragment. One that ends with its bar ends at the bar line, also where that stands beyond the edge. */
function seenIn(cell: Cell, fragments: readonly WrittenFragment[], { pixels, over }: Spacing): Seen[] {
  return fragments.flatMap((fragment, index) => {
    const start = fragment.tick * pixels;
    const width = fragment.ticks * pixels;
    const edge = width + (fragment.last ? (over.get(fragment.bar) ?? 0) : 0);
    const [left, right] = [cell.left - start, cell.right - start];
    if (right <= 0 || left >= width) return [];
    const closes = right <= width;
    return [{ index, left: Math.max(left, 0), right: closes ? right + cell.over : edge, opens: left >= 0, closes }];
  });
}

/** One line of the page: its fragments by index, and where each begins. */
interface PageLine {
  at: ReadonlyMap<number, number>;
  width: number;
}

function pageLines(layout: Layout, fragments: readonly WrittenFragment[], { pixels, gap }: Spacing): PageLine[] {
  return linesOf(layout, fragments.length).map((indices) => {
    let width = 0;
    const at = new Map<number, number>();
    for (const index of indices) {
      if (at.size && fragments[index].index === 0) width += gap * 10;
      at.set(index, width);
      width += fragments[index].ticks * pixels;
    }
    return { at, width };
  });
}

/** The part of a bracket that stands on a line, if any does. */
function partOn({ at }: PageLine, { name }: Cell, seen: readonly Seen[]): Named | undefined {
  const here = seen.filter(({ index }) => at.has(index));
  if (here.length === 0) return undefined;
  const last = here[here.length - 1];
  return { name, left: at.get(here[0].index)! + here[0].left, right: at.get(last.index)! + last.right, must: false };
}

/** Of a bracket's parts the one that must say its name: the first that has room for it, else the widest. */
function mustSay(parts: readonly Named[]): Named | undefined {
  const widest = parts.toSorted((a, b) => b.right - b.left - (a.right - a.left))[0];
  return parts.find((part) => fitsWithin(part)) ?? widest;
}

/** The parts of all brackets in a layout, line by line. */
function partsOn(lines: readonly PageLine[], cells: readonly Cell[], seen: readonly Seen[][]): Named[][] {
  const byCell = cells.map((cell, i) => lines.map((line) => partOn(line, cell, seen[i])));
  const must = byCell.map((parts) => mustSay(parts.filter((part) => part !== undefined)));
  return lines.map((_, n) =>
    byCell.flatMap((parts, i) => (parts[n] ? [{ ...parts[n], must: parts[n] === must[i] }] : [])),
  );
}

/** A line's names in one layout. */
interface NamedLine {
  line: PageLine;
  columns: number;
  all: Named[];
}

function namedLines(
  cells: readonly Cell[],
  seen: readonly Seen[][],
  layouts: readonly Layout[],
  fragments: readonly WrittenFragment[],
  spacing: Spacing,
): NamedLine[] {
  return layouts.flatMap((layout) => {
    const lines = pageLines(layout, fragments, spacing);
    const parts = partsOn(lines, cells, seen);
    return lines.map((line, n) => ({ line, columns: layout.columns, all: parts[n] }));
  });
}

const reachOf = ({ width }: PageLine): [number, number] => [-BEFORE_LINE, width + AFTER_LINE];
const placedOn = ({ line, all }: NamedLine, size: number): NameText[][] => placeNames(all, reachOf(line), size);

/** The size of a piece's names, one for all of them: the smaller one where they are easier to place with it. */
function sizeFor(lines: readonly NamedLine[]): number {
  const cost = (size: number): number => lines.reduce((sum, line) => sum + costOf(line.all, placedOn(line, size)), 0);
  return cost(SIZE.smallName) < cost(SIZE.name) ? SIZE.smallName : SIZE.name;
}

/** The fragment of a line that an x is in, and the x in it; what stands out over an end of the line is in its last one. */
function homeOf({ at }: PageLine, x: number): [index: number, x: number] {
  const [index, start] = [...at].findLast(([, from]) => from <= x) ?? [...at][0];
  return [index, x - start];
}

/** The names of all layouts by fragment, each once, with the layouts it is shown in. */
function namesByFragment(lines: readonly NamedLine[], layouts: number): Map<number, BracketName[]> {
  const size = sizeFor(lines);
  const found = new Map<string, { index: number; name: BracketName; at: number[] }>();
  for (const line of lines)
    for (const text of placedOn(line, size).flat()) {
      const [index, x] = homeOf(line.line, text.x);
      const key = `${index}/${x.toFixed(1)}/${text.row}/${text.text}`;
      const one = found.get(key) ?? { index, name: { ...text, x, size }, at: [] };
      one.at.push(line.columns);
      found.set(key, one);
    }
  const all = [...found.values()].map(({ index, name, at }) => ({
    index,
    name: at.length < layouts ? { ...name, at } : name,
  }));
  return new Map([...Map.groupBy(all, ({ index }) => index)].map(([index, own]) => [index, own.map((o) => o.name)]));
}

/** Brackets of a piece and their names, fragment by fragment. A cell without a name has none. */
export function bracketsOf(
  timeline: Timeline,
  names: readonly (string | null)[],
  bars: readonly WrittenBar[],
  spacing: Spacing,
  layouts: readonly Layout[],
): Over[] {
  const fragments = bars.flatMap((bar) => bar.fragments);
  const cells = cellsIn(timeline, names, bars, spacing);
  const seen = cells.map((cell) => seenIn(cell, fragments, spacing));
  const texts = namesByFragment(namedLines(cells, seen, layouts, fragments, spacing), layouts.length);
  return fragments.map((_, i) => ({
    parts: seen.flatMap((parts) => parts.filter(({ index }) => index === i)),
    names: texts.get(i) ?? [],
  }));
}
