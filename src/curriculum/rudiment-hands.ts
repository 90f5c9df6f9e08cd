/** What the plain sticking of a rudiment says: `lR L L R`. */

/** A main stroke of a plain sticking with its grace notes, as hands. */
export interface PlainStroke {
  graces: string;
  hand: string;
}

/** The strokes of a plain sticking: `strokesOf('lR L')` has two, the first with one grace note. */
export function strokesOf(hands: string): PlainStroke[] {
  return hands.split(' ').map((word) => ({ graces: word.slice(0, -1), hand: word.slice(-1) }));
}

/** The hands of the main strokes alone: `mainHands('lR L')` is `'RL'`. */
export const mainHands = (hands: string): string =>
  strokesOf(hands)
    .map(({ hand }) => hand)
    .join('');

const OTHER: Record<string, string> = { R: 'L', L: 'R', r: 'l', l: 'r' };

/** The same sticking begun by the other hand: `otherHands('lR L')` is `'rL R'`. */
export const otherHands = (hands: string): string => hands.replace(/[RLrl]/g, (hand) => OTHER[hand]);

/**
 * The order of hands of a rudiment played round and round, in a form that two rudiments share exactly when their hands
 * do the same, grace notes left out and wherever one begins: of `R L R R L R L L` and of `lR R L R rL L R L` it is the same.
 */
export function handLoop(rudiment: { hands: string; alternates?: boolean }): string {
  const once = mainHands(rudiment.hands);
  return leastTurn(shortestLoop(rudiment.alternates ? once + otherHands(once) : once));
}

/** The shortest row that repeated gives this one: `RLRL` is `RL`. */
function shortestLoop(row: string): string {
  const lengths = Array.from(row, (_, index) => index + 1);
  const length = lengths.find((one) => row === row.slice(0, one).repeat(row.length / one));
  return row.slice(0, length);
}

/** The first in the alphabet of all turns of a row, so that where it begins does not matter. */
function leastTurn(row: string): string {
  return Array.from(row, (_, from) => row.slice(from) + row.slice(0, from)).sort()[0];
}
