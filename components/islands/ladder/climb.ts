/** Where one stands on a ladder: on which step, going up or coming down, and since which round. */
export interface Climb {
  step: number;
  falling: boolean;
  /** The round in which the step began, from 1. */
  since: number;
}

/** A ladder: the number of its steps, and how many rounds each is held. */
export interface Rungs {
  steps: number;
  rounds: number;
}

/** The foot of a ladder. */
export const FOOT: Climb = { step: 0, falling: false, since: 1 };

/**
 * Where one stands in a round; undefined once the last step on the way down is over.
 *
 * @example climbed(FOOT, 5, { steps: 7, rounds: 4 }) // { step: 1, falling: false, since: 5 }
 */
export function climbed(at: Climb, round: number, { steps, rounds }: Rungs): Climb | undefined {
  if (round < at.since + rounds) return at;
  const falling = at.falling || at.step === steps - 1;
  const step = at.step + (falling ? -1 : 1);
  return step < 0 ? undefined : { step, falling, since: round };
}

/** From here on down: the present step is held to its end. */
export const turned = (at: Climb): Climb => ({ ...at, falling: true });

/** On another step, in the same direction, from this round on. */
export const moved = (at: Climb, step: number, round: number): Climb => ({ ...at, step, since: round });
