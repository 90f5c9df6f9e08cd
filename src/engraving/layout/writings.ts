import {
  writeBars,
  type ScoreBar,
  type Stroke,
  type Ticks,
  type WrittenBar,
  type WrittenFragment,
  type WriteOptions,
} from '../../core/index.ts';
import type { Layout } from './lines.ts';

/** One way a fragment is written, and the layouts it is for, by columns; all of them where left out. */
export interface Writing {
  fragment: WrittenFragment;
  at?: number[];
}

const breaksOf = ({ starts }: Layout, fragments: readonly WrittenFragment[]): Ticks[] =>
  [...starts].map((index) => fragments[index].tick);

/** Whether a line of the page would begin inside a note or a rest. */
const isCut = (fragments: readonly WrittenFragment[], breaks: readonly Ticks[]): boolean =>
  fragments
    .flatMap(({ voices }) => voices)
    .flatMap(({ symbols }) => symbols)
    .some(({ tick, ticks }) => breaks.some((at) => at > tick && at < tick + ticks));

/** What tells two writings of one fragment apart. */
const signature = ({ voices }: WrittenFragment): string =>
  voices.map(({ symbols }) => symbols.map((s) => [s.kind, s.tick, s.ticks, s.tied, s.from].join()).join(';')).join('|');

/** The ways of one fragment, each once, with its layouts. */
function waysOf(ways: readonly (readonly [columns: number, WrittenFragment])[]): Writing[] {
  const groups = [...Map.groupBy(ways, ([, fragment]) => signature(fragment)).values()];
  if (groups.length === 1) return [{ fragment: groups[0][0][1] }];
  return groups.map((group) => ({ fragment: group[0][1], at: group.map(([columns]) => columns) }));
}

/**
 * How each fragment is written in the layouts: a half note or rest is one sign where its beats stand on one line, and two
 * where a line begins inside it. The first way is that of the widest lines.
 */
export function writingsOf(
  bars: readonly ScoreBar[],
  strokes: Stroke[],
  how: WriteOptions,
  whole: readonly WrittenBar[],
  layouts: readonly Layout[],
): Writing[][] {
  const fragments = whole.flatMap((bar) => bar.fragments);
  const inLayout = layouts.toReversed().map((layout): [number, WrittenFragment[]] => {
    const breaks = breaksOf(layout, fragments);
    if (!isCut(fragments, breaks)) return [layout.columns, fragments];
    return [
      layout.columns,
      writeBars(bars, strokes, { ...how, breaks: new Set(breaks) }).flatMap((bar) => bar.fragments),
    ];
  });
  return fragments.map((_, i) => waysOf(inLayout.map(([columns, all]) => [columns, all[i]] as const)));
}
