import { whole } from '../../check.ts';
import { perform } from '../../timeline/perform.ts';
import type { Timeline } from '../../timeline/types.ts';
import { readPhrase } from '../../phrase/read.ts';
import type { Lead } from '../../phrase/types.ts';
import { slotsOf } from '../../time/meter.ts';
import type { Bpm, Grid, MeterText, Milliseconds } from '../../time/units.ts';
import { bankCells } from '../bank.ts';
import { RIGHT, wrongBy, type Grade, type PuzzleBase, type PuzzleKindRecord } from '../kind.ts';
import { difficultyOf, levelOf, type Level } from '../level.ts';
import { puzzleChance, type Chance } from '../random.ts';

/** One of two things to be told apart. */
export interface Heard {
  /** What it is called: a cell's id, or `closed`, `open`, `right`, `left`. */
  id: string;
  text: string;
  lead: Lead;
  flamMs: Milliseconds;
}

/** Two are heard; which of them is the one asked for? The answer is 1 or 2. */
export interface WhichPuzzle extends PuzzleBase {
  kind: 'which';
  about: 'cells' | 'width' | 'lead';
  heard: [Heard, Heard];
  ask: string;
  answer: 1 | 2;
  bpm: Bpm;
}

/** The other of the two. */
export interface WhichWrong {
  wrong: 'other';
}

const NUMBER = 6;

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

interface LevelSpec {
  bpm: Bpm;
  /** Width of a closed and of an open flam; the nearer to each other, the harder. Ours. */
  widths: readonly [Milliseconds, Milliseconds];
  /** Which pairs of the list are asked, and how often cells, widths and leads are. */
  pairs: readonly [from: number, to: number];
  asks: readonly [cells: number, widths: number, leads: number];
}

const BY_LEVEL: Record<Level, LevelSpec> = {
  1: { bpm: 60, widths: [15, 75], pairs: [5, 8], asks: [1, 1, 1] },
  2: { bpm: 66, widths: [18, 65], pairs: [3, 8], asks: [2, 1, 1] },
  3: { bpm: 72, widths: [20, 58], pairs: [1, 6], asks: [3, 2, 1] },
  4: { bpm: 84, widths: [20, 50], pairs: [0, 5], asks: [3, 2, 1] },
  5: { bpm: 96, widths: [22, 45], pairs: [0, 4], asks: [4, 2, 1] },
};

const CLOSED_ENOUGH: Milliseconds = 30;

type Made = Pick<WhichPuzzle, 'about' | 'meter' | 'grid'> & { heard: [Heard, Heard] };

/**
 * Two are heard, one of them is asked for.
 * @example
 * makePuzzle('which', 4182).answer // → 1
 */
function make(seed: number): WhichPuzzle {
  const level = levelOf(seed);
  const chance = puzzleChance(NUMBER, seed);
  const spec = BY_LEVEL[level];
  const [cells, widths, leads] = spec.asks.map((often, i) => Array<Maker>(often).fill(MAKERS[i]));
  const made = chance.pick([...cells, ...widths, ...leads])(chance, spec);
  const heard = (chance.below(2) ? [made.heard[1], made.heard[0]] : made.heard) as [Heard, Heard];
  const answer = chance.pick([1, 2] as const);
  const barSlots = slotsOf(made.meter, made.grid);
  // What is heard twice at once is told apart by nearness and speed; the measure counts the tempo above the slowest.
  const facts = { answers: 1n, choices: 2n, rules: 0, depth: (spec.bpm - BY_LEVEL[1].bpm) / 6 };
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
    bpm: spec.bpm,
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

function cellsApart(chance: Chance, { pairs }: LevelSpec): Made {
  const [a, b] = chance.pick(PAIRS.slice(...pairs)).map((id) => ({ id, ...filled(id) }));
  return { about: 'cells', meter: a.meter, grid: a.grid, heard: [once(a.id, a.text), once(b.id, b.text)] };
}

function widthsApart(_chance: Chance, { widths: [closed, open] }: LevelSpec): Made {
  const text = '{>lR - >rL -}4';
  return {
    about: 'width',
    meter: '4/4',
    grid: 4,
    heard: [once('closed', text, { flamMs: closed }), once('open', text, { flamMs: open })],
  };
}

function leadsApart(chance: Chance): Made {
  const { text, meter, grid } = filled(chance.pick(['flam-drag', 'flam-accent', 'rll']));
  return { about: 'lead', meter, grid, heard: [once('right', text), once('left', text, { lead: 'left' })] };
}

type Maker = (chance: Chance, plan: LevelSpec) => Made;
const MAKERS: readonly Maker[] = [cellsApart, widthsApart, leadsApart];

/** Throws RangeError for anything but 1 and 2. */
function grade({ answer }: WhichPuzzle, given: number): Grade<WhichWrong> {
  whole('answer', given, 1, 2);
  return given === answer ? RIGHT : wrongBy({ wrong: 'other' });
}

/** One of two things to be told apart, to be heard. Throws RangeError for a text that makes no phrase. */
export function performHeard({ meter, grid }: WhichPuzzle, { id, text, lead }: Heard): Timeline {
  const read = readPhrase({ cells: [{ id, text }], meter, grid, lead });
  if (!read.ok) throw new RangeError(`text is "${text}"; ${read.fault.message}`);
  return perform(read.phrase);
}

/** The kind `which`. */
export const record: PuzzleKindRecord<WhichPuzzle, number, WhichWrong> = {
  number: NUMBER,
  unanswered: undefined,
  make,
  grade,
  solution: ({ answer }) => answer,
};
