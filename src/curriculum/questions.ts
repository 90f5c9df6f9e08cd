import type { Hand, Phrase, Stroke, Timeline } from '../core/index.ts';
import { countNames, resolution, sayCount } from '../core/index.ts';
import { plainAnswer } from './plain-answer.ts';
import type { QuestionAttributes } from './vocabulary.ts';
import { QUESTION_RULES, STROKE_COUNTS, type QuestionKind, type StrokeCount } from './question-kinds.ts';

/** The bar a question is about. */
export interface QuestionBar {
  phrase: Phrase;
  timeline: Timeline;
  /** Length in slots of the cell of that id, undefined where there is none. */
  cellSlots: (id: string) => number | undefined;
}

/** What is right, as a property of the bar; how it is said is left to whoever shows it. */
export type Answer =
  | { kind: 'hand'; hands: Hand[] }
  | { kind: 'count'; count: string; bar: number }
  | { kind: 'number'; value: number }
  | { kind: 'text'; text: string };

/** An answer, or why there is none, in words for the author. */
export type AnswerResult = { ok: true; answer: Answer } | { ok: false; attribute: string; message: string };

/**
 * The answer of a question, computed from its bar or taken from `answer`.
 *
 * @example `answerOf({ ask: '…', from: 'slots-left', cell: 'flam-drag' }, bar)` is the number 1 for a bar of 16
 */
export function answerOf(question: QuestionAttributes, bar?: QuestionBar): AnswerResult {
  if (question.from === undefined) return given(question.answer ?? '');
  const wrong = misfit(question, question.from);
  if (wrong) return wrong;
  if (!bar)
    return no('from', 'there is no bar to compute it from: put a Bar before the question, or name one with bar="…"');
  return COMPUTE[question.from](question, bar);
}

function given(answer: string | number): AnswerResult {
  return typeof answer === 'number' ? number(answer) : { ok: true, answer: { kind: 'text', text: answer } };
}

function misfit(question: QuestionAttributes, from: QuestionKind): AnswerResult | undefined {
  const { needs, may }: { needs: readonly string[]; may: readonly string[] } = QUESTION_RULES[from];
  const has = (name: string) => question[name as keyof QuestionAttributes] !== undefined;
  const missing = needs.find((name) => !has(name));
  if (missing) return no('from', `from="${from}" needs ${missing}="…" beside it`);
  const extra = ['at', 'of', 'cell', 'in'].find((name) => has(name) && !needs.includes(name) && !may.includes(name));
  return extra ? no(extra, `${extra} says nothing beside from="${from}"`) : undefined;
}

const COMPUTE: Record<QuestionKind, (question: QuestionAttributes, bar: QuestionBar) => AnswerResult> = {
  'hand-at': handAt,
  'cell-start': cellStart,
  strokes: strokeCount,
  'longest-run': longestRun,
  slots: (_, bar) => number(barSlots(bar)),
  'cell-slots': ofCell((slots) => slots),
  'cells-fit': ofCell((slots, whole) => Math.floor(whole / slots)),
  'slots-left': ofCell((slots, whole) => whole % slots),
  'bars-home': ofCell((slots, whole) => resolution(slots, whole).bars),
  'cells-home': ofCell((slots, whole) => resolution(slots, whole).cells),
};

function handAt({ at = '', in: number = 1 }: QuestionAttributes, { timeline }: QuestionBar): AnswerResult {
  const bar = timeline.bars[number - 1];
  if (!bar) return no('in', `there is no bar ${number} in a phrase of ${timeline.bars.length}`);
  const names = countNames(bar.meter, bar.grid);
  if (!names.includes(at)) return no('at', `"${at}" is no count of this bar; its counts are ${names.join(', ')}`);
  const struck = timeline.strokes.filter((stroke) => stroke.bar === number && stroke.count === at && !isGrace(stroke));
  return {
    ok: true,
    answer: { kind: 'hand', hands: HANDS.filter((hand) => struck.some(({ limb }) => limb === hand)) },
  };
}

function cellStart({ of }: QuestionAttributes, { phrase }: QuestionBar): AnswerResult {
  const cell = typeof of === 'number' ? phrase.cells[of - 1] : undefined;
  if (!cell) return no('of', `of is the number of a cell, of={1} to of={${phrase.cells.length}} here`);
  return { ok: true, answer: { kind: 'count', count: cell.count, bar: cell.bar } };
}

const isGrace = (stroke: Stroke) => stroke.primary !== undefined && stroke.kind === 'grace';
const isHand = (stroke: Stroke) => stroke.limb === 'R' || stroke.limb === 'L';

const COUNTED: Record<StrokeCount, (stroke: Stroke) => boolean> = {
  right: (stroke) => stroke.limb === 'R',
  left: (stroke) => stroke.limb === 'L',
  hands: isHand,
  feet: (stroke) => !isHand(stroke),
  all: () => true,
  accents: (stroke) => stroke.accent,
  flams: (stroke) => stroke.graces.length === 1,
  diddles: (stroke) => stroke.kind === 'diddle' && stroke.rebound === 1,
  graces: isGrace,
};

function strokeCount({ of }: QuestionAttributes, { timeline }: QuestionBar): AnswerResult {
  const counted = STROKE_COUNTS.find((one) => one === of);
  if (!counted) return no('of', `of is "${of}"; it takes one of: ${STROKE_COUNTS.join(', ')}`);
  return number(timeline.strokes.filter(COUNTED[counted]).length);
}

function longestRun({ of }: QuestionAttributes, { timeline }: QuestionBar): AnswerResult {
  const hand = of === undefined ? undefined : HAND_NAMES[of];
  if (of !== undefined && !hand) return no('of', `of is "${of}"; it takes right or left`);
  return number(
    Math.max(
      0,
      ...runs(timeline)
        .filter((run) => !hand || run.hand === hand)
        .map((run) => run.length),
    ),
  );
}

const HAND_NAMES: Record<string, Hand | undefined> = { right: 'R', left: 'L' };
const HANDS: Hand[] = ['R', 'L'];

interface Run {
  hand: Hand;
  length: number;
}

/** Rows of strokes by one hand, grace notes counted, feet passed over; both hands at once lengthen the row of each. */
function runs(timeline: Timeline): Run[] {
  return HANDS.flatMap((hand) => {
    const lengths: number[] = [0];
    for (const together of struckTogether(timeline)) {
      if (together.includes(hand)) lengths[lengths.length - 1] += 1;
      else lengths.push(0);
    }
    return lengths.map((length) => ({ hand, length }));
  });
}

/** The hands' strokes in the order they sound; those of one chord stand together. */
function struckTogether(timeline: Timeline): Hand[][] {
  const chords: { key: string; hands: Hand[] }[] = [];
  for (const stroke of timeline.strokes.filter(isHand)) {
    const key = isGrace(stroke) ? stroke.id : `${stroke.tick}`;
    const last = chords.at(-1);
    if (last && last.key === key) last.hands.push(stroke.limb as Hand);
    else chords.push({ key, hands: [stroke.limb as Hand] });
  }
  return chords.map(({ hands }) => hands);
}

function ofCell(compute: (slots: number, barSlots: number) => number) {
  return ({ cell = '' }: QuestionAttributes, bar: QuestionBar): AnswerResult => {
    const slots = bar.cellSlots(cell);
    return slots ? number(compute(slots, barSlots(bar))) : no('cell', `there is no cell "${cell}"`);
  };
}

const barSlots = ({ timeline }: QuestionBar) => timeline.bars[0].slots;
const number = (value: number): AnswerResult => ({ ok: true, answer: { kind: 'number', value } });
const no = (attribute: string, message: string): AnswerResult => ({ ok: false, attribute, message });

const HAND_WORDS: Record<Hand, string> = { R: 'right', L: 'left' };

/**
 * An answer as it is shown.
 *
 * @example `answerText({ kind: 'count', count: '1 a', bar: 1 })` is `'the a of 1'`
 */
export function answerText(answer: Answer): string {
  if (answer.kind === 'hand') return handsText(answer.hands);
  if (answer.kind === 'count')
    return answer.bar > 1 ? `${sayCount(answer.count)}, bar ${answer.bar}` : sayCount(answer.count);
  return answer.kind === 'number' ? String(answer.value) : answer.text;
}

function handsText(hands: Hand[]): string {
  if (hands.length === 2) return 'both';
  return hands.length === 1 ? HAND_WORDS[hands[0]] : 'neither';
}

/** All the ways in which an answer may be given, in the form that `plainAnswer` makes of what is typed. */
export function answersTaken(answer: Answer): string[] {
  return unique([answerText(answer), ...otherWords(answer)].map(plainAnswer));
}

function otherWords(answer: Answer): string[] {
  if (answer.kind === 'hand') return handAlso(answer);
  if (answer.kind === 'count') return countAlso(answer);
  return answer.kind === 'number' ? numberAlso(answer) : [];
}

function handAlso({ hands }: Answer & { kind: 'hand' }): string[] {
  if (hands.length === 2) return ['both hands', 'right and left'];
  const [hand] = hands;
  return hand ? [hand, `${HAND_WORDS[hand]} hand`] : ['none', 'no hand'];
}

function countAlso({ count, bar }: Answer & { kind: 'count' }): string[] {
  const places = [count, count.replace(' ', ''), sayCount(count)];
  return bar > 1 ? [...places, ...places.map((place) => `${place} bar ${bar}`)] : places;
}

const NUMBER_WORDS =
  'none one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(' ');

function numberAlso({ value }: Answer & { kind: 'number' }): string[] {
  return [String(value), NUMBER_WORDS[value] ?? String(value)];
}

const unique = <T>(list: T[]): T[] => [...new Set(list)];
