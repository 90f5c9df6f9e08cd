import { hands, motions, type Hand, type Motion, type Stroke, type Ticks, type Timeline } from '../core/index.ts';
import { countAnswer, handAnswer, no, number, type NoAnswer, type StrokeName } from './question-answers.ts';
import type { Compute } from './question-compute.ts';
import { STROKE_COUNTS } from './question-kinds.ts';
import { placeAsked, type Found, type Place } from './question-place.ts';
import { isGrace, isHand, strokesNamed } from './question-strokes.ts';
import type { QuestionAttributes } from './vocabulary.ts';

const HANDS: Hand[] = ['R', 'L'];
const HAND_NAMES: Record<string, Hand | undefined> = { right: 'R', left: 'L' };

const noneOf = (of: unknown): NoAnswer =>
  no('of', `of is "${of}"; it takes a surface or one of: ${STROKE_COUNTS.join(', ')}`);

const handsOf = (strokes: Stroke[]): Hand[] => HANDS.filter((hand) => strokes.some(({ limb }) => limb === hand));

/** Who plays on a count, at the start of its slot. */
export const handAt: Compute = (question, { timeline }) => {
  const place = placeAsked(question, timeline);
  return place.ok ? handAnswer(handsOf(place.found.struck)) : place;
};

/** Who plays the grace notes that lean on a count. */
export const graceAt: Compute = (question, { timeline }) => {
  const place = placeAsked(question, timeline);
  if (!place.ok) return place;
  const graces = gracesOf(place.found, timeline);
  return graces.length > 0 ? handAnswer(handsOf(graces)) : no('at', `no grace note leans on "${question.at}"`);
};

const gracesOf = ({ struck }: Place, timeline: Timeline): Stroke[] =>
  timeline.strokes.filter((stroke) => isGrace(stroke) && struck.some(({ id }) => id === stroke.primary));

/** Of the strokes on a count the one that is asked about: `of` where it is said, else a hand's before a foot's. */
function strokeAsked(question: QuestionAttributes, timeline: Timeline): Found<Stroke | undefined> {
  const place = placeAsked(question, timeline);
  if (!place.ok) return place;
  const { struck } = place.found;
  if (question.of === undefined) return { ok: true, found: struck.find(isHand) ?? struck[0] };
  const meant = strokesNamed(question.of, timeline);
  if (!meant) return noneOf(question.of);
  const there = [...struck, ...gracesOf(place.found, timeline)];
  return { ok: true, found: there.find((stroke) => meant.includes(stroke)) };
}

/** How the stick moves on a count. */
export const motionAt: Compute = (question, { timeline }) => {
  const asked = strokeAsked(question, timeline);
  if (!asked.ok) return asked;
  const motion: Motion | undefined = asked.found && motions(timeline).get(asked.found.id);
  return motion ? { ok: true, answer: { kind: 'motion', motion } } : no('at', `no hand plays on "${question.at}"`);
};

/** What kind of stroke stands on a count. */
export const kindAt: Compute = (question, { timeline }) => {
  const asked = strokeAsked(question, timeline);
  return asked.ok ? { ok: true, answer: { kind: 'stroke', stroke: strokeName(asked.found) } } : asked;
};

function strokeName(stroke: Stroke | undefined): StrokeName {
  if (!stroke || stroke.kind === 'grace') return 'nothing';
  return stroke.ghost ? 'ghost' : stroke.kind;
}

/** What is struck on a count. */
export const surfaceAt: Compute = (question, { timeline }) => {
  const asked = strokeAsked(question, timeline);
  if (!asked.ok) return asked;
  if (!asked.found) return no('at', `nothing of that is struck on "${question.at}"`);
  return { ok: true, answer: { kind: 'surface', surface: asked.found.surface } };
};

/** How many strokes of a name there are. */
export const strokeCount: Compute = ({ of, in: bar }, { timeline }) => {
  const meant = strokesNamed(of, timeline);
  if (!meant) return noneOf(of);
  return number(meant.filter((stroke) => bar === undefined || stroke.bar === bar).length);
};

/** The longest row of strokes by one hand, grace notes counted, feet and rests passed over. */
export const longestRun: Compute = ({ of, loop = false }, { timeline }) => {
  const hand = of === undefined ? undefined : HAND_NAMES[of];
  if (of !== undefined && !hand) return no('of', `of is "${of}"; it takes right or left`);
  const { limbs } = hands(timeline, 60, { loop });
  const asked = hand ? [hand] : HANDS;
  return number(Math.max(0, ...asked.map((one) => limbs[one]?.longestRunWithGraces?.length ?? 0)));
};

/** The tick of the first of some ticks after another; past the end the phrase begins again. */
function nextTick(ticks: Ticks[], after: Ticks, timeline: Timeline): Ticks | undefined {
  const again = ticks.map((tick) => tick + timeline.ticks);
  return [...ticks, ...again].filter((tick) => tick > after).toSorted((a, b) => a - b)[0];
}

/** On which count the next stroke of a name comes. */
export const nextCount: Compute = (question, { timeline }) => {
  const meant = strokesNamed(question.of, timeline);
  if (!meant) return noneOf(question.of);
  const place = question.at === undefined ? undefined : placeAsked(question, timeline);
  if (place && !place.ok) return place;
  const tick = nextTick(
    meant.map((stroke) => stroke.tick),
    place ? place.found.tick : -Infinity,
    timeline,
  );
  const stroke = meant.find((one) => tick !== undefined && [tick, tick % timeline.ticks].includes(one.tick));
  if (tick === undefined || !stroke) return no('of', 'no such stroke is in this bar');
  return countAnswer(stroke.count, stroke.bar + (tick >= timeline.ticks ? timeline.bars.length : 0));
};

/** How many slots it is from a count to the next stroke of a name, or to the next cell. */
export const gap: Compute = (question, { timeline, phrase }) => {
  const place = placeAsked(question, timeline);
  if (!place.ok) return place;
  const meant = strokesNamed(question.of, timeline) ?? (question.of === 'cells' ? phrase.cells : undefined);
  if (!meant) return noneOf(question.of);
  const { slot, number: bar, slotTicks } = place.found;
  const here = timeline.strokes.filter((stroke) => stroke.bar === bar && stroke.slot === slot);
  const from = Math.max(place.found.tick, ...here.map(({ tick }) => tick));
  const to = nextTick(
    meant.map(({ tick }) => tick),
    from,
    timeline,
  );
  return to === undefined ? no('of', 'no such stroke is in this bar') : number((to - from) / slotTicks);
};

/** How many whole slots stay empty after a count. */
export const restsAfter: Compute = (question, { timeline }) => {
  const place = placeAsked(question, timeline);
  if (!place.ok) return place;
  const heard = strokesNamed(question.of ?? 'all', timeline);
  if (!heard) return noneOf(question.of);
  const { tick, slotTicks } = place.found;
  const ends = heard.filter((stroke) => !isGrace(stroke)).map((stroke) => stroke.tick);
  const next = nextTick(ends, tick + slotTicks - 1, timeline);
  return next === undefined ? no('at', 'nothing is struck here') : number(Math.floor((next - tick) / slotTicks) - 1);
};
