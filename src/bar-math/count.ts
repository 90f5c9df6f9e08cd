import { countNames, slotOfCount, slotOfTick, slotTicks } from '../core/index.ts';
import type { Grid, MeterText } from '../core/index.ts';
import { countSays, endSays, type RulerSaid } from '../words/bar-math-answers.ts';
import { MATH_FAULTS, tickFault } from '../words/bar-math.ts';
import { many, slotWords } from '../words/numbers.ts';
import { COUNTING } from '../words/site.ts';
import { countsOf, reading, rulerSaid, tooLongFaults, type Reading } from './read.ts';
import type { Answer, Inputs } from './types.ts';

/** Three ways to name a place; whichever is typed, the other two are worked out. */
export const PLACES = ['count', 'slot', 'tick'] as const;

/** What stands in the fields before anyone types: `at` is the place, named as `as` says. */
export const COUNT: Inputs = {
  as: 'count',
  at: countNames('4/4', 4, COUNTING)[15],
  length: '7',
  meter: '4/4',
  grid: '4',
};

const MOST = 64;

/** An answer, and the three names of its place. */
export interface CountAnswer extends Answer {
  place?: Record<(typeof PLACES)[number], string>;
}

/** Which slot, count and tick are the same place, and where one ends who starts there. */
export function answerCount(inputs: Inputs): CountAnswer {
  const long = tooLongFaults(inputs);
  if (long) return { says: '', faults: long };
  const read = reading(inputs);
  const meter = read.meter('meter');
  const grid = read.whole('grid', 1, 8);
  const length = inputs.length.trim() ? read.whole('length', 1, MOST) : 0;
  if (!meter || !grid) return { says: '', faults: read.faults };
  const ruler = rulerSaid(meter, grid, 1);
  const slot = slotIn(inputs, read, ruler);
  if (slot === undefined || length === undefined) return { says: '', faults: read.faults };
  const tick = slot * slotTicks(meter, grid);
  const says = [countSays(slot, tick, ruler), ...(length ? [endSays(slot, length, ruler)] : [])].join(' ');
  const count = countNames(meter, grid, COUNTING)[slot];
  return {
    says,
    faults: read.faults,
    place: { slot: String(slot + 1), count, tick: String(tick) },
    ruler: { label: says, ...drawn(slot, length, ruler) },
  };
}

/** Reads the place; what is wrong with it is said at the field that was typed in. */
function slotIn({ as, at }: Inputs, read: Reading, { meter, grid, barSlots }: RulerSaid): number | undefined {
  if (as === 'tick') return slotAtTick(read, meter, grid, barSlots);
  if (as === 'slot') {
    const number = read.whole('at', 1, barSlots);
    return number && number - 1;
  }
  if (!at.trim()) return read.refuse('at', MATH_FAULTS.count);
  const own = slotOfCount(meter, grid, at, COUNTING);
  // A link from elsewhere, and the text of the lessons, count 1 e & a.
  const elsewhere = slotOfCount(meter, grid, at);
  return read.take('at', 'slot', own.ok || !elsewhere.ok ? own : elsewhere);
}

/** A tick between two slots belongs to neither. */
function slotAtTick(read: Reading, meter: MeterText, grid: Grid, barSlots: number): number | undefined {
  const length = slotTicks(meter, grid);
  const tick = read.whole('at', 0, barSlots * length - 1);
  if (tick === undefined) return undefined;
  const { slot, after } = slotOfTick(meter, grid, tick);
  if (after === 0) return slot;
  const { one } = slotWords(meter, grid);
  return read.refuse('at', tickFault(one, after, slot * length));
}

function drawn(slot: number, length: number, ruler: RulerSaid) {
  const { grid, barSlots, meter } = ruler;
  const names = slotWords(meter, grid);
  const end = slot + length;
  const name = `${length} ${many(length, names.one, names.many)}`;
  const cells = length
    ? [
        { slots: slot, kind: 'bare' as const },
        { slots: length, name, short: String(length) },
      ]
    : [];
  return {
    counts: countsOf(ruler),
    grid,
    bars: Math.floor(end / barSlots) + 1,
    cells,
    marked: length ? [slot, end] : [slot],
  };
}
