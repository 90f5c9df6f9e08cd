import { against, againstText, barOfBeats, countNames, gcd, parseSticking, slotTicks } from '../core/index.ts';
import { againstSays, cannotSay } from '../words/bar-math-answers.ts';
import { COUNTING } from '../words/site.ts';
import { marksOf } from './marks.ts';
import { timelineOf } from './cells.ts';
import { countsOf, reading, rulerSaid, tooLongFaults } from './read.ts';
import type { Answer, Inputs } from './types.ts';

/** What stands in the fields before anyone types. */
export const AGAINST: Inputs = { right: '4', left: '3' };

const MOST = 15;

/** An answer, and its line of sticking. */
export interface AgainstAnswer extends Answer {
  sticking?: string;
}

/** So many by the right hand against so many by the left, on the coarsest grid that holds both. */
export function answerAgainst(inputs: Inputs): AgainstAnswer {
  const long = tooLongFaults(inputs);
  if (long) return { says: '', faults: long };
  const read = reading(inputs);
  const right = read.whole('right', 1, MOST);
  const left = read.whole('left', 1, MOST);
  if (!right || !left) return { says: '', faults: read.faults };
  const { slots, first, second } = against(right, left);
  // The left hand keeps the beat; where its beats would be too finely divided, the right one does.
  const bar = barOfBeats(slots, left) ?? barOfBeats(slots, right);
  if (!bar) return { says: cannotSay(right, left, slots / left, slots / right), faults: read.faults };
  const { meter, grid } = bar;
  const ruler = rulerSaid(meter, grid, 1);
  const names = countNames(meter, grid, COUNTING);
  const together = first.filter((slot) => second.includes(slot));
  const says = againstSays(
    right,
    left,
    slots,
    gcd(right, left),
    together.map((slot) => names[slot]),
  );
  const sticking = againstText(right, left);
  const parsed = parseSticking(sticking);
  const timeline = parsed.ok ? timelineOf([{ text: sticking, sticking: parsed.sticking }], meter, grid) : undefined;
  const marks = parsed.ok ? marksOf(parsed.sticking, true) : [];
  return {
    says,
    faults: read.faults,
    sticking,
    ruler: { label: sticking, counts: countsOf(ruler), grid, cells: [{ slots, kind: 'bare', marks }] },
    ...(timeline ? { play: { timeline, meter, slotTicks: slotTicks(meter, grid) } } : {}),
  };
}
