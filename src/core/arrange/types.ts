import type { Lead } from '../phrase/types.ts';
import type { Sticking } from '../sticking/types.ts';
import type { SlotIndex } from '../time/units.ts';

/** A cell that may be laid. */
export interface ArrangeCell {
  /** Unique among the cells. */
  id: string;
  slots: number;
  /** How often it is used: exactly, or between limits; left out: any number of times. */
  times?: number | { min?: number; max?: number };
  /** Needed by the rules that look at strokes: accents, last stroke, runs. */
  sticking?: Sticking;
}

/** What an order must keep to. Slots are counted from 0 over the whole phrase. */
export interface ArrangeRules {
  /** Id of the first and of the last cell. */
  first?: string;
  last?: string;
  /** An accent must fall on each of these slots. */
  accentOn?: readonly SlotIndex[];
  /** No accent may fall on any of these slots. */
  noAccentOn?: readonly SlotIndex[];
  /** The last stroke, by hand or foot, falls into this slot. */
  lastStrokeOn?: SlotIndex;
  /** No cell crosses a bar line; needs `barSlots`. */
  withinBars?: boolean;
  /** The second of a pair must not follow the first. */
  noJoins?: readonly (readonly [string, string])[];
  /**
   * Most strokes in a row by one hand, over the joins: feet and rests do not break a run, both hands at once lengthen
   * both runs. With `loop`, a hand that plays alone all the way round is in a run without end, which no number allows.
   */
  maxRun?: number;
  /** Whether grace notes count in a run. */
  graces?: boolean;
  /** Whether the phrase goes round, so that its seam counts as a join. */
  loop?: boolean;
  /** The rule of lead under which runs are counted. */
  lead?: Lead;
}

/** What `arrangements` takes. */
export interface ArrangeRequest {
  cells: readonly ArrangeCell[];
  /** Slots to be filled; 0 has one arrangement, of nothing. */
  slots: number;
  /** Slots of a bar, where a rule speaks of bars. */
  barSlots?: number;
  rules?: ArrangeRules;
  /** Beyond so many states the problem is refused; left out: beyond as many as can be held at all. */
  mostStates?: number;
}

/** All orders of cells that fill the slots and keep to the rules, by cells as given, first difference first. */
export interface Arrangements extends Iterable<string[]> {
  /** How many there are, exactly. */
  readonly count: bigint;
  /** The k-th, from 0n. Throws RangeError outside the count. */
  at(k: bigint): string[];
  /** Which one this is; -1n where it is none of them. */
  indexOf(ids: readonly string[]): bigint;
  /** A fair one, by a fair source of numbers from 0 to below 1. Throws RangeError where there is none. */
  sample(random: () => number): string[];
  /** Why there is none, where the count is 0n. */
  readonly reason?: string;
}

/** One of each order round a loop, of those that are the same up to rotation: the one that comes first, in order. */
export interface LoopArrangements extends Iterable<string[]> {
  /** How many there are, exactly. */
  readonly count: bigint;
  /** Why there is none, where the count is 0n. */
  readonly reason?: string;
}

/** What an order asks of the hands, under the rule of lead and, with `loop`, round its seam. */
export interface HandScore {
  /**
   * Longest run of one hand, grace notes counted; feet and rests do not break it, both hands at once lengthen both. One
   * that never ends in a loop is counted once round.
   */
  run: number;
  /**
   * Joins at which one hand goes on: neighboring moments of the hands' line, grace notes counted, that belong to different
   * cells (or passes of a loop) and share a hand.
   */
  joins: number;
  /** The shortest ways from one stroke of a limb to its next, in slots; 4 stands for four or more, and for none. */
  gaps: {
    /** From a main stroke of a hand into another slot; rebounds within a slot are the same in every order. */
    hand: number;
    /** From a grace note to the next stroke of its hand that is not struck at once. */
    grace: number;
    /** From a stroke of a foot into another slot. */
    foot: number;
  };
}

/** An order and what it asks of the hands. */
export interface RankedArrangement {
  ids: string[];
  score: HandScore;
}

/** Which end of the ranking, and how many from there. */
export interface RankOptions {
  order: 'easiest' | 'hardest';
  take: number;
}
