import type { ArrangeRules } from '../arrange/types.ts';
import type { Lead } from '../phrase/types.ts';
import type { Hand } from '../sticking/types.ts';
import type { Bpm, Grid, MeterText, Milliseconds, SlotIndex } from '../time/units.ts';
import type { Level, PuzzleKind } from './address.ts';
import type { PuzzleCell } from './bank.ts';

/** How hard a puzzle is, measured on the puzzle itself. */
export interface Difficulty {
  /** Right answers there are. */
  answers: bigint;
  /** Answers that can be given at all: the other orders that fill the bar, the other slots, the other numbers. */
  choices: bigint;
  /** Rules that have to be kept besides filling the bar. */
  rules: number;
  /** How many steps an answer takes: cells to be laid, cells to be counted past, bars. */
  depth: number;
  /** All of it as one number: bits of choice, rules and half the depth, and one more for a grid that is no power of two. */
  score: number;
}

/** What every puzzle has. */
interface Base {
  kind: PuzzleKind;
  seed: number;
  level: Level;
  meter: MeterText;
  grid: Grid;
  /** Slots of all its bars. */
  slots: number;
  barSlots: number;
  difficulty: Difficulty;
}

/** How often a cell of the shelf is to be used. */
export interface Uses {
  cell: string;
  min: number;
  /** Left out: as often as one likes. */
  max?: number;
}

/**
 * A puzzle answered by laying cells: fill the bar, what is missing, by ear. What stands before and after is fixed; the
 * answer is the ids of the cells between.
 */
export interface LayPuzzle extends Base {
  kind: 'fill' | 'missing' | 'ear';
  /** What may be laid. */
  shelf: PuzzleCell[];
  before: PuzzleCell[];
  after: PuzzleCell[];
  /** Slots to be filled. */
  gap: number;
  /** Slots are counted from the start of the first bar. `first` and `last` are cells of the shelf. */
  rules: ArrangeRules;
  uses: Uses[];
  /** By ear: what is heard, and how fast. It counts as an answer, as does whatever sounds the same. */
  heard?: { cells: PuzzleCell[]; bpm: Bpm };
  /** One right answer. */
  solution: string[];
}

/** On which count does a cell start? The answer is a slot of its bar. */
export interface StartPuzzle extends Base {
  kind: 'start';
  cells: PuzzleCell[];
  /** Slots before bar 1. */
  pickup: number;
  /** Which cell is asked for, from 0. */
  ask: number;
  /** Where each cell starts: its bar, 0 for the pickup, and the slot in it. */
  starts: { bar: number; slot: SlotIndex }[];
}

/** What holds for a bar but for one stroke. */
export type FixRule =
  | { rule: 'hand-to-hand' }
  | { rule: 'no-more-than'; most: number }
  | { rule: 'cell'; cell: PuzzleCell; lead: Lead }
  | { rule: 'accents'; every: number };

/** One stroke breaks the rule; the answer is its slot. Each slot has one stroke. */
export interface FixPuzzle extends Base {
  kind: 'fix';
  /** A text a slot. */
  strokes: string[];
  asked: FixRule;
  /** Every slot whose mending makes the rule hold. */
  answers: SlotIndex[];
}

/** After how many bars does a cell start on beat 1 again? The answer is a number of bars. */
export interface ResolvesPuzzle extends Base {
  kind: 'resolves';
  cell: PuzzleCell;
  bars: number;
  cells: number;
}

/** One of two things to be told apart. */
export interface Heard {
  /** What it is called: a cell's id, or `closed`, `open`, `right`, `left`. */
  id: string;
  text: string;
  lead: Lead;
  flamMs: Milliseconds;
}

/** Two are heard; which of them is the one asked for? The answer is 1 or 2. */
export interface WhichPuzzle extends Base {
  kind: 'which';
  about: 'cells' | 'width' | 'lead';
  heard: [Heard, Heard];
  ask: string;
  answer: 1 | 2;
  bpm: Bpm;
}

/** Any of them. */
export type Puzzle = LayPuzzle | StartPuzzle | FixPuzzle | ResolvesPuzzle | WhichPuzzle;

/** What is wrong with an answer, and where. Slots are counted from the start of the first bar. */
export type Wrong =
  | { wrong: 'not-on-shelf'; cell: string }
  | { wrong: 'short'; left: number; slot: SlotIndex }
  | { wrong: 'long'; over: number }
  | { wrong: 'too-often'; cell: string; used: number; most: number }
  | { wrong: 'too-seldom'; cell: string; used: number; least: number }
  | { wrong: 'first'; wanted: string; found: string }
  | { wrong: 'last'; wanted: string; found: string }
  | { wrong: 'no-accent'; slot: SlotIndex }
  | { wrong: 'accent'; slot: SlotIndex }
  | { wrong: 'last-stroke'; wanted: SlotIndex; found: SlotIndex }
  | { wrong: 'run'; hand: Hand; length: number; most: number; slot: SlotIndex }
  | { wrong: 'over-bar-line'; cell: string; slot: SlotIndex }
  | { wrong: 'sound'; slot: SlotIndex }
  | { wrong: 'start'; given: SlotIndex; by: number }
  | { wrong: 'not-it'; slot: SlotIndex }
  | { wrong: 'no-home'; bars: number; cells: number; over: number }
  | { wrong: 'home-sooner'; bars: number }
  | { wrong: 'other' };

/** How an answer is graded: right, or everything that is wrong with it, the first thing first. */
export interface Grade {
  right: boolean;
  wrongs: Wrong[];
}
