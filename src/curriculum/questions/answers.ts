import { sayCount, type Hand, type Motion, type Surface } from '../../core/index.ts';
import { plainAnswer } from '../plain-answer.ts';

/** What stands on a count, as `kind-at` tells it. */
export type StrokeName = 'single' | 'flam' | 'drag' | 'ruff' | 'diddle' | 'buzz' | 'ghost' | 'foot' | 'nothing';

/** What is right, as a property of the bar; how it is said is left to whoever shows it. */
export type Answer =
  | { kind: 'hand'; hands: Hand[] }
  | { kind: 'count'; count: string; bar: number; said?: string }
  | { kind: 'number'; value: number }
  | { kind: 'place'; place: number }
  | { kind: 'motion'; motion: Motion }
  | { kind: 'stroke'; stroke: StrokeName }
  | { kind: 'surface'; surface: Surface }
  | { kind: 'text'; text: string };

/** An answer, or why there is none, in words for the author. */
export type AnswerResult = { ok: true; answer: Answer } | NoAnswer;

/** Why there is no answer, and which attribute is to blame. */
export interface NoAnswer {
  ok: false;
  attribute: string;
  message: string;
}

/** Why an answer is near the right one and still wrong. */
export type MissReason =
  | 'grace-note-hand'
  | 'primary-hand'
  | 'foot-not-hand'
  | 'cell-before'
  | 'cell-after'
  | 'slot-before'
  | 'slot-after'
  | 'graces-left-out'
  | 'diddles-as-one'
  | 'both-left-out'
  | 'seam-left-out'
  | 'cells-for-slots'
  | 'slots-for-cells'
  | 'cells-for-bars'
  | 'bars-for-cells'
  | 'start-counted'
  | 'end-not-counted'
  | 'start-right'
  | 'end-right';

/** A wrong answer that shows what was thought. */
export interface Miss {
  answer: Answer;
  why: MissReason;
}

/** A wrong number that shows what was thought; none below 0. */
export const numberMiss = (of: number | undefined, why: MissReason): Miss | undefined =>
  of === undefined || of < 0 ? undefined : { answer: { kind: 'number', value: of }, why };

/** The answer to another question as a miss of this one. */
export const missOf = (found: AnswerResult, why: MissReason): Miss | undefined =>
  found.ok ? { answer: found.answer, why } : undefined;

/** A number as an answer. */
export const number = (value: number): AnswerResult => ({ ok: true, answer: { kind: 'number', value } });

/** A count as an answer, in a bar counted from 1. */
export const countAnswer = (count: string, bar: number): AnswerResult => ({
  ok: true,
  answer: { kind: 'count', count, bar },
});

/** Hands as an answer. */
export const handAnswer = (hands: Hand[]): AnswerResult => ({ ok: true, answer: { kind: 'hand', hands } });

/** No answer, with the attribute to blame and the reason. */
export const no = (attribute: string, message: string): NoAnswer => ({ ok: false, attribute, message });

const HAND_WORDS: Record<Hand, string> = { R: 'right', L: 'left' };

/** Words for a thing; the first is shown, all are taken. */
type Words = readonly [string, ...string[]];

const MOTION_WORDS: Record<Motion, Words> = {
  full: ['full stroke', 'full'],
  down: ['down stroke', 'down'],
  tap: ['tap', 'tap stroke'],
  up: ['up stroke', 'up'],
};

const STROKE_WORDS: Record<StrokeName, Words> = {
  single: ['single', 'a single', 'single stroke', 'a single stroke'],
  flam: ['flam', 'a flam'],
  drag: ['drag', 'a drag'],
  ruff: ['ruff', 'a ruff', 'four-stroke ruff'],
  diddle: ['diddle', 'a diddle'],
  buzz: ['buzz', 'a buzz'],
  ghost: ['ghost note', 'a ghost note', 'ghost'],
  foot: ['foot', 'a foot', 'kick', 'a kick'],
  nothing: ['nothing', 'rest', 'a rest'],
};

const SURFACE_WORDS: Record<Surface, Words> = {
  snare: ['snare', 'snare drum'],
  rimshot: ['rimshot', 'snare'],
  cross: ['cross-stick', 'cross stick'],
  rim: ['rim'],
  click: ['stick click', 'sticks'],
  tom1: ['high tom'],
  tom2: ['middle tom', 'second tom'],
  floor: ['floor tom'],
  hat: ['hi-hat', 'hihat', 'hi hat'],
  open: ['open hi-hat', 'open hihat', 'hi-hat'],
  half: ['half-open hi-hat', 'hi-hat'],
  pedal: ['hi-hat by foot', 'hi-hat', 'hi-hat foot'],
  splash: ['splash'],
  ride: ['ride', 'ride cymbal'],
  bell: ['ride bell', 'bell', 'bell of ride'],
  crash: ['crash', 'crash cymbal'],
  choke: ['choked crash', 'crash'],
  china: ['china'],
  cowbell: ['cowbell'],
  kick: ['kick', 'bass drum'],
};

/**
 * An answer as it is shown.
 *
 * @example `answerText({ kind: 'count', count: '1 a', bar: 1 })` is `'the a of 1'`
 */
export function answerText(answer: Answer): string {
  return waysToSay(answer)[0];
}

/** All the ways in which an answer may be given, in the form that `plainAnswer` makes of what is typed. */
export function answersTaken(answer: Answer): string[] {
  return [...new Set(waysToSay(answer).map(plainAnswer))];
}

function waysToSay(answer: Answer): Words {
  if (answer.kind === 'hand') return handWays(answer.hands);
  if (answer.kind === 'count') return countWays(answer);
  if (answer.kind === 'number') return numberWays(answer.value);
  if (answer.kind === 'place') return placeWays(answer.place);
  if (answer.kind === 'motion') return MOTION_WORDS[answer.motion];
  if (answer.kind === 'stroke') return STROKE_WORDS[answer.stroke];
  return answer.kind === 'surface' ? SURFACE_WORDS[answer.surface] : [answer.text];
}

function handWays(hands: Hand[]): Words {
  if (hands.length === 2) return ['both', 'both hands', 'right and left'];
  const [hand] = hands;
  return hand ? [HAND_WORDS[hand], hand, `${HAND_WORDS[hand]} hand`] : ['neither', 'none', 'no hand'];
}

function countWays({ count, bar, said = sayCount(count) }: Answer & { kind: 'count' }): Words {
  const places: Words = [said, count, count.replace(' ', '')];
  // Bar 0 is a pickup, which no one counts.
  if (bar < 2) return places;
  return [`${said}, bar ${bar}`, ...places, ...places.map((place) => `${place} bar ${bar}`)];
}

const NUMBER_WORDS =
  'none one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(' ');

function numberWays(value: number): Words {
  const whole = Math.floor(value);
  if (value - whole === 0.5) return [String(value), `${whole} 1/2`, `${NUMBER_WORDS[whole]} and a half`, `${whole}½`];
  return NUMBER_WORDS[value] === undefined ? [String(value)] : [String(value), NUMBER_WORDS[value]];
}

const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];

function placeWays(place: number): Words {
  const word = ORDINALS[place];
  return word ? [`the ${word}`, String(place), NUMBER_WORDS[place]] : [`number ${place}`, String(place)];
}
