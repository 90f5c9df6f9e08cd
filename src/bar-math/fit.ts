import { fit, slotTicks, type Grid, type MeterText } from '../core/index.ts';
import { drawnSays, fillingsSay, fitSays, leftSays, type RulerSaid, tooLongToPlay } from '../words/bar-math-answers.ts';
import { MATH_FAULTS } from '../words/bar-math.ts';
import { labelOf, readFigure, repeated, timelineOf, type Figure } from './cells.ts';
import { fillingsOf, type Filling, type Fillings } from './fillings.ts';
import { IN_WORKER, MOST_PLAYED } from './limits.ts';
import { countsOf, reading, rulerSaid, tooLongFaults } from './read.ts';
import { barsDrawn, cellsWithin, type RulerCell } from './ruler.ts';
import type { Answer, Inputs, NamedCell, SumProps } from './types.ts';

/** What stands in the fields before anyone types. */
export const FIT: Inputs = { cell: 'flam-drag', bars: '1', meter: '4/4', grid: '4', rest: '' };

/** More bars than this make a drawing nobody reads. */
const MOST_BARS = 8;

/** An answer, and what could stand in what is left. */
export interface FitAnswer extends Answer {
  fillings?: Fillings;
}

/** How often a cell goes into so many bars, what is left, and what could fill it. Throws TooLarge beyond the limits. */
export function answerFit(inputs: Inputs, props: SumProps, limits = IN_WORKER): FitAnswer {
  const long = tooLongFaults(inputs);
  if (long) return { says: '', faults: long };
  const read = reading(inputs, limits);
  const figure = readFigure(read, 'cell', inputs.cell, props.named);
  const bars = read.whole('bars', 1, MOST_BARS);
  const meter = read.meter('meter');
  const grid = read.whole('grid', 1, 8);
  if (!figure || !bars || !meter || !grid) return { says: '', faults: read.faults };
  const ruler = rulerSaid(meter, grid, bars);
  const slots = bars * ruler.barSlots;
  const sum = { cell: figure.slots, slots, ...fit(figure.slots, slots) };
  const fillings = fillingsOf(sum.times ? sum.left : 0, props.named);
  const says = fitSays(sum, ruler);
  const filling = fillings.some.find(({ value }) => value === inputs.rest);
  if (inputs.rest && !filling) read.refuse('rest', MATH_FAULTS.rest);
  const isPlayed = sum.times * figure.strokes <= MOST_PLAYED.strokes;
  if (isPlayed) read.lay(sum.times * figure.strokes);
  const drawnBars = barsDrawn(bars, ruler.barSlots);
  const names = fillings.of.map(({ name }) => article(name));
  return {
    says,
    more: [
      ...(fillings.ways ? [fillingsSay(sum.left, fillings.ways, names)] : []),
      ...(drawnBars < bars ? [drawnSays(drawnBars)] : []),
      ...(isPlayed ? [] : [tooLongToPlay(MOST_PLAYED.bars, MOST_PLAYED.strokes)]),
    ],
    faults: read.faults,
    fillings,
    ruler: drawn(figure, sum, ruler, drawnBars, filling, props.named),
    ...(isPlayed ? played(figure, sum.times, filling, props.named, meter, grid) : {}),
  };
}

const article = (name: string): string => (/^[A-Z]|s$/.test(name) ? name : `a ${name}`);

function drawn(
  figure: Figure,
  { times, left, from }: { times: number; left: number; from: number },
  ruler: RulerSaid,
  bars: number,
  filling: Filling | undefined,
  named: readonly NamedCell[],
) {
  const filled = filling?.cells.flatMap(({ text }) => figureOfText(text, named)?.cells ?? []) ?? [];
  const short = left === 1 ? '1' : `${left} left`;
  const gap = left ? [{ slots: left, kind: 'left' as const, name: leftSays(left, from, ruler), short }] : [];
  const { grid } = ruler;
  const all: RulerCell[] = [...repeated(times, figure.cells), ...(filling ? filled : gap)];
  const cells = cellsWithin(all, bars * ruler.barSlots);
  return { label: labelOf(figure, cells), counts: countsOf(ruler), grid, bars, cells };
}

const figureOfText = (text: string, named: readonly NamedCell[]): Figure | undefined =>
  readFigure(reading({}), 'cell', text, named);

function played(
  figure: Figure,
  times: number,
  filling: Filling | undefined,
  named: readonly NamedCell[],
  meter: MeterText,
  grid: Grid,
) {
  if (times === 0) return {};
  const filled = filling?.cells.flatMap(({ text }) => figureOfText(text, named) ?? []) ?? [];
  const timeline = timelineOf([...repeated(times, [figure]), ...filled], meter, grid);
  return timeline ? { play: { timeline, meter, slotTicks: slotTicks(meter, grid) } } : {};
}
