import type { Seconds } from '../../core/index.ts';
import type { Plan } from '../plan/plan.ts';
import type { Place } from '../plan/places.ts';
import { samePlace } from '../plan/resume.ts';
import type { PlayRequest } from '../types.ts';
import { holds, momentOf, reaches, SAME, turnFrom, type Turn } from './turns.ts';

/** Where an old plan ends and a new one goes on. */
export interface Cut {
  turn: Turn;
  moment: Seconds;
  next: Turn;
}

const gridsOf = ({ timeline }: PlayRequest): string =>
  timeline.bars.map(({ meter, grid }) => `${meter}:${grid}`).join();

/** With swing or grid changed only the beats stay where they are: the pulse goes on unbroken where a beat is the seam. */
function needsBeat(a: PlayRequest, b: PlayRequest): boolean {
  return a.swing !== b.swing || gridsOf(a) !== gridsOf(b);
}

/** The places still to come from a moment on. */
export function placesAhead(turns: readonly Turn[], from: Seconds): { turn: Turn; place: Place }[] {
  return turns.flatMap((turn) =>
    turn.pass.places
      .filter((place) => reaches(turn, place) && momentOf(turn, place) >= from)
      .map((place) => ({ turn, place })),
  );
}

/** When the last stroke before a moment is played. */
function lastStrokeBefore(turns: readonly Turn[], moment: Seconds): Seconds {
  const homes = turns.flatMap((turn) =>
    turn.pass.hits.filter((hit) => 'stroke' in hit.sound && holds(turn, hit)).map(({ home }) => turn.start + home),
  );
  return Math.max(-Infinity, ...homes.filter((home) => home < moment - SAME));
}

/** Within half the gap to the stroke before, as core has it: that stroke is the old plan's, so core cannot know the gap. */
function squeezeFor(turns: readonly Turn[], { moment, next }: Cut): number {
  const target = moment - next.start;
  const figure = next.pass.hits.filter(({ home }) => Math.abs(home - target) < SAME);
  const ahead = Math.max(0, ...figure.map(({ home, seconds }) => home - seconds));
  return ahead === 0 ? 1 : Math.min(1, (moment - lastStrokeBefore(turns, moment)) / 2 / ahead);
}

function cutAt(turn: Turn, place: Place, plan: Plan): { cut: Cut; clean: boolean } {
  const pass = turn.number === 1 ? plan.first : plan.again;
  const target = samePlace(place, turn.pass.places, pass.places);
  const moment = momentOf(turn, place);
  const next = turnFrom(plan, pass, turn.number, target, moment);
  return { cut: { turn, moment, next }, clean: !place.split && !target.split };
}

const squeezed = (turns: readonly Turn[], cut: Cut): Cut => ({
  ...cut,
  next: { ...cut.next, squeeze: squeezeFor(turns, cut) },
});

/** The first place at or after a moment where the new plan can take over without breaking a figure in two. */
export function findCut(turns: readonly Turn[], plan: Plan, from: Seconds): Cut | undefined {
  const ahead = placesAhead(turns, from);
  const seams = ahead.filter(({ turn, place }) => place.beat || !needsBeat(turn.plan.request, plan.request));
  const cuts = (seams.length > 0 ? seams : ahead).map(({ turn, place }) => cutAt(turn, place, plan));
  const best = cuts.find(({ clean }) => clean) ?? cuts[0];
  return best && squeezed(turns, best.cut);
}

/** Where no place is left in a plan that ends, the new one may go on with a pass of its own. */
export function cutAtEnd(turn: Turn, plan: Plan): Cut | undefined {
  if (!plan.request.loop) return undefined;
  const { until } = turn;
  const next = turnFrom(plan, plan.again, turn.number + 1, plan.again.places[0], until);
  return squeezed([turn], { turn, moment: until, next });
}
