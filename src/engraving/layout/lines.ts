import type { Fragment, Ticks } from '../../core/index.ts';

/** A bar as its fragments' widths in columns of the page's grid. */
interface BarWidths {
  pickup: boolean;
  widths: number[];
}

/** One way to break the piece into lines. */
export interface Layout {
  columns: number;
  kind: 'least' | 'fits' | 'hangs' | 'pairs';
  /** Fragments, counted over the piece, that begin a line. */
  starts: Set<number>;
}

/** The most columns a line may have. */
export const MAX_COLUMNS = 16;
/** Two bars of more tens of pixels than this do not share a line: no page of the site is wide enough for them (ours). */
const MOST_PAIR = 92;

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Where lines begin in a bar when a line holds so many columns, by index in the bar. */
function breaks(widths: readonly number[], columns: number): number[] {
  let used = Infinity;
  return widths.flatMap((width, i) => {
    const fits = used + width <= columns;
    used = fits ? used + width : width;
    return fits ? [] : [i];
  });
}

/** The useful numbers of columns for a bar: for one line, two lines … the fewest that do. */
function useful(widths: readonly number[]): number[] {
  const least = Math.max(...widths);
  const all: number[] = [];
  for (let columns = sum(widths), lines = Infinity; columns >= least; columns -= 1) {
    const needed = breaks(widths, columns).length;
    if (needed === lines) all.pop();
    all.push(columns);
    lines = needed;
  }
  return all;
}

function startsOf(bars: readonly BarWidths[], columns: number, kind: Layout['kind']): Set<number> {
  const starts = new Set<number>();
  let before = 0;
  bars.forEach((bar, i) => {
    const follows = (kind === 'hangs' && i === 1) || (kind === 'pairs' && i % 2 === 1);
    for (const at of breaks(bar.widths, columns)) if (at > 0 || !follows) starts.add(before + at);
    before += bar.widths.length;
  });
  return starts;
}

/** The lines of a layout, each as the fragments on it, by index. */
export function linesOf({ starts }: Layout, fragments: number): number[][] {
  const lines: number[][] = [];
  for (let i = 0; i < fragments; i += 1) {
    if (starts.has(i) || i === 0) lines.push([]);
    lines[lines.length - 1].push(i);
  }
  return lines;
}

/**
 * The ways a piece may be broken into lines, the narrowest first. A pickup hangs before bar 1 where there is room, and two
 * bars share a line where all are alike and not too wide. `tens` is the width of a column in tens of pixels.
 */
export function layoutsOf(
  bars: readonly { number: number; fragments: readonly Fragment[] }[],
  unit: Ticks,
  tens = 1,
): Layout[] {
  const widths = bars.map((bar) => ({
    pickup: bar.number === 0,
    widths: bar.fragments.map((fragment) => fragment.ticks / unit),
  }));
  const longest = widths.reduce((a, b) => (sum(b.widths) > sum(a.widths) ? b : a)).widths;
  const layout = (columns: number, kind: Layout['kind']): Layout => ({
    columns,
    kind,
    starts: startsOf(widths, columns, kind),
  });
  const sizes = useful(longest).reverse();
  const layouts = sizes.map((columns, i) => layout(columns, i === 0 ? 'least' : 'fits'));
  const full = sizes[sizes.length - 1];
  const hang = widths[0].pickup ? sum(widths[0].widths) : 0;
  if (hang && full + hang <= MAX_COLUMNS) layouts.push(layout(full + hang, 'hangs'));
  const alike = widths.every((bar) => bar.widths.join() === longest.join());
  if (alike && widths.length > 1 && 2 * full <= MAX_COLUMNS && 2 * full * tens <= MOST_PAIR)
    layouts.push(layout(2 * full, 'pairs'));
  return layouts.filter(({ columns }) => columns <= MAX_COLUMNS || columns === sizes[0]);
}
