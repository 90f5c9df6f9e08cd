import { handSpeed, sameSpeed, slotMs, tempoAtRebound, tempoAtTurns, thirtySecondMs } from '../core/index.ts';
import type { Grid, HandWay } from '../core/index.ts';
import { flamSays, lengthsSay, limitsSay, sameSays, speedSays } from '../words/bar-math-answers.ts';
import { HAND_WAYS, wayFault } from '../words/bar-math.ts';
import { figures } from '../words/numbers.ts';
import { readFigure } from './cells.ts';
import { countsOf, reading, rulerSaid, tooLongFaults } from './read.ts';
import type { Answer, Inputs } from './types.ts';

/**
 * What stands in the fields before anyone types. Six turns a second: in the middle of the 5 to 7 that is usual for single
 * strokes of one hand (Fujii and others 2009, Neuroscience Letters 459). The rebound after 55 ms is ours; no figure was
 * found.
 */
export const SPEED: Inputs = {
  tempo: '120',
  grid: '4',
  way: 'singles',
  flam: '30',
  turns: '6',
  rebound: '55',
  other: '3',
};

const METER = '4/4';

/** A bar of each way, beat by beat or in pairs of beats, as long as it takes to begin anew. */
const TURNS: Record<HandWay, { text: string; turn: number }> = {
  singles: { text: 'R L', turn: 2 },
  doubles: { text: 'R R L L', turn: 4 },
  diddles: { text: 'RR LL', turn: 2 },
  'one-hand': { text: 'R', turn: 1 },
};

/** What a tempo asks of one hand, and what it is on another subdivision. */
export function answerSpeed(inputs: Inputs): Answer {
  const long = tooLongFaults(inputs);
  if (long) return { says: '', faults: long };
  const read = reading(inputs);
  const tempo = read.number('tempo', 20, 400);
  const grid = read.whole('grid', 1, 8);
  const other = read.whole('other', 1, 8);
  const flam = read.number('flam', 0, 200);
  const turns = read.number('turns', 0.5, 20);
  const rebound = read.number('rebound', 10, 1000);
  const way = HAND_WAYS.find(({ value }) => value === inputs.way)?.value;
  if (!way) read.refuse('way', wayFault(inputs.way));
  if (!tempo || !grid || !other || flam === undefined || !turns || !rebound || !way)
    return { says: '', faults: read.faults };
  const slot = slotMs(METER, grid, tempo);
  const hand = handSpeed(way, slot);
  const says = speedSays(grid, tempo, way, hand);
  return {
    says,
    more: [
      lengthsSay(grid, slot, thirtySecondMs(METER, tempo)),
      flamSays(flam, grid, slot),
      limitsSay(turns, tempoAtTurns(METER, grid, way, turns), rebound, tempoAtRebound(METER, grid, way, rebound)),
      ...(other === grid ? [] : [sameSays(tempo, grid, other, sameSpeed(tempo, grid, other))]),
    ],
    faults: read.faults,
    ruler: { label: says, ...drawn(grid, way, hand.turnMs) },
  };
}

/** The bar with one turn of the right hand under a bracket. */
function drawn(grid: Grid, way: HandWay, turnMs: number) {
  const ruler = rulerSaid(METER, grid, 1);
  const { text, turn } = TURNS[way];
  const pattern = readFigure(reading({}), 'cell', text, [])?.cells[0].marks ?? [];
  const marks = Array.from({ length: ruler.barSlots }, (_, slot) => pattern[slot % pattern.length]);
  const first = Math.min(turn, ruler.barSlots);
  const cells = [
    { slots: first, name: `${figures(turnMs, 1)} ms`, marks: marks.slice(0, first) },
    { slots: ruler.barSlots - first, kind: 'bare' as const, marks: marks.slice(first) },
  ];
  return { counts: countsOf(ruler), grid, cells };
}
