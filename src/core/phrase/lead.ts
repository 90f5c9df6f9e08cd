import { mirror, otherHand } from '../sticking/mirror.ts';
import { slotsOnly } from '../sticking/expand.ts';
import type { Chord, Hand, Sticking } from '../sticking/types.ts';
import type { Cell, Lead } from './types.ts';

/** A cell after the lead rule. */
export interface LedCell {
  id: string;
  sticking: Sticking;
  mirrored: boolean;
}

/** The hands of each chord that has any, in order: main strokes only. */
function handsOf(sticking: Sticking): Hand[][] {
  return slotsOnly(sticking.hands)
    .flatMap((item) => (item.kind === 'slot' ? item.parts : []))
    .map(handsIn)
    .filter((hands) => hands.length > 0);
}

const handsIn = (chord: Chord): Hand[] =>
  chord.map((s) => s.limb).filter((limb): limb is Hand => limb === 'R' || limb === 'L');

/** The one hand of a chord; nothing where both strike. */
const alone = (hands: Hand[] | undefined): Hand | undefined => (hands?.length === 1 ? hands[0] : undefined);

const turned = (cell: Cell, mirrored: boolean): LedCell => ({
  id: cell.id,
  sticking: mirrored ? mirror(cell.sticking) : cell.sticking,
  mirrored,
});

/**
 * Cells under a rule of lead. Alternating: a cell with more than one hand stroke is led by the hand that did not lead the
 * one before, the first as written; feet and single leftovers do not turn the lead, and a leftover single goes to the
 * hand that did not play last.
 */
export function leadCells(cells: readonly Cell[], lead: Lead): LedCell[] {
  if (lead !== 'alternating') return cells.map((cell) => turned(cell, lead === 'left'));
  let leader: Hand | undefined;
  let last: Hand | undefined;
  return cells.map((cell) => {
    const strokes = handsOf(cell.sticking);
    const single = strokes.flat().length < 2;
    const before = single ? last : leader;
    const first = single ? alone(strokes[0]) : strokes.map(alone).find((hand) => hand !== undefined);
    const mirrored = first !== undefined && before !== undefined && first === before;
    const turn = (hand: Hand): Hand => (mirrored ? otherHand(hand) : hand);
    if (!single && first) leader = turn(first);
    if (strokes.length) last = lastOf(strokes, turn);
    return turned(cell, mirrored);
  });
}

/** Who played last; nobody alone where both hands did. */
function lastOf(strokes: Hand[][], turn: (hand: Hand) => Hand): Hand | undefined {
  const hand = alone(strokes[strokes.length - 1]);
  return hand && turn(hand);
}
