/** An order on the ruler and as it is played, by the hand that leads. */
import { cellsOf, layPhrase, mirror, perform, printSticking, slotTicks } from '../../core/index.ts';
import type { Phrase, Sticking } from '../../core/index.ts';
import type { RulerCell } from '../ruler.ts';
import { marksOf } from '../marks.ts';
import type { Figure } from '../cells.ts';
import { countsOf, rulerSaid } from '../read.ts';
import type { Answer, NamedCell, SumProps } from '../types.ts';
import type { Problem } from './problem.ts';

/** What is drawn and played of an order. */
export function laid(ids: readonly string[], problem: Problem, label: string, props: SumProps): Partial<Answer> {
  const { bars, meter, grid, figures } = problem;
  const order = ids.map((id) => figures[Number(id)]);
  const phrase = phraseOf(order, problem);
  const others = new Map<Figure, RulerCell[]>();
  const cellsOfOne = (figure: Figure, mirrored: boolean): RulerCell[] => {
    if (mirrored && !others.has(figure)) others.set(figure, turned(figure, props.named));
    return (mirrored && others.get(figure)) || figure.cells;
  };
  const cells = order.flatMap((figure, i) => cellsOfOne(figure, phrase?.cells[i]?.mirrored ?? false));
  return {
    ruler: { label, counts: countsOf(rulerSaid(meter, grid, bars)), grid, bars, cells },
    ...(phrase ? { play: { timeline: perform(phrase), meter, slotTicks: slotTicks(meter, grid) } } : {}),
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
