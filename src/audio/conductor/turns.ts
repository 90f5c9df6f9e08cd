import type { Seconds } from '../../core/index.ts';
import type { Hit, Pass, Plan } from '../plan/plan.ts';
import type { Place } from '../plan/places.ts';

/** A pass, or what is left of one, at its place in the time of the audio context. */
export interface Turn {
  plan: Plan;
  pass: Pass;
  /** Of its pass, from 1. */
  number: number;
  /** When the pass has its own time 0. */
  start: Seconds;
  /** It is heard from here up to `until`; its strokes count by when their primaries sound. */
  from: Seconds;
  until: Seconds;
  /** What share of their width the grace notes of its first stroke keep; less than 1 only after a change. */
  squeeze: number;
  /** Index of the first hit that was not looked at yet. */
  next: number;
}

/** Two times nearer than this are one: far less than a sample, far more than what sums of seconds lose. */
export const SAME: Seconds = 1e-6;

/** When the first sound of a plan or its first place comes, in the time of its first pass. */
export function firstMoment({ first }: Plan): Seconds {
  return Math.min(first.places[0].seconds, first.hits[0]?.seconds ?? Infinity);
}

/** The opening pass with its own time 0 at `start`. */
export function openingTurn(plan: Plan, start: Seconds): Turn {
  const from = start + firstMoment(plan);
  return { plan, pass: plan.first, number: 1, start, from, until: start + plan.first.end, squeeze: 1, next: 0 };
}

/** The pass after this one, if there is one. */
export function turnAfter({ plan, number, until }: Turn): Turn | undefined {
  if (!plan.request.loop) return undefined;
  const { again } = plan;
  return {
    plan,
    pass: again,
    number: number + 1,
    start: until,
    from: until,
    until: until + again.end,
    squeeze: 1,
    next: 0,
  };
}

/** The rest of a pass from one of its places on, which is to be heard at `cut`. */
export function turnFrom(plan: Plan, pass: Pass, number: number, place: Place, cut: Seconds): Turn {
  const start = cut - place.seconds;
  return { plan, pass, number, start, from: cut, until: start + pass.end, squeeze: 1, next: 0 };
}

/** Whether a sound belongs to this turn and not to the one before or after. */
export function holds({ start, from, until }: Turn, { home }: Hit): boolean {
  return start + home >= from - SAME && start + home < until - SAME;
}

/** When a hit of a turn is heard. */
export function hitMoment({ start, from, squeeze }: Turn, { seconds, home }: Hit): Seconds {
  const early = home - seconds;
  return start + home - (start + home < from + SAME ? squeeze * early : early);
}

/** When a place of a turn is heard. */
export const momentOf = (turn: Turn, place: Place): Seconds => turn.start + place.seconds;

/** Whether a turn is heard at a place of its pass. */
export function reaches(turn: Turn, place: Place): boolean {
  const moment = momentOf(turn, place);
  return moment >= turn.from - SAME && moment < turn.until - SAME;
}
