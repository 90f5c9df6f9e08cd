import { whole } from '../check.ts';
import { slotsOf } from '../time/meter.ts';
import type { Bpm, Grid, MeterText, Milliseconds } from '../time/units.ts';
import { levelOf, puzzleChance, type Level } from './address.ts';
import { bankCells } from './bank.ts';
import { difficultyOf } from './difficulty.ts';
import type { Chance } from './random.ts';
import type { Grade, Heard, WhichPuzzle } from './types.ts';

/** Two cells of one length that the ear has to tell apart, the nearest to each other first. */
const PAIRS: readonly (readonly [string, string])[] = [
  ['flam-drag', 'flam-accent'],
  ['six-stroke-roll', 'flam-paradiddle'],
  ['flam-accent', 'accented-three'],
  ['flam-paradiddle', 'paradiddle'],
  ['flam-drag', 'accented-three'],
  ['six-stroke-roll', 'paradiddle'],
  ['rll', 'accented-three'],
  ['kick', 'kick-doubled'],
];

interface Plan {
  bpm: Bpm;
  /** Width of a closed and of an open flam; the nearer to each other, the harder. Ours. */
  widths: readonly [Milliseconds, Milliseconds];
  /** Which pairs of the list are asked, and how often cells, widths and leads are. */
  pairs: readonly [from: number, to: number];
  asks: readonly [cells: number, widths: number, leads: number];
}

const PLANS: Record<Level, Plan> = {
  1: { bpm: 60, widths: [15, 75], pairs: [5, 8], asks: [1, 1, 1] },
  2: { bpm: 66, widths: [18, 65], pairs: [3, 8], asks: [2, 1, 1] },
  3: { bpm: 72, widths: [20, 58], pairs: [1, 6], asks: [3, 2, 1] },
  4: { bpm: 84, widths: [20, 50], pairs: [0, 5], asks: [3, 2, 1] },
  5: { bpm: 96, widths: [22, 45], pairs: [0, 4], asks: [4, 2, 1] },
};

const CLOSED_ENOUGH: Milliseconds = 30;

type Asked = Pick<WhichPuzzle, 'about' | 'meter' | 'grid'> & { heard: [Heard, Heard] };

/**
 * Two are heard, one of them is asked for.
 * @example
 * makeWhich(4182).answer // → 1
 */
export function makeWhich(seed: number): WhichPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance('which', seed);
  const plan = PLANS[level];
  const [cells, widths, leads] = plan.asks.map((often, i) => Array<Ask>(often).fill(ASKS[i]));
  const made = chance.pick([...cells, ...widths, ...leads])(chance, plan);
  const heard = (chance.below(2) ? [made.heard[1], made.heard[0]] : made.heard) as [Heard, Heard];
  const answer = chance.pick([1, 2] as const);
  const barSlots = slotsOf(made.meter, made.grid);
  // What is heard twice at once is told apart by nearness and speed; the measure counts the tempo above the slowest.
  const facts = { answers: 1n, choices: 2n, rules: 0, depth: (plan.bpm - PLANS[1].bpm) / 6 };
  return {
    kind: 'which',
    seed,
    level,
    ...made,
    heard,
    answer,
    ask: heard[answer - 1].id,
    slots: barSlots,
    barSlots,
    bpm: plan.bpm,
    difficulty: difficultyOf(facts, made.grid),
  };
}

const once = (id: string, text: string, more: Partial<Heard> = {}): Heard => ({
  id,
  text,
  lead: 'written',
  flamMs: CLOSED_ENOUGH,
  ...more,
});

/** As many as fill a bar of four beats: of three slots in triplets, else in sixteenths with rests for what is short. */
function filled(id: string): { text: string; meter: MeterText; grid: Grid } {
  const [{ text, slots }] = bankCells(id);
  if (slots === 1) return { text: `{${text} - - -}4`, meter: '4/4', grid: 4 };
  return { text: `{${text}}4`, meter: '4/4', grid: slots as Grid };
}

function cellsApart(chance: Chance, { pairs }: Plan): Asked {
  const [a, b] = chance.pick(PAIRS.slice(...pairs)).map((id) => ({ id, ...filled(id) }));
  return { about: 'cells', meter: a.meter, grid: a.grid, heard: [once(a.id, a.text), once(b.id, b.text)] };
}

function widthsApart(_chance: Chance, { widths: [closed, open] }: Plan): Asked {
  const text = '{>lR - >rL -}4';
  return {
    about: 'width',
    meter: '4/4',
    grid: 4,
    heard: [once('closed', text, { flamMs: closed }), once('open', text, { flamMs: open })],
  };
}

function leadsApart(chance: Chance): Asked {
  const { text, meter, grid } = filled(chance.pick(['flam-drag', 'flam-accent', 'rll']));
  return { about: 'lead', meter, grid, heard: [once('right', text), once('left', text, { lead: 'left' })] };
}

type Ask = (chance: Chance, plan: Plan) => Asked;
const ASKS: readonly Ask[] = [cellsApart, widthsApart, leadsApart];

/** The answer is 1 or 2. Throws RangeError for any other. */
export function gradeWhich({ answer }: WhichPuzzle, given: number): Grade {
  whole('answer', given, 1, 2);
  return given === answer ? { right: true, wrongs: [] } : { right: false, wrongs: [{ wrong: 'other' }] };
}
