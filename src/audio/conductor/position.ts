import type { Seconds } from '../../core/index.ts';
import type { Place } from '../plan/places.ts';
import type { Hit } from '../plan/plan.ts';
import type { Phase, Position } from '../types.ts';
import { hitMoment, holds, type Turn } from './turns.ts';

/** Index of the last place at or before a time of its pass. */
function placeAt(places: readonly Place[], seconds: Seconds): number {
  const after = places.findIndex((place) => place.seconds > seconds);
  return Math.max(0, (after < 0 ? places.length : after) - 1);
}

/** Within a slot time runs evenly, with swing too: core makes whole slots longer or shorter. */
function ownTick({ places, end, ticks }: Turn['pass'], index: number, seconds: Seconds): number {
  const place = places[index];
  const next = places[index + 1] ?? { seconds: end, tick: ticks };
  const share = (seconds - place.seconds) / (next.seconds - place.seconds);
  return place.own + Math.max(0, share) * (next.tick - place.tick);
}

function isLit(turn: Turn, hit: Hit, moment: Seconds): boolean {
  const from = hitMoment(turn, hit);
  return hit.lit !== undefined && from <= moment && moment < from + hit.lit.seconds;
}

function litAt(turns: readonly Turn[], moment: Seconds, phase: Phase): string[] {
  const lit = turns.flatMap((turn) => turn.pass.hits.filter((hit) => isLit(turn, hit, moment) && holds(turn, hit)));
  return [...new Set(lit.flatMap((hit) => (hit.lit?.phase === phase ? [hit.lit.id] : [])))];
}

/** What is heard at a moment of the audio context's time; undefined before the first turn and after the last. */
export function positionIn(turns: readonly Turn[], moment: Seconds): Position | undefined {
  const turn = turns.find(({ from, until }) => from <= moment && moment < until);
  if (!turn) return undefined;
  const seconds = moment - turn.start;
  const index = placeAt(turn.pass.places, seconds);
  const { phase, bar, count } = turn.pass.places[index];
  const tick = ownTick(turn.pass, index, seconds);
  return { phase, pass: turn.number, bar, tick, count, lit: litAt(turns, moment, phase) };
}
