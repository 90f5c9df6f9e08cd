import { cellStarts, resolution, slotTicks } from '../core/index.ts';
import {
  drawnSays,
  resolveSays,
  type RulerSaid,
  startsSay,
  startsToldSay,
  tooLongToPlay,
} from '../words/bar-math-answers.ts';
import { capital } from '../words/grammar.ts';
import { BAR_WORD } from '../words/site.ts';
import { labelOf, readFigure, repeated, timelineOf, type Figure } from './cells.ts';
import { IN_WORKER, MOST_PLAYED } from './limits.ts';
import { countsOf, reading, rulerSaid, tooLongFaults } from './read.ts';
import { barsDrawn, cellsWithin } from './ruler.ts';
import type { Answer, Inputs, SumProps } from './types.ts';

/** What stands in the fields before anyone types. */
export const RESOLVE: Inputs = { cell: 'rll', meter: '4/4', grid: '4' };

/** More bars than this are not drawn. */
const MOST_DRAWN_BARS = 8;
/** More bars than this are not told one by one. */
const MOST_TOLD = 32;

/** An answer, and on which counts the cells start, bar by bar. */
export interface ResolveAnswer extends Answer {
  starts?: readonly { bar: string; says: string }[];
}

/** When a cell laid end to end is back on beat 1, and where it starts until then. Throws TooLarge beyond the limits. */
export function answerResolve(inputs: Inputs, props: SumProps, limits = IN_WORKER): ResolveAnswer {
  const long = tooLongFaults(inputs);
  if (long) return { says: '', faults: long };
  const read = reading(inputs, limits);
  const figure = readFigure(read, 'cell', inputs.cell, props.named);
  const meter = read.meter('meter');
  const grid = read.whole('grid', 1, 8);
  if (!figure || !meter || !grid) return { says: '', faults: read.faults };
  const ruler = rulerSaid(meter, grid, 2);
  const { bars, cells } = resolution(figure.slots, ruler.barSlots);
  const starts = cellStarts(figure.slots, ruler.barSlots);
  const says = resolveSays(figure.slots, bars, cells, ruler);
  const drawn = Math.min(MOST_DRAWN_BARS, barsDrawn(bars, ruler.barSlots));
  const told = Math.min(bars, MOST_TOLD);
  const isPlayed = bars <= MOST_PLAYED.bars && cells * figure.strokes <= MOST_PLAYED.strokes;
  if (isPlayed) read.lay(cells * figure.strokes);
  const timeline = isPlayed ? timelineOf(repeated(cells, [figure]), meter, grid) : undefined;
  return {
    says,
    more: [
      ...(drawn < bars ? [drawnSays(drawn)] : []),
      ...(told < bars ? [startsToldSay(told)] : []),
      ...(isPlayed ? [] : [tooLongToPlay(MOST_PLAYED.bars, MOST_PLAYED.strokes)]),
    ],
    faults: read.faults,
    starts: Array.from({ length: told }, (_, bar) => ({
      bar: `${capital(BAR_WORD)} ${bar + 1}`,
      says: startsSay(bar + 1, starts, ruler),
    })),
    ruler: rulerOf(figure, cells, drawn, ruler),
    ...(timeline ? { play: { timeline, meter, slotTicks: slotTicks(meter, grid) } } : {}),
  };
}

function rulerOf(figure: Figure, times: number, bars: number, ruler: RulerSaid) {
  const cells = cellsWithin(repeated(times, figure.cells), bars * ruler.barSlots);
  return { label: labelOf(figure, cells), counts: countsOf(ruler), grid: ruler.grid, bars, cells };
}
