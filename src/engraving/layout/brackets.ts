import type { Ticks, Timeline } from '../../core/index.ts';
import type { WrittenBar, WrittenFragment } from '../rhythm/voice.ts';
import { columnsOf } from './columns.ts';
import type { Layout } from './lines.ts';
import { fittedName, nameSize, wholeNames, type Named } from './names.ts';
import { SIZE } from './sizes.ts';
import type { Spacing } from './spacing.ts';

/** The part of a cell's bracket that stands in one fragment, in the fragment's own x. */
export interface BracketPart {
  left: number;
  right: number;
  opens: boolean;
  closes: boolean;
  names: BracketName[];
}

/** A name over a bracket, and the layouts in which it is shown there, by columns; nothing for all of them. */
export interface BracketName {
  text: string;
  size: number;
  x: number;
  at?: number[];
}

/** Between two brackets. */
const GAP = 4;
/** How far a name may stand out over its bracket, and where the bracket ends with the bar. */
const OVERHANG = 14;
const OVERHANG_AT_BAR_LINE = 12;

/** Brackets of the named cells, in the piece's own x: each begins before its first note's grace notes. */
function bracketsInPiece(
  timeline: Timeline,
  names: readonly (string | null)[],
  bars: readonly WrittenBar[],
  { pad, pixels, over }: Spacing,
): Named[] {
  const reach = new Map(bars.flatMap(columnsOf).map((column) => [column.tick, column.left]));
  const barEnds = new Map(bars.map((bar) => [bar.tick + bar.ticks, over.get(bar.number) ?? 0]));
  const startOf = (tick: Ticks): number => pad + tick * pixels - (reach.get(tick) ?? SIZE.head) - 1;
  return timeline.cells.flatMap(({ tick, ticks }, i): Named[] => {
    const name = names[i];
    if (name === null || name === undefined) return [];
    const end = tick + ticks;
    const atBarLine = barEnds.has(end);
    const right = (atBarLine ? end * pixels : startOf(end)) - GAP;
    return [
      {
        left: startOf(tick),
        right,
        name,
        overhang: atBarLine ? OVERHANG_AT_BAR_LINE : OVERHANG,
        over: barEnds.get(end) ?? 0,
      },
    ];
  });
}

/** A bracket as one fragment sees it. */
interface Seen {
  fragment: WrittenFragment;
  index: number;
  left: number;
  right: number;
  width: number;
  over: number;
}

function seenIn(named: Named, fragments: readonly WrittenFragment[], { pixels }: Spacing): Seen[] {
  return fragments.flatMap((fragment, index) => {
    const start = fragment.tick * pixels;
    const width = fragment.ticks * pixels;
    const seen = {
      fragment,
      index,
      left: named.left - start,
      right: named.right - start,
      width,
      over: named.over ?? 0,
    };
    return seen.right > 0 && seen.left < width ? [seen] : [];
  });
}

/** A bracket that ends with its bar ends at the bar line, also where that stands beyond the edge. */
const endsOf = ({ left, right, width, over }: Seen): [number, number] => [
  Math.max(left, 0),
  right <= width ? right + over : width,
];
const widthOf = (seen: Seen): number => endsOf(seen)[1] - endsOf(seen)[0];

/** The name over a part of a bracket that a line breaks: where it fits, and shortened over the widest part. */
function partName(seen: Seen, widest: boolean, name: string, size: number): string {
  const own = fittedName(name, widthOf(seen) - GAP, size);
  return own === name || widest ? own : '';
}

/** What a bracket is called, whole and not, and the layouts in which a line does not break it, and does. */
interface Naming {
  whole: string;
  name: string;
  size: number;
  unbroken: Layout[];
  broken: Layout[];
}

/** The name over a whole bracket, in the fragment its middle is in, and over its parts where a line breaks it. */
function namesOf(seen: Seen, widest: boolean, { whole, name, size, unbroken, broken }: Naming): BracketName[] {
  const middle = (seen.left + seen.right) / 2;
  const columns = (layouts: Layout[]): number[] => layouts.map((layout) => layout.columns);
  const all: BracketName[] = [];
  if (whole && unbroken.length && middle >= 0 && middle < seen.width)
    all.push({ text: whole, size, x: middle, at: broken.length ? columns(unbroken) : undefined });
  const own = broken.length ? partName(seen, widest, name, size) : '';
  const [from, to] = endsOf(seen);
  if (own) all.push({ text: own, size, x: (from + to) / 2, at: columns(broken) });
  return all;
}

function partOf(seen: Seen, names: BracketName[]): BracketPart {
  const [left, right] = endsOf(seen);
  return { left, right, opens: seen.left >= 0, closes: seen.right <= seen.width, names };
}

/** Brackets of a piece by fragment. A cell without a name has none. */
export function bracketsOf(
  timeline: Timeline,
  names: readonly (string | null)[],
  bars: readonly WrittenBar[],
  spacing: Spacing,
  layouts: readonly Layout[],
): Map<WrittenFragment, BracketPart[]> {
  const fragments = bars.flatMap((bar) => bar.fragments);
  const all = bracketsInPiece(timeline, names, bars, spacing);
  const size = nameSize(all);
  const whole = wholeNames(all, size);
  const parts = new Map(fragments.map((fragment) => [fragment, [] as BracketPart[]]));
  all.forEach((named, i) => {
    const seen = seenIn(named, fragments, spacing);
    const isBroken = ({ starts }: Layout): boolean => seen.slice(1).some(({ index }) => starts.has(index));
    const broken = layouts.filter(isBroken);
    const unbroken = layouts.filter((layout) => !isBroken(layout));
    const most = Math.max(...seen.map(widthOf));
    for (const one of seen) {
      const naming = { whole: whole[i], name: named.name, size, unbroken, broken };
      const over = namesOf(one, widthOf(one) === most, naming);
      parts.get(one.fragment)!.push(partOf(one, over));
    }
  });
  return parts;
}
