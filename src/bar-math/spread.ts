import { countNames, evenBars, gapsBetween, slotTicks, spread, turned, turnsOf } from '../core/index.ts';
import type { EvenBar } from '../core/index.ts';
import { noBarSays, spreadSays, turnsSay } from '../words/bar-math-answers.ts';
import { COUNTING } from '../words/site.ts';
import type { RulerCell, RulerMark } from './ruler.ts';
import { readFigure, timelineOf } from './cells.ts';
import { countsOf, reading, rulerSaid, tooLongFaults } from './read.ts';
import type { Answer, Inputs } from './types.ts';

/** What stands in the fields before anyone types. */
export const SPREAD: Inputs = { accents: '3', slots: '8', turn: '0', bar: '4/4:2' };

const MOST = 32;

/** An answer, and the bars in which it can be written. */
export interface SpreadAnswer extends Answer {
  bars?: readonly { value: string; bar: EvenBar }[];
  /** How many turns there are. */
  turns?: number;
}

/** The bars that hold so many slots: four quarters first, then the others, one long beat last. */
export function barsOf(slots: number) {
  const rank = ({ meter }: EvenBar) => (meter === '4/4' ? 0 : meter === '1/4' ? 2 : 1);
  const bars = evenBars(slots).sort((a, b) => rank(a) - rank(b));
  return bars.map((bar) => ({ value: `${bar.meter}:${bar.grid}`, bar }));
}

/** So many accents over so many single strokes, as even as can be, in one of its turns. */
export function answerSpread(inputs: Inputs): SpreadAnswer {
  const long = tooLongFaults(inputs);
  if (long) return { says: '', faults: long };
  const read = reading(inputs);
  const slots = read.whole('slots', 2, MOST);
  const accents = slots && read.whole('accents', 1, slots);
  const turns = slots && accents ? turnsOf(accents, slots) : undefined;
  const turn = turns && read.whole('turn', 0, turns - 1);
  if (!slots || !accents || turn === undefined) return { says: '', faults: read.faults, ...(turns ? { turns } : {}) };
  const bars = barsOf(slots);
  // Another number of slots wants another bar; the first one that holds them is taken.
  const chosen = (bars.find(({ value }) => value === inputs.bar) ?? bars[0])?.bar;
  if (!chosen) return { says: '', faults: { slots: { says: noBarSays(slots) } }, turns };
  const onsets = turned(spread(accents, slots), slots, turn);
  const names = countNames(chosen.meter, chosen.grid, COUNTING);
  const says = spreadSays(
    accents,
    slots,
    gapsBetween(onsets, slots),
    onsets.map((slot) => names[slot]),
  );
  return {
    says,
    more: [turnsSay(turns!)],
    faults: read.faults,
    bars,
    turns,
    ...shown(onsets, chosen, slots, says),
  };
}

/** Hand to hand: after an odd number of strokes the other hand begins the next bar, so two are shown. */
function shown(onsets: readonly number[], { meter, grid }: EvenBar, slots: number, says: string) {
  const ruler = rulerSaid(meter, grid, slots % 2 ? 2 : 1);
  const strokes = Array.from({ length: slots * ruler.bars }, (_, slot) => {
    const accent = onsets.includes(slot % slots) ? '>' : '';
    return `${accent}${slot % 2 ? 'L' : 'R'}`;
  });
  const text = strokes.join(' ');
  const figure = readFigure(reading({}), 'cell', text, []);
  const marks = figure?.cells[0].marks ?? [];
  const timeline = figure && timelineOf([figure], meter, grid);
  return {
    ruler: {
      label: says,
      counts: countsOf(ruler),
      grid,
      bars: ruler.bars,
      cells: gapCells(onsets, slots, ruler.bars, marks),
    },
    ...(timeline ? { play: { timeline, meter, slotTicks: slotTicks(meter, grid) } } : {}),
  };
}

/** A bracket from each accent to the next, with its length; what comes before the first belongs to the last. */
function gapCells(
  onsets: readonly number[],
  slots: number,
  bars: number,
  marks: readonly (readonly RulerMark[])[],
): RulerCell[] {
  const all = Array.from({ length: bars }, (_, bar) => onsets.map((slot) => slot + bar * slots)).flat();
  const edges = [...all, slots * bars];
  const before = all[0] ? [{ slots: all[0], kind: 'bare' as const, marks: marks.slice(0, all[0]) }] : [];
  const cells = all.map((slot, i) => ({
    slots: edges[i + 1] - slot,
    name: String(edges[i + 1] - slot),
    marks: marks.slice(slot, edges[i + 1]),
  }));
  return [...before, ...cells];
}
