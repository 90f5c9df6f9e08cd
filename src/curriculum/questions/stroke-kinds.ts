import { hands, motions, type Hand, type Motion, type Stroke, type Timeline } from '../../core/index.ts';
import { handAnswer, missOf, no, number, numberMiss, type Answer, type Miss, type StrokeName } from './answers.ts';
import {
  isGrace,
  isHand,
  noneOf,
  placeOf,
  strokesNamed,
  type Compute,
  type Found,
  type QuestionSlot,
  type Question,
  type QuestionBar,
  type QuestionRecord,
} from './place.ts';

const HANDS: Hand[] = ['R', 'L'];
const HAND_NAMES: Record<string, Hand | undefined> = { right: 'R', left: 'L' };

const handsOf = (strokes: Stroke[]): Hand[] => HANDS.filter((hand) => strokes.some(({ limb }) => limb === hand));

/** Who plays on a count, at the start of its slot. */
const handAt: Compute = (question, { timeline }) => {
  const place = placeOf(question, timeline);
  return place.ok ? handAnswer(handsOf(place.found.struck)) : place;
};

/** Who plays the grace notes that lean on a count. */
const graceAt: Compute = (question, { timeline }) => {
  const place = placeOf(question, timeline);
  if (!place.ok) return place;
  const graces = gracesOf(place.found, timeline);
  return graces.length > 0 ? handAnswer(handsOf(graces)) : no('at', `no grace note leans on "${question.at}"`);
};

const gracesOf = ({ struck }: QuestionSlot, timeline: Timeline): Stroke[] =>
  timeline.strokes.filter((stroke) => isGrace(stroke) && struck.some(({ id }) => id === stroke.primary));

/** Of the strokes on a count the one that is asked about: `of` where it is said, else a hand's before a foot's. */
function strokeAsked(question: Question, timeline: Timeline): Found<Stroke | undefined> {
  const place = placeOf(question, timeline);
  if (!place.ok) return place;
  const { struck } = place.found;
  if (question.of === undefined) return { ok: true, found: struck.find(isHand) ?? struck[0] };
  const meant = strokesNamed(question.of, timeline);
  if (!meant) return noneOf(question.of);
  const there = [...struck, ...gracesOf(place.found, timeline)];
  return { ok: true, found: there.find((stroke) => meant.includes(stroke)) };
}

/** How the stick moves on a count. */
const motionAt: Compute = (question, { timeline }) => {
  const asked = strokeAsked(question, timeline);
  if (!asked.ok) return asked;
  const motion: Motion | undefined = asked.found && motions(timeline).get(asked.found.id);
  return motion ? { ok: true, answer: { kind: 'motion', motion } } : no('at', `no hand plays on "${question.at}"`);
};

/** What kind of stroke stands on a count. */
const kindAt: Compute = (question, { timeline }) => {
  const asked = strokeAsked(question, timeline);
  return asked.ok ? { ok: true, answer: { kind: 'stroke', stroke: strokeName(asked.found) } } : asked;
};

function strokeName(stroke: Stroke | undefined): StrokeName {
  if (!stroke || stroke.kind === 'grace') return 'nothing';
  return stroke.ghost ? 'ghost' : stroke.kind;
}

/** What is struck on a count. */
const surfaceAt: Compute = (question, { timeline }) => {
  const asked = strokeAsked(question, timeline);
  if (!asked.ok) return asked;
  if (!asked.found) return no('at', `nothing of that is struck on "${question.at}"`);
  return { ok: true, answer: { kind: 'surface', surface: asked.found.surface } };
};

/** How many strokes of a name there are. */
const strokeCount: Compute = ({ of, in: bar }, { timeline }) => {
  const meant = strokesNamed(of, timeline);
  if (!meant) return noneOf(of);
  return number(meant.filter((stroke) => bar === undefined || stroke.bar === bar).length);
};

/** The longest row of strokes by one hand, grace notes counted, feet and rests passed over. */
const longestRun: Compute = ({ of, loop = false }, { timeline }) => {
  const hand = of === undefined ? undefined : HAND_NAMES[of];
  if (of !== undefined && !hand) return no('of', `of is "${of}"; it takes right or left`);
  const { limbs } = hands(timeline, 60, { loop });
  const asked = hand ? [hand] : HANDS;
  return number(Math.max(0, ...asked.map((one) => limbs[one]?.longestRunWithGraces?.length ?? 0)));
};

/** A hand given where only a foot plays. */
function footMiss(question: Question, { timeline }: QuestionBar, hand: Hand): Miss | undefined {
  const place = placeOf(question, timeline);
  const foot = place.ok && place.found.struck.some((stroke) => !isHand(stroke));
  return foot ? { answer: { kind: 'hand', hands: [hand] }, why: 'foot-not-hand' } : undefined;
}

function strokeMisses({ of, in: bar }: Question, timeline: Timeline, right: Answer): (Miss | undefined)[] {
  const meant = (strokesNamed(of, timeline) ?? []).filter((stroke) => bar === undefined || stroke.bar === bar);
  const value = right.kind === 'number' ? right.value : NaN;
  const graces = meant.filter(isGrace).length;
  const rebounds = meant.filter((stroke) => stroke.rebound > 0).length;
  if (graces === value || rebounds === value) return [];
  return [
    numberMiss(graces ? value - graces : undefined, 'graces-left-out'),
    numberMiss(rebounds ? value - rebounds : undefined, 'diddles-as-one'),
    numberMiss(graces && rebounds ? value - graces - rebounds : undefined, 'both-left-out'),
  ];
}

function withoutGraces({ of, loop = false }: Question, timeline: Timeline): number {
  const { limbs } = hands(timeline, 60, { loop });
  const counted = of === undefined ? (['R', 'L'] as const) : ([of === 'right' ? 'R' : 'L'] as const);
  return Math.max(...counted.map((hand) => limbs[hand]?.longestRun?.length ?? 0));
}

const STARTS: Record<Motion, 'high' | 'low'> = { full: 'high', down: 'high', tap: 'low', up: 'low' };
const ENDS: Record<Motion, 'high' | 'low'> = { full: 'high', down: 'low', tap: 'low', up: 'high' };

function motionMisses(right: Answer): Miss[] {
  if (right.kind !== 'motion') return [];
  const others = (Object.keys(STARTS) as Motion[]).filter((motion) => motion !== right.motion);
  return others.flatMap((motion): Miss[] => {
    if (STARTS[motion] === STARTS[right.motion]) return [{ answer: { kind: 'motion', motion }, why: 'start-right' }];
    return ENDS[motion] === ENDS[right.motion] ? [{ answer: { kind: 'motion', motion }, why: 'end-right' }] : [];
  });
}

/** The most surfaces that are offered; of more than these the answer is typed. */
const SURFACES_OFFERED = 6;
const STROKES_OFFERED: readonly StrokeName[] = ['single', 'flam', 'diddle', 'foot', 'nothing'];

/** Both hands only where both are right, and neither where that can be. */
const handChoices =
  (neither: boolean) =>
  (right: Answer): Answer[] => {
    const both = right.kind === 'hand' && right.hands.length === 2;
    const ways: Hand[][] = [['R'], ['L'], ...(both ? [HANDS] : []), ...(neither ? [[]] : [])];
    return ways.map((one) => ({ kind: 'hand', hands: one }));
  };

const motionChoices = (): Answer[] => (Object.keys(STARTS) as Motion[]).map((motion) => ({ kind: 'motion', motion }));

function strokeChoices(right: Answer): Answer[] {
  const own = right.kind === 'stroke' ? [right.stroke] : [];
  return [...new Set([...STROKES_OFFERED, ...own])].map((stroke) => ({ kind: 'stroke', stroke }));
}

/** All that is struck in the bar. */
function surfaceChoices(_right: Answer, { timeline }: QuestionBar): Answer[] {
  const surfaces = [...new Set(timeline.strokes.map(({ surface }) => surface))].toSorted();
  if (surfaces.length < 2 || surfaces.length > SURFACES_OFFERED) return [];
  return surfaces.map((surface) => ({ kind: 'surface', surface }));
}

function handMisses(question: Question, bar: QuestionBar, right: Answer): (Miss | undefined)[] {
  if (right.kind === 'hand' && right.hands.length === 0) return HANDS.map((hand) => footMiss(question, bar, hand));
  return [missOf(graceAt(question, bar), 'grace-note-hand')];
}

const runMisses = (question: Question, bar: QuestionBar): (Miss | undefined)[] => [
  numberMiss(withoutGraces(question, bar.timeline), 'graces-left-out'),
  question.loop ? missOf(longestRun({ ...question, loop: false }, bar), 'seam-left-out') : undefined,
];

/** The kinds of question about strokes. */
export const STROKE_KINDS = {
  'hand-at': {
    needs: ['at'],
    may: ['in'],
    says: 'which hand plays on the count "at", in bar "in" (1 when left out)',
    answer: handAt,
    choices: handChoices(true),
    misses: handMisses,
  },
  'grace-at': {
    needs: ['at'],
    may: ['in'],
    says: 'which hand plays the grace note of the flam on the count "at"',
    answer: graceAt,
    choices: handChoices(false),
    misses: (question, bar) => [missOf(handAt(question, bar), 'primary-hand')],
  },
  'motion-at': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'whether the stroke on "at" is a full, down, tap or up stroke, the bar going round; "of" is right or left where both play',
    answer: motionAt,
    choices: motionChoices,
    misses: (_question, _bar, right) => motionMisses(right),
  },
  'kind-at': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'whether a flam, a drag, a diddle, a buzz, a ghost note or a single stands on "at", or a foot, or nothing',
    answer: kindAt,
    choices: strokeChoices,
  },
  'surface-at': {
    needs: ['at'],
    may: ['in', 'of'],
    says: 'what is struck on "at"; "of" says by whom where several play: right, left, kicks or graces',
    answer: surfaceAt,
    choices: surfaceChoices,
  },
  strokes: {
    needs: ['of'],
    may: ['in'],
    says: 'how many of these strokes there are, in bar "in" or in all',
    answer: strokeCount,
    misses: (question, { timeline }, right) => strokeMisses(question, timeline, right),
  },
  'longest-run': {
    needs: [],
    may: ['of', 'loop'],
    says: 'how many strokes in a row one hand has to play at most, grace notes counted; "of" is right or left',
    answer: longestRun,
    misses: runMisses,
  },
} satisfies Record<string, QuestionRecord>;
