import { cellStarts, resolution, slotTicks } from '../core/index.ts';
import { resolveSays, startsSay, type RulerSaid } from '../words/bar-math-answers.ts';
import { capital } from '../words/bar-math.ts';
import { BAR_WORD } from '../words/site.ts';
import { labelOf, readFigure, repeated, timelineOf, type Figure } from './cells.ts';
import { countsOf, reading, rulerSaid } from './read.ts';
import type { Answer, Inputs, SumProps } from './types.ts';

/** What stands in the fields before anyone types. */
export const RESOLVE: Inputs = { cell: 'rll', meter: '4/4', grid: '4' };

/** More bars than this are told and not drawn; a phrase has at most 32. */
const DRAWN = 8;
const PLAYED = 32;

/** An answer, and on which counts the cells start, bar by bar. */
export interface ResolveAnswer extends Answer {
  starts?: readonly { bar: string; says: string }[];
}

/** When a cell laid end to end is back on beat 1, and where it starts until then. */
export function answerResolve(inputs: Inputs, props: SumProps): ResolveAnswer {
  const read = reading(inputs);
  const figure = readFigure(read, 'cell', inputs.cell, props.named);
  const meter = read.meter('meter');
  const grid = read.whole('grid', 1, 8);
  if (!figure || !meter || !grid) return { says: '', faults: read.faults };
  const ruler = rulerSaid(meter, grid, 2);
  const { bars, cells } = resolution(figure.slots, ruler.barSlots);
  const starts = cellStarts(figure.slots, ruler.barSlots);
  const says = resolveSays(figure.slots, bars, cells, ruler);
  const timeline = bars <= PLAYED ? timelineOf(repeated(cells, [figure.text]), meter, grid) : undefined;
  const drawn = Math.min(bars, DRAWN);
  return {
    says,
    more: bars > DRAWN ? [`The first ${DRAWN} ${BAR_WORD}s are drawn.`] : [],
    faults: read.faults,
    starts: Array.from({ length: bars }, (_, bar) => ({
      bar: `${capital(BAR_WORD)} ${bar + 1}`,
      says: startsSay(bar + 1, starts, ruler),
    })),
    ruler: rulerOf(figure, cells, drawn, ruler),
    ...(timeline ? { play: { timeline, meter, slotTicks: slotTicks(meter, grid) } } : {}),
  };
}

function rulerOf(figure: Figure, times: number, bars: number, ruler: RulerSaid) {
  const cells = repeated(times, figure.cells);
  return { label: labelOf(figure, cells), counts: countsOf(ruler), grid: ruler.grid, bars, cells };
}
