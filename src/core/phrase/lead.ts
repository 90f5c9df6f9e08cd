import { isHand, otherHand } from '../sticking/limbs.ts';
import { mirror } from '../sticking/mirror.ts';
import { slotsOnly } from '../sticking/expand.ts';
import type { Chord, Hand, Sticking } from '../sticking/types.ts';
import type { Cell, Lead } from './types.ts';

/** A cell after the lead rule. */
export interface LedCell {
  id: string;
  sticking: Sticking;
  mirrored: boolean;
}

/** What the lead rule asks of a cell. */
export interface CellHands {
  /** Main hand strokes: feet and single leftovers do not turn the lead. */
  strokes: number;
  /** The hand that leads it as written: the first that strikes alone; nobody where both always strike together. */
  first?: Hand;
  /** The hand that plays last as written; nobody alone where both do. */
  last?: Hand;
}

/** Who led last and who played last; nobody at the beginning. */
export interface LeadState {
  leader?: Hand;
  last?: Hand;
}

/** The hands of each chord that has any, in order: main strokes only. */
function handsOf(sticking: Sticking): Hand[][] {
  return slotsOnly(sticking.hands)
    .flatMap((item) => (item.kind === 'slot' ? item.parts : []))
    .map(handsIn)
    .filter((hands) => hands.length > 0);
}

const handsIn = (chord: Chord): Hand[] => chord.map((s) => s.limb).filter(isHand);

/** The one hand of a chord; nothing where both strike. */
const alone = (hands: Hand[] | undefined): Hand | undefined => (hands?.length === 1 ? hands[0] : undefined);

/** What the lead rule asks of a sticking. */
export function cellHands(sticking: Sticking): CellHands {
  const chords = handsOf(sticking);
  return {
    strokes: chords.flat().length,
    first: chords.map(alone).find((hand) => hand !== undefined),
    last: alone(chords[chords.length - 1]),
  };
}

/**
 * One step of the alternating lead: a cell with more than one hand stroke is led by the hand that did not lead the one
 * before; feet and single leftovers do not turn the lead, and a leftover single goes to the hand that did not play last.
 */
export function turnLead(state: LeadState, hands: CellHands): { mirrored: boolean; state: LeadState } {
  const single = hands.strokes < 2;
  const before = single ? state.last : state.leader;
  const mirrored = hands.first !== undefined && hands.first === before;
  const turn = (hand: Hand | undefined): Hand | undefined => (hand && mirrored ? otherHand(hand) : hand);
  return {
    mirrored,
    state: {
      leader: single ? state.leader : (turn(hands.first) ?? state.leader),
      last: hands.strokes ? turn(hands.last) : state.last,
    },
  };
}

const turned = (cell: Cell, mirrored: boolean): LedCell => ({
  id: cell.id,
  sticking: mirrored ? mirror(cell.sticking) : cell.sticking,
  mirrored,
});

/** Cells under a rule of lead; under the alternating one the first cell is led as written. */
export function leadCells(cells: readonly Cell[], lead: Lead): LedCell[] {
  if (lead !== 'alternating') return cells.map((cell) => turned(cell, lead === 'left'));
  let state: LeadState = {};
  return cells.map((cell) => {
    const step = turnLead(state, cellHands(cell.sticking));
    state = step.state;
    return turned(cell, step.mirrored);
  });
}
