import { ids, isObject, list, must, oneOf, tick, whole } from '../check.ts';
import { slotsOf } from '../time/meter.ts';
import { LIMBS, SURFACES } from '../sticking/limbs.ts';
import type { Stroke, StrokeKind, Timeline, TimelineBar } from './types.ts';

const KINDS: readonly StrokeKind[] = ['single', 'diddle', 'flam', 'drag', 'ruff', 'buzz', 'foot', 'grace'];

/** Refuses what is no timeline: what reads ticks, limbs and bars can rely on them. Throws RangeError. */
export function checkTimeline(timeline: Timeline): void {
  must(isObject(timeline), 'timeline', timeline, 'a timeline, as perform gives it');
  list('strokes', timeline.strokes, 'strokes');
  list('bars', timeline.bars, 'bars');
  must(timeline.bars.length > 0, 'bars', timeline.bars.length, 'at least one');
  list('cells', timeline.cells, 'cells');
  tick('ticks', timeline.ticks);
  tick('ticks of the pickup', timeline.pickupTicks);
  for (const bar of timeline.bars) checkBar(bar);
  for (const stroke of timeline.strokes) checkStroke(stroke);
}

function checkBar(bar: TimelineBar): void {
  must(isObject(bar), 'bar', bar, 'a bar with its tick, meter and grid');
  tick('tick of a bar', bar.tick);
  whole('slots of a bar', bar.slots, 1, slotsOf(bar.meter, bar.grid));
}

function checkStroke(stroke: Stroke): void {
  const holds = isObject(stroke) && typeof stroke.id === 'string' && typeof stroke.count === 'string';
  must(holds, 'stroke', stroke, 'a stroke with its id and count');
  ids('grace notes', stroke.graces);
  tick('tick of a stroke', stroke.tick);
  whole('bar of a stroke', stroke.bar, 0);
  whole('cell of a stroke', stroke.cell, -1);
  whole('slot of a stroke', stroke.slot, 0);
  whole('parts of a slot', stroke.parts, 1);
  whole('part of a slot', stroke.part, 0, stroke.parts - 1);
  tick('length of a stroke', stroke.length);
  oneOf('limb', stroke.limb, LIMBS);
  oneOf('kind of a stroke', stroke.kind, KINDS);
  oneOf('surface', stroke.surface, SURFACES);
}
