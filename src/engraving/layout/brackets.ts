import type { Ticks, Timeline } from '../../core/index.ts';
import type { Layout } from './lines.ts';
import { SIZE, textWidth } from './sizes.ts';
import type { WrittenBar, WrittenFragment } from '../rhythm/voice.ts';
import { columnsOf } from './columns.ts';
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
  x: number;
  at?: number[];
}

interface Span {
  tick: Ticks;
  end: Ticks;
  name: string;
}

/** Between two brackets. */
const GAP = 4;

/** A name that fits, or its beginning, or nothing where four letters do not fit. */
function fitted(name: string, room: number): string {
  if (textWidth(name, SIZE.name) <= room) return name;
  const letters = Math.floor(room / textWidth('m', SIZE.name)) - 1;
  return letters >= 4 ? `${name.slice(0, letters).trimEnd()}…` : '';
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
  const reach = new Map(bars.flatMap(columnsOf).map((column) => [column.tick, column.left]));
  const spans = timeline.cells.flatMap(({ tick, ticks }, i): Span[] =>
    names[i] === null || names[i] === undefined ? [] : [{ tick, end: tick + ticks, name: names[i] }],
  );
  const parts = new Map(fragments.map((fragment) => [fragment, [] as BracketPart[]]));
  const edges = edgesOf(bars, reach, spacing);
  for (const span of spans)
    for (const [fragment, part] of partsOf(span, fragments, edges, layouts)) parts.get(fragment)!.push(part);
  return parts;
}

/** How a fragment sees a span: its left and right end in the fragment's own x, beyond its edges too. */
type Edges = (span: Span, fragment: WrittenFragment) => { left: number; right: number; width: number };

function edgesOf(bars: readonly WrittenBar[], reach: Map<Ticks, number>, spacing: Spacing): Edges {
  const barEnds = new Set(bars.map((bar) => bar.tick + bar.ticks));
  return (span, fragment) => {
    const x = (tick: Ticks): number => spacing.pad + (tick - fragment.tick) * spacing.pixels;
    const left = x(span.tick) - (reach.get(span.tick) ?? SIZE.head) - 1;
    const right = barEnds.has(span.end)
      ? x(span.end) - spacing.pad - GAP
      : x(span.end) - (reach.get(span.end) ?? SIZE.head) - 1 - GAP;
    return { left, right, width: fragment.ticks * spacing.pixels };
  };
}

function partsOf(
  span: Span,
  fragments: readonly WrittenFragment[],
  edges: Edges,
  layouts: readonly Layout[],
): [WrittenFragment, BracketPart][] {
  const seen = fragments.flatMap((fragment, index) => {
    const { left, right, width } = edges(span, fragment);
    return right > 0 && left < width ? [{ fragment, index, left, right, width }] : [];
  });
  const whole = layouts.filter(({ starts }) => !seen.slice(1).some(({ index }) => starts.has(index)));
  const everywhere = whole.length === layouts.length;
  return seen.map(({ fragment, left, right, width }, i) => {
    const first = Math.max(left, 0);
    const last = Math.min(right, width);
    const opens = left >= 0;
    const closes = right <= width;
    const part: BracketPart = { left: first, right: last, opens, closes, names: [] };
    const middle = (left + right) / 2;
    const isHome = middle >= 0 && (middle < width || i === seen.length - 1) && (i === 0 || middle >= 0);
    const full = fitted(span.name, right - left - 4);
    if (isHome && full)
      part.names.push({ text: full, x: middle, at: everywhere ? undefined : whole.map((l) => l.columns) });
    const own = everywhere ? '' : fitted(span.name, last - first - 4);
    const broken = layouts.filter((l) => !whole.includes(l)).map((l) => l.columns);
    if (own) part.names.push({ text: own, x: (first + last) / 2, at: broken });
    return [fragment, part];
  });
}
