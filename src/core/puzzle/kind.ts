import type { Grid, MeterText } from '../time/units.ts';
import type { Difficulty, Level } from './level.ts';

/** What every puzzle has. */
export interface PuzzleBase {
  kind: string;
  seed: number;
  level: Level;
  meter: MeterText;
  grid: Grid;
  /** Slots of all its bars. */
  slots: number;
  barSlots: number;
  difficulty: Difficulty;
}

/** What an answer looks like: the ids of cells in order, or one number (a slot, a number of bars, 1 or 2). */
export type Answer = readonly string[] | number;

/** How an answer is graded: right, or everything that is wrong with it, the first thing first. */
export interface Grade<W = { wrong: string }> {
  right: boolean;
  wrongs: W[];
}

/** A kind of puzzle: P is a puzzle of it, A an answer, W what can be wrong with one, H a hint. */
export interface PuzzleKindRecord<P = PuzzleBase, A = Answer, W = { wrong: string }, H = { hint: string }> {
  /** Which source of chance the kind has: part of what a seed means, so never changed and never given to another kind. */
  number: number;
  /** The answer that stands there before anything is chosen; undefined where there is none. */
  unanswered: A | undefined;
  /** The puzzle of a seed, always the same. Throws RangeError for what is no seed. */
  make(seed: number): P;
  /** Grades by what the puzzle asks for. Throws RangeError for an answer that cannot be given. */
  grade(puzzle: P, answer: A): Grade<W>;
  /** A right answer, to be shown. */
  solution(puzzle: P): A;
  /** Help with an answer so far, more of it with each step from 0 on. */
  hint?(puzzle: P, answer: A, step: number): H;
  /** Another right answer than this one; undefined where there is none. */
  another?(puzzle: P, answer: A): A | undefined;
}

/** The grade of a right answer. */
export const RIGHT: Grade<never> = { right: true, wrongs: [] };

/** The grade of an answer with one thing wrong. */
export const wrongBy = <W>(wrong: W): Grade<W> => ({ right: false, wrongs: [wrong] });
