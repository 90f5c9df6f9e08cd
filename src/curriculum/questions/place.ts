import {
  countNames,
  motions,
  SURFACES,
  type Motion,
  type Phrase,
  type Stroke,
  type Surface,
  type Ticks,
  type Timeline,
  type TimelineBar,
} from '../../core/index.ts';
import { no, type Answer, type AnswerResult, type Miss, type NoAnswer } from './answers.ts';

/** What is asked of a bar, beside the kind of question; the attributes of `<Question>` say the same. */
export interface Question {
  /** A count of the bar. */
  at?: string | undefined;
  /** A number, a surface, or a name of strokes. */
  of?: string | number | undefined;
  /** The ids of cells. */
  cell?: string | undefined;
  /** The number of a bar, from 1. */
  in?: number | undefined;
  /** Over how many bars. */
  over?: number | undefined;
  /** Whether the bar goes round. */
  loop?: boolean | undefined;
}

/** The bar a question is about. */
export interface QuestionBar {
  phrase: Phrase;
  timeline: Timeline;
  /** Length in slots of the cell of that id, undefined where there is none. */
  cellSlots: (id: string) => number | undefined;
}

/** What the attributes of a question beside `from` are called. */
export type QuestionAttribute = 'at' | 'of' | 'cell' | 'in' | 'over' | 'loop';

/** How an answer is computed from a question and its bar. */
export type Compute = (question: Question, bar: QuestionBar) => AnswerResult;

/** A kind of question. What is said to a wrong answer stands in the words, by the name of the kind. */
export interface QuestionRecord {
  /** Which attributes it must have, and which it may. */
  needs: readonly QuestionAttribute[];
  may: readonly QuestionAttribute[];
  /** What it asks, for authors. */
  says: string;
  answer: Compute;
  /** What there is to choose from; left out or empty where the answer is typed. `salt` places the right one among others. */
  choices?: (right: Answer, bar: QuestionBar, salt: number) => Answer[];
  /** Wrong answers that show what was thought, the likeliest first. */
  misses?: (question: Question, bar: QuestionBar, right: Answer) => (Miss | undefined)[];
}

/** What strokes can be called in `of`, besides the surface they strike. */
export const STROKE_COUNTS = [
  'right',
  'left',
  'hands',
  'feet',
  'kicks',
  'all',
  'starts',
  'accents',
  'ghosts',
  'flams',
  'diddles',
  'graces',
  'full',
  'down',
  'tap',
  'up',
] as const;

/** One of them. */
export type StrokeCount = (typeof STROKE_COUNTS)[number];

/** Whether a word of `of` is a surface of the kit. */
export const isSurface = (word: unknown): word is Surface => (SURFACES as readonly unknown[]).includes(word);

/** Whether a stroke is a grace note, leaning on another. */
export const isGrace = (stroke: Stroke): boolean => stroke.primary !== undefined && stroke.kind === 'grace';

/** Whether a hand plays it. */
export const isHand = (stroke: Stroke): boolean => stroke.limb === 'R' || stroke.limb === 'L';

const isMotion =
  (motion: Motion) =>
  (stroke: Stroke, moves: Map<string, Motion>): boolean =>
    moves.get(stroke.id) === motion;

/** For each word of `of`, which strokes it means. */
const MEANS: Record<StrokeCount, (stroke: Stroke, moves: Map<string, Motion>) => boolean> = {
  right: (stroke) => stroke.limb === 'R',
  left: (stroke) => stroke.limb === 'L',
  hands: isHand,
  feet: (stroke) => !isHand(stroke),
  kicks: (stroke) => stroke.limb === 'K',
  all: () => true,
  starts: (stroke) => stroke.part === 0 && !isGrace(stroke),
  accents: (stroke) => stroke.accent,
  ghosts: (stroke) => stroke.ghost,
  flams: (stroke) => stroke.graces.length === 1,
  diddles: (stroke) => stroke.kind === 'diddle' && stroke.rebound === 1,
  graces: isGrace,
  full: isMotion('full'),
  down: isMotion('down'),
  tap: isMotion('tap'),
  up: isMotion('up'),
};

/**
 * The strokes that a word of `of` means, in order; undefined for a word that means none.
 *
 * @example `strokesNamed('floor', timeline)` are those on the floor tom
 */
export function strokesNamed(word: unknown, timeline: Timeline): Stroke[] | undefined {
  if (isSurface(word)) return timeline.strokes.filter(({ surface }) => surface === word);
  const known = STROKE_COUNTS.find((one) => one === word);
  if (!known) return undefined;
  const moves = motions(timeline);
  return timeline.strokes.filter((stroke) => MEANS[known](stroke, moves));
}

/** The reason where `of` names no strokes. */
export const noneOf = (of: unknown): NoAnswer =>
  no('of', `of is "${of}"; it takes a surface or one of: ${STROKE_COUNTS.join(', ')}`);

/** A slot that a question points at with `at` and `in`. */
export interface QuestionSlot {
  bar: TimelineBar;
  /** From 1. */
  number: number;
  slot: number;
  /** Where it begins, and how long it is. */
  tick: Ticks;
  slotTicks: Ticks;
  /** Main strokes exactly at its start; grace notes and later parts of the slot are not among them. */
  struck: Stroke[];
}

/** A place, or why there is none. */
export type Found<T> = { ok: true; found: T } | NoAnswer;

/** Bar number `in` of a timeline, 1 where left out. */
export function barOf({ in: number = 1 }: Question, timeline: Timeline): Found<TimelineBar> {
  const bar = timeline.bars[number - 1];
  const missing = `there is no bar ${number} in a phrase of ${timeline.bars.length}`;
  return bar ? { ok: true, found: bar } : no('in', missing);
}

/** How long a slot of a bar is. */
const slotTicksOf = (timeline: Timeline, bar: TimelineBar): Ticks => barTicks(timeline, bar) / bar.slots;

/** How long a bar is: up to the next one or to the end. */
function barTicks(timeline: Timeline, bar: TimelineBar): Ticks {
  const next = timeline.bars[timeline.bars.indexOf(bar) + 1];
  return (next?.tick ?? timeline.ticks) - bar.tick;
}

/** The slot that `at` names, in the bar that `in` names. */
export function placeOf(question: Question, timeline: Timeline): Found<QuestionSlot> {
  const asked = barOf(question, timeline);
  if (!asked.ok) return asked;
  const { at = '', in: number = 1 } = question;
  const bar = asked.found;
  const names = countNames(bar.meter, bar.grid);
  const slot = names.indexOf(at);
  if (slot < 0) return no('at', `"${at}" is no count of this bar; its counts are ${names.join(', ')}`);
  const slotTicks = slotTicksOf(timeline, bar);
  const tick = bar.tick + slot * slotTicks;
  const struck = timeline.strokes.filter(
    (stroke) => stroke.bar === number && stroke.slot === slot && stroke.part === 0 && !isGrace(stroke),
  );
  return { ok: true, found: { bar, number, slot, tick, slotTicks, struck } };
}

/** The tick of the first of some ticks after another; past the end the phrase begins again. */
export function nextTick(ticks: Ticks[], after: Ticks, timeline: Timeline): Ticks | undefined {
  const again = ticks.map((tick) => tick + timeline.ticks);
  return [...ticks, ...again].filter((tick) => tick > after).toSorted((a, b) => a - b)[0];
}

/** How many counts are offered. */
const COUNTS_OFFERED = 4;

/** Neighboring counts of the bar, the right one among them at a place that depends on `salt` alone. */
export function countsAround(right: Answer, { timeline: { bars } }: QuestionBar, salt: number): Answer[] {
  if (right.kind !== 'count') return [];
  // What stands before bar 1 is counted as bar 1 is, and past the end the phrase begins again.
  const { meter, grid } = bars[(right.bar - 1) % bars.length] ?? bars[0];
  const names = countNames(meter, grid);
  const first = names.indexOf(right.count) - (salt % COUNTS_OFFERED);
  const from = Math.min(Math.max(first, 0), Math.max(names.length - COUNTS_OFFERED, 0));
  return names.slice(from, from + COUNTS_OFFERED).map((count) => ({ ...right, count }));
}
