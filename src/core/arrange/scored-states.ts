import { cellHands } from '../phrase/lead.ts';
import { machineFor } from './arrange.ts';
import {
  handKey,
  HANDS_START,
  laidOn,
  NONE,
  RUN,
  seamWeights,
  type HandMemory,
  type ScoredCell,
  type Weights,
} from './hand-score.ts';
import { strokeProfiles } from './profile.ts';
import { discover, machineOf } from './joins.ts';
import { MAX_RANKED_STATES, mostOf } from './limits.ts';
import { explore, type States } from './states.ts';
import type { ArrangeCell, ArrangeRequest } from './types.ts';

/** States that also remember the hands, so that what each further cell asks of them is known. */
export interface ScoredStates extends States {
  /** What a cell asks, laid from a state, with the join before it. */
  asked(state: number, cell: number): Weights;
  /** What the end of the phrase asks: in a loop its seam. */
  closing(state: number): Weights;
}

/** A cell as the score sees it. Throws RangeError where it has no sticking. */
export function scoredCell({ id, sticking }: ArrangeCell): ScoredCell {
  if (!sticking) throw new RangeError(`sticking of "${id}" is undefined; a sticking, which the ranking needs`);
  return { hands: cellHands(sticking), profiles: strokeProfiles(sticking) };
}

interface Memory {
  rule: number;
  hands: HandMemory;
}

/**
 * The states of a request with the hands in mind, of orders in which no hand plays more than so many in a row. Throws
 * RangeError where there are more than can be ranked.
 */
export function scoredStates(request: ArrangeRequest, longest: number): ScoredStates {
  const { slots, rules = {} } = request;
  const cells = request.cells.map(scoredCell);
  const machine = machineFor(request);
  const most = mostOf(request, MAX_RANKED_STATES);
  const found = discover<Memory>(
    request.cells.map((cell) => cell.slots),
    slots,
    { rule: 0, hands: HANDS_START },
    ({ rule, hands }) => `${rule}:${handKey(hands)}`,
    ({ rule, hands }, cell) => {
      const next = machine.joins.next(rule, cell);
      if (next < 0) return undefined;
      const laid = laidOn(hands, cells[cell], rules);
      return laid.weights[RUN] > longest ? undefined : { rule: next, hands: laid.memory };
    },
    most,
  );
  const { memories, next } = found;
  const closing = memories.map(({ hands }) => (rules.loop ? seamWeights(hands) : NONE));
  const closes = memories.map(({ rule }, i) => machine.joins.closes(rule) && closing[i][RUN] <= longest);
  const states = explore(request, { ...machine, joins: machineOf({ cells: cells.length, next, closes }) }, most);
  const weights: Weights[] = [];
  const weigh = (memory: number, cell: number): Weights =>
    (weights[memory * cells.length + cell] ??= laidOn(memories[memory].hands, cells[cell], rules).weights);
  return {
    ...states,
    asked: (state, cell) => weigh(states.memory[state], cell),
    closing: (state) => closing[states.memory[state]],
  };
}
