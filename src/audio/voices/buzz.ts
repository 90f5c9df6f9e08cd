import { byHand, strikeHead } from './head.ts';
import { nearly } from './rng.ts';
import { mix, silence, type Signal, type Take } from './signal.ts';
import { landing, SNARE, TAP, withWires } from './snare.ts';

/** When the stick lands and how hard, against the first time. */
export interface Bounce {
  seconds: number;
  level: number;
}

const BOUNCES = 12;
/** The gap after the first touch, and what is left of gap and level from one bounce to the next (ours). */
const FIRST_GAP = 0.028;
const GAP_KEPT = 0.9;
const LEVEL_KEPT = 0.81;

/** The bounces of a stick pressed into the head: ever closer, ever softer. */
export function bouncesOf({ random }: Pick<Take, 'random'>): Bounce[] {
  const bounces: Bounce[] = [];
  let [seconds, gap, level] = [0, FIRST_GAP, 1];
  while (bounces.length < BOUNCES) {
    bounces.push({ seconds, level });
    seconds += gap * nearly(random, 0.04);
    gap *= GAP_KEPT;
    level *= LEVEL_KEPT * nearly(random, 0.04);
  }
  return bounces;
}

/** A multiple-bounce stroke. The wires follow the head through all the bounces and hardly come to rest between them. */
export function buzz(take: Take): Signal {
  const head = silence(0.65, take.rate);
  const attack = silence(0.35, take.rate);
  const touches = [touch(take), touch(take)] as const;
  bouncesOf(take).forEach(({ seconds, level }, i) => {
    const at = Math.round(seconds * take.rate);
    mix(head, touches[i % 2 === 0 ? 0 : 1], level, at);
    mix(attack, landing(TAP, take), 0.5 * level, at);
  });
  return withWires(head, 0.35, take, attack, 1.2);
}

/** What one bounce does to the head. Two of them, taken in turn, are enough variety at that speed. */
function touch(take: Take): Signal {
  const blow = byHand({ ...TAP, strength: 0.5 * TAP.strength, place: 0.33 }, take);
  return strikeHead(silence(0.3, take.rate), SNARE, blow, take);
}
