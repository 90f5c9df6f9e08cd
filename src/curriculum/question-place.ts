import { countNames, type Stroke, type Ticks, type Timeline, type TimelineBar } from '../core/index.ts';
import { no, type NoAnswer } from './question-answers.ts';
import { isGrace } from './question-strokes.ts';
import type { QuestionAttributes } from './vocabulary.ts';

/** A slot that a question points at with `at` and `in`. */
export interface Place {
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
export function barAsked({ in: number = 1 }: QuestionAttributes, timeline: Timeline): Found<TimelineBar> {
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
export function placeAsked(question: QuestionAttributes, timeline: Timeline): Found<Place> {
  const asked = barAsked(question, timeline);
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
