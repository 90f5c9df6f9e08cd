import type { Place } from './places.ts';

/** Which of the places that stand for the same slot this one is: how often the slot came by before it in the pass. */
function turnOf(place: Place, places: readonly Place[]): number {
  return places.filter(({ phase, own, tick }) => phase === place.phase && own === place.own && tick < place.tick)
    .length;
}

/** Of places of one phase those that stand nearest to a tick of its timeline. */
function nearest(places: readonly Place[], own: number): Place[] {
  const distance = Math.min(...places.map((place) => Math.abs(place.own - own)));
  return places.filter((place) => Math.abs(place.own - own) === distance);
}

/** A place of the check goes on in the pattern where there is no check any more. */
function candidates(place: Place, places: readonly Place[]): Place[] {
  const same = places.filter(({ phase }) => phase === place.phase);
  return same.length > 0 ? same : places.filter(({ phase }) => phase === 'pattern');
}

/**
 * The same musical place in another plan's pass: same phase, same tick of its timeline, same run through it where it has
 * as many. Where the tick is not there any more, the nearest one that is.
 */
export function samePlace(place: Place, from: readonly Place[], to: readonly Place[]): Place {
  const alike = nearest(candidates(place, to), place.own);
  return alike[Math.min(turnOf(place, from), alike.length - 1)];
}
