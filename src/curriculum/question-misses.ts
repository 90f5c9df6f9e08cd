import { hands, type CountSystem, type Motion, type Timeline } from '../core/index.ts';
import { answersTaken, type Answer } from './question-answers.ts';
import { placeAsked } from './question-place.ts';
import { answerIn } from './syllables.ts';
import { isGrace, isHand, strokesNamed } from './question-strokes.ts';
import { answerOf, type QuestionBar } from './questions.ts';
import type { QuestionAttributes } from './vocabulary.ts';

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
interface Miss {
  answer: Answer;
  why: MissReason;
}

type Misses = (question: QuestionAttributes, bar: QuestionBar, right: Answer) => (Miss | undefined)[];

const value = (right: Answer): number => (right.kind === 'number' ? right.value : NaN);
const numberMiss = (of: number | undefined, why: MissReason): Miss | undefined =>
  of === undefined || of < 0 ? undefined : { answer: { kind: 'number', value: of }, why };

/** The answer to another question about the same bar. */
function asked(question: QuestionAttributes, bar: QuestionBar, change: Partial<QuestionAttributes>, why: MissReason) {
  const found = answerOf({ ...question, ...change }, bar);
  return found.ok ? { answer: found.answer, why } : undefined;
}

const offByOne: Misses = (_, __, right) => [
  numberMiss(value(right) + 1, 'start-counted'),
  numberMiss(value(right) - 1, 'end-not-counted'),
];

const slotBefore = (question: QuestionAttributes, bar: QuestionBar, by: number): (Miss | undefined)[] => {
  const of = Number(question.of);
  return [asked(question, bar, { of: of - by }, 'slot-before'), asked(question, bar, { of: of + by }, 'slot-after')];
};

const MISSES: Partial<Record<NonNullable<QuestionAttributes['from']>, Misses>> = {
  'hand-at': (question, bar, right) =>
    right.kind === 'hand' && right.hands.length === 0
      ? (['right', 'left'] as const).map((text) => footMiss(question, bar, text))
      : [asked(question, bar, { from: 'grace-at' }, 'grace-note-hand')],
  'grace-at': (question, bar) => [asked(question, bar, { from: 'hand-at' }, 'primary-hand')],
  'cell-start': (question, bar) => [
    neighbour(question, bar, -1, 'cell-before'),
    neighbour(question, bar, 1, 'cell-after'),
  ],
  'slot-name': (question, bar) => slotBefore(question, bar, 1),
  'count-after': (question, bar) => slotBefore(question, bar, 1),
  strokes: (question, { timeline }, right) => strokeMisses(question, timeline, value(right)),
  'longest-run': (question, bar) => [
    numberMiss(withoutGraces(question, bar.timeline), 'graces-left-out'),
    question.loop ? asked(question, bar, { loop: false }, 'seam-left-out') : undefined,
  ],
  'cells-fit': (question, bar) => [asked(question, bar, { from: 'slots-left' }, 'slots-for-cells')],
  'slots-left': (question, bar) => [asked(question, bar, { from: 'cells-fit' }, 'cells-for-slots')],
  'bars-home': (question, bar) => [asked(question, bar, { from: 'cells-home' }, 'cells-for-bars')],
  'cells-home': (question, bar) => [asked(question, bar, { from: 'bars-home' }, 'bars-for-cells')],
  gap: offByOne,
  'rests-after': offByOne,
  'motion-at': (_, __, right) => (right.kind === 'motion' ? motionMisses(right.motion) : []),
};

/** The cell before or after, if anything sounds in it. */
function neighbour(question: QuestionAttributes, bar: QuestionBar, by: number, why: MissReason): Miss | undefined {
  const of = Number(question.of) + by;
  return bar.timeline.strokes.some(({ cell }) => cell === of - 1) ? asked(question, bar, { of }, why) : undefined;
}

/** A hand given where only a foot plays. */
function footMiss(question: QuestionAttributes, { timeline }: QuestionBar, text: 'right' | 'left'): Miss | undefined {
  const place = placeAsked(question, timeline);
  const foot = place.ok && place.found.struck.some((stroke) => !isHand(stroke));
  return foot ? { answer: { kind: 'hand', hands: [text === 'right' ? 'R' : 'L'] }, why: 'foot-not-hand' } : undefined;
}

function strokeMisses({ of, in: bar }: QuestionAttributes, timeline: Timeline, right: number): (Miss | undefined)[] {
  const meant = (strokesNamed(of, timeline) ?? []).filter((stroke) => bar === undefined || stroke.bar === bar);
  const graces = meant.filter(isGrace).length;
  const rebounds = meant.filter((stroke) => stroke.rebound > 0).length;
  if (graces === right || rebounds === right) return [];
  return [
    numberMiss(graces ? right - graces : undefined, 'graces-left-out'),
    numberMiss(rebounds ? right - rebounds : undefined, 'diddles-as-one'),
    numberMiss(graces && rebounds ? right - graces - rebounds : undefined, 'both-left-out'),
  ];
}

function withoutGraces({ of, loop = false }: QuestionAttributes, timeline: Timeline): number {
  const { limbs } = hands(timeline, 60, { loop });
  const counted = of === undefined ? (['R', 'L'] as const) : ([of === 'right' ? 'R' : 'L'] as const);
  return Math.max(...counted.map((hand) => limbs[hand]?.longestRun?.length ?? 0));
}

const STARTS: Record<Motion, 'high' | 'low'> = { full: 'high', down: 'high', tap: 'low', up: 'low' };
const ENDS: Record<Motion, 'high' | 'low'> = { full: 'high', down: 'low', tap: 'low', up: 'high' };

function motionMisses(right: Motion): Miss[] {
  const others = (Object.keys(STARTS) as Motion[]).filter((motion) => motion !== right);
  return others.flatMap((motion): Miss[] => {
    if (STARTS[motion] === STARTS[right]) return [{ answer: { kind: 'motion', motion }, why: 'start-right' }];
    return ENDS[motion] === ENDS[right] ? [{ answer: { kind: 'motion', motion }, why: 'end-right' }] : [];
  });
}

/**
 * The wrong answers to a computed question that show what was thought, by every way to give them; counts are said in the
 * syllables of `system`.
 *
 * @example `missesOf({ ask: '…', from: 'strokes', of: 'left' }, flamDrags, twelve)` maps '8' to 'graces-left-out'
 */
export function missesOf(
  question: QuestionAttributes,
  bar: QuestionBar,
  right: Answer,
  system?: CountSystem,
): Record<string, MissReason> {
  const said = (answer: Answer) => answersTaken(system ? answerIn(answer, bar.timeline.bars, system) : answer);
  const found = (question.from && MISSES[question.from]?.(question, bar, right)) ?? [];
  const taken = said(right);
  const ways = found
    .filter((miss) => miss !== undefined)
    .flatMap(({ answer, why }) => said(answer).map((way) => [way, why] as const));
  // The first reason for an answer stands, and none for the right one.
  return Object.fromEntries(ways.toReversed().filter(([way]) => !taken.includes(way)));
}
