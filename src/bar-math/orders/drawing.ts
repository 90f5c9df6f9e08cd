/** An order on the ruler and as it is played, by the hand that leads. */
import { cellsOf, layPhrase, mirror, perform, printSticking, slotTicks } from '../../core/index.ts';
import type { Phrase, Sticking } from '../../core/index.ts';
import { drawnSays, tooLongToPlay } from '../../words/bar-math-answers.ts';
import type { Figure } from '../cells.ts';
import { MOST_PLAYED } from '../limits.ts';
import { marksOf } from '../marks.ts';
import { countsOf, rulerSaid, type Reading } from '../read.ts';
import { barsDrawn, cellsWithin, type RulerCell } from '../ruler.ts';
import type { NamedCell, SumProps } from '../types.ts';
import type { Problem } from './problem.ts';

/** What is drawn and played of an order, and what is to be said of it. Throws TooLarge beyond the reading's limits. */
export function drawOrder(ids: readonly string[], problem: Problem, label: string, props: SumProps, read: Reading) {
  const { bars, meter, grid, figures } = problem;
  const order = ids.map((id) => figures[Number(id)]);
  const strokes = order.reduce((sum, figure) => sum + figure.strokes, 0);
  const isPlayed = strokes <= MOST_PLAYED.strokes;
  if (isPlayed) read.lay(strokes);
  const phrase = phraseOf(order, problem);
  const others = new Map<Figure, RulerCell[]>();
  const cellsOfOne = (figure: Figure, mirrored: boolean): RulerCell[] => {
    if (mirrored && !others.has(figure)) others.set(figure, turned(figure, props.named));
    return (mirrored && others.get(figure)) || figure.cells;
  };
  const all = order.flatMap((figure, i) => cellsOfOne(figure, phrase?.cells[i]?.mirrored ?? false));
  const ruler = rulerSaid(meter, grid, bars);
  const drawn = barsDrawn(bars, ruler.barSlots);
  const cells = cellsWithin(all, drawn * ruler.barSlots);
  return {
    more: [
      ...(drawn < bars ? [drawnSays(drawn)] : []),
      ...(isPlayed ? [] : [tooLongToPlay(MOST_PLAYED.bars, MOST_PLAYED.strokes)]),
    ],
    ruler: { label, counts: countsOf(ruler), grid, bars: drawn, cells },
    ...(phrase && isPlayed ? { play: { timeline: perform(phrase), meter, slotTicks: slotTicks(meter, grid) } } : {}),
  };
}

/** A figure is one cell for the rule of lead, as it is where orders are counted. */
function phraseOf(order: readonly Figure[], { meter, grid, request }: Problem): Phrase | undefined {
  const cells = order.map(({ text, sticking }) => ({ id: text, sticking }));
  const read = layPhrase({ cells, meter, grid, lead: request.rules.lead ?? 'written', fill: 'rests' });
  return read.ok ? read.phrase : undefined;
}

/** The cells of a figure led by the other hand. */
function turned({ sticking, cells }: Figure, named: readonly NamedCell[]): RulerCell[] {
  return cellsOf(mirror(sticking)).map((cell, i) => ({
    ...cells[i],
    name: turnedName(cells[i].name, cell, named),
    marks: marksOf(cell),
  }));
}

/** A name that is nothing but letters says what the hands play, and so it turns with them. */
function turnedName(name: string | undefined, cell: Sticking, named: readonly NamedCell[]): string | undefined {
  const text = printSticking(cell);
  const letters = name !== undefined && /^[RL ]+$/.test(name) ? text.replace(/[>^()]/g, '') : name;
  return named.find((one) => one.text === text)?.name ?? letters;
}
