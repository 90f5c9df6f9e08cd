import { checkOptions, ids as checkIds, must, oneOf, whole } from '../check.ts';
import { checkRequest } from './check.ts';
import type { Counter } from './walk.ts';
import { countByStates } from './count-states.ts';
import { HANDS_START, JOINS, laidOn, NONE, scoreOf, seamWeights, together, type Weights } from './hand-score.ts';
import { scoredCell, scoredStates, type ScoredStates } from './scored-states.ts';
import type { ArrangeRequest, HandScore, RankedArrangement, RankOptions } from './types.ts';
import { each } from './walk.ts';

const ORDERS = ['easiest', 'hardest'];

/**
 * The orders that ask least, or most, of the hands, found without listing the others. First counts the longest run of one
 * hand, grace notes included; of equal ones how many joins let one hand go on; then the tightest gaps of hands, of grace
 * notes and of feet, in this order. What is equal in all of it stands in the order of `arrangements`. All cells need
 * stickings; the lead and, with `loop`, the seam are taken into account. Throws RangeError for malformed input and for
 * problems of more than 50,000 states.
 * @example
 * rankArrangements({ cells: [{ id: 'RL', slots: 2, sticking: parseSticking('R L').sticking, times: 1 }, { id: 'LR', slots: 2, sticking: parseSticking('L R').sticking, times: 1 }, { id: 'K', slots: 1, sticking: parseSticking('K').sticking, times: 1 }], slots: 5 }, { order: 'easiest', take: 1 }) // → [{ ids: ['RL', 'K', 'LR'], score: { run: 2, joins: 1, gaps: { hand: 2, grace: 4, foot: 4 } } }]
 */
export function rankArrangements(request: ArrangeRequest, options: RankOptions): RankedArrangement[] {
  checkRequest(request);
  checkOptions('rankArrangements', options);
  const { order, take } = options;
  oneOf('order', order, ORDERS);
  whole('take', take, 0);
  const found: RankedArrangement[] = [];
  if (take === 0) return found;
  const states = order === 'easiest' ? easyStates(request, take) : scoredStates(request, Infinity);
  for (const { path, weights } of search(states, order === 'hardest', [], sumsOf(states, []))) {
    found.push({ ids: path.map((cell) => request.cells[cell].id), score: scoreOf(weights) });
    if (found.length === take) break;
  }
  return found;
}

/** Long runs are remembered only where orders of shorter ones, all of which are easier, are too few. */
function easyStates(request: ArrangeRequest, take: number): ScoredStates {
  for (const longest of [2, 4, 8]) {
    const states = scoredStates(request, longest);
    if (countByStates(states).count >= BigInt(take)) return states;
  }
  return scoredStates(request, Infinity);
}

/**
 * What one order of the cells asks of the hands, by the same measure; whether it keeps to uses and rules does not matter.
 * Throws RangeError for ids that are not among the cells, and for cells without a sticking.
 * @example
 * scoreOrder({ cells: [{ id: 'RLL', slots: 3, sticking: parseSticking('R L L').sticking }], slots: 6 }, ['RLL', 'RLL']) // → { run: 2, joins: 0, gaps: { hand: 1, grace: 4, foot: 4 } }
 */
export function scoreOrder(request: ArrangeRequest, ids: readonly string[]): HandScore {
  checkRequest(request);
  checkIds('ids', ids);
  const { cells, rules = {} } = request;
  let memory = HANDS_START;
  let weights = NONE;
  for (const id of ids) {
    const cell = cells.find((one) => one.id === id);
    must(cell !== undefined, 'id', id, `one of ${cells.map((one) => one.id).join(', ')}`);
    const laid = laidOn(memory, scoredCell(cell), rules);
    memory = laid.memory;
    weights = together(weights, laid.weights);
  }
  return scoreOf(rules.loop ? together(weights, seamWeights(memory)) : weights);
}

/** The weights that are the greatest met; each of them is asked for exactly, and so must be met and never passed. */
type Wanted = { index: number; value: number };

/**
 * For each state and each set of wanted weights that were met before it: with which sums of joins the phrase can be brought
 * to an end so that all are met and none is passed. Bit n stands for n joins.
 */
interface Sums {
  readonly sets: number;
  readonly bits: readonly bigint[];
  /** The wanted weights that are met before anything is laid: those of 0. */
  readonly first: number;
  /** The wanted weights that these meet, as bits; -1 where one is passed. */
  met(weights: Weights): number;
}

function sumsOf(states: ScoredStates, wanted: readonly Wanted[]): Sums {
  const sets = 2 ** wanted.length;
  const bits: bigint[] = Array.from({ length: states.size * sets }, () => 0n);
  const met = (weights: Weights): number => {
    if (wanted.some(({ index, value }) => weights[index] > value)) return -1;
    return wanted.reduce((set, { index, value }, i) => (weights[index] === value ? set | (1 << i) : set), 0);
  };
  const end = (state: number): void => {
    const weights = states.closing(state);
    const set = met(weights);
    for (let before = 0; before < sets && set >= 0; before += 1)
      if ((before | set) === sets - 1) bits[state * sets + before] = 1n << BigInt(weights[JOINS]);
  };
  const step = (state: number, cell: number): void => {
    const to = states.next[state * states.cells + cell];
    const weights = to > 0 ? states.asked(state, cell) : NONE;
    const set = to > 0 ? met(weights) : -1;
    for (let before = 0; before < sets && set >= 0; before += 1) {
      const after = bits[to * sets + (before | set)];
      if (after > 0n) bits[state * sets + before] |= weights[JOINS] > 0 ? after << 1n : after;
    }
  };
  for (const layer of [...states.layers].reverse())
    for (const state of layer) {
      if (states.ends(state)) end(state);
      for (let cell = 0; cell < states.cells; cell += 1) step(state, cell);
    }
  return { sets, bits, first: Math.max(0, met(NONE)), met };
}

interface Found {
  path: number[];
  weights: Weights;
}

/** Fixes one weight after the other, best first, only to values with which there are orders; then lists those orders. */
function* search(states: ScoredStates, hardest: boolean, fixed: number[], sums: Sums): Generator<Found, undefined> {
  if (fixed.length === NONE.length) {
    const weights = fixed as unknown as Weights;
    for (const path of each(ordersOf(states, sums, weights[JOINS]), [...Array(states.cells).keys()]))
      yield { path, weights };
    return;
  }
  for (const value of inTurn(valuesOf(states, fixed.length, sums), hardest)) {
    const next = [...fixed, value];
    const closer = fixed.length === JOINS ? sums : sumsOf(states, wantedOf(next));
    if (isMet(closer, next[JOINS])) yield* search(states, hardest, next, closer);
  }
}

const wantedOf = (fixed: readonly number[]): Wanted[] =>
  fixed.map((value, index) => ({ index, value })).filter(({ index }) => index !== JOINS);

/** Whether any order is left; where joins are fixed, one of so many. */
const isMet = ({ bits, first }: Sums, joins: number | undefined): boolean =>
  joins === undefined ? bits[first] > 0n : ((bits[first] >> BigInt(joins)) & 1n) === 1n;

const inTurn = (values: number[], hardest: boolean): number[] => values.sort((a, b) => (hardest ? b - a : a - b));

/** The values that a weight can have at all. */
function valuesOf(states: ScoredStates, index: number, { bits, first }: Sums): number[] {
  if (index === JOINS) return [...bits[first].toString(2)].reverse().flatMap((bit, n) => (bit === '1' ? [n] : []));
  const values = new Set([0]);
  for (let state = 0; state < states.size; state += 1) {
    if (states.ends(state)) values.add(states.closing(state)[index]);
    for (let cell = 0; cell < states.cells; cell += 1)
      if (states.next[state * states.cells + cell] > 0) values.add(states.asked(state, cell)[index]);
  }
  return [...values];
}

/** The orders that ask exactly what is wanted, as states of their own: the state, what has been met, joins that are left. */
function ordersOf(
  states: ScoredStates,
  { sets, bits, first, met }: Sums,
  joins: number,
): Pick<Counter, 'start' | 'next' | 'isOpen' | 'isFull'> {
  const size = joins + 1;
  const placeOf = (state: number): number => Math.floor(state / size);
  const stateOf = (state: number): number => Math.floor(placeOf(state) / sets);
  return {
    start: first * size + joins,
    isOpen: (state) => ((bits[placeOf(state)] >> BigInt(state % size)) & 1n) === 1n,
    isFull: (state) => states.slot[stateOf(state)] === states.layers.length - 1,
    next: (state, cell) => {
      const to = states.next[stateOf(state) * states.cells + cell];
      if (to === 0) return -1;
      const weights = states.asked(stateOf(state), cell);
      const set = met(weights);
      const left = (state % size) - weights[JOINS];
      return set < 0 || left < 0 ? -1 : (to * sets + ((placeOf(state) % sets) | set)) * size + left;
    },
  };
}
