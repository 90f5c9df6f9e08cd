import { isObject, list, must, oneOf, tick, whole } from '../check.ts';
import { slotTicks } from '../time/meter.ts';
import { LIMBS } from '../sticking/limbs.ts';
import type { Stroke, Timeline, TimelineBar } from './types.ts';

/** Refuses what is no timeline: what reads ticks, limbs and bars can rely on them. Throws RangeError. */
export function checkTimeline(timeline: Timeline): void {
  must(isObject(timeline), 'timeline', timeline, 'a timeline, as perform gives it');
  list('strokes', timeline.strokes, 'strokes');
  list('bars', timeline.bars, 'bars');
  must(timeline.bars.length > 0, 'bars', timeline.bars.length, 'at least one');
  tick('ticks', timeline.ticks);
  for (const bar of timeline.bars) checkBar(bar);
  for (const stroke of timeline.strokes) checkStroke(stroke);
}

function checkBar(bar: TimelineBar): void {
  must(isObject(bar), 'bar', bar, 'a bar with its tick, meter and grid');
  tick('tick of a bar', bar.tick);
  slotTicks(bar.meter, bar.grid);
}

function checkStroke(stroke: Stroke): void {
  const holds = isObject(stroke) && typeof stroke.id === 'string' && typeof stroke.count === 'string';
  must(holds && Array.isArray(stroke.graces), 'stroke', stroke, 'a stroke with its id, count and grace notes');
  tick('tick of a stroke', stroke.tick);
  whole('bar of a stroke', stroke.bar, 0);
  whole('cell of a stroke', stroke.cell, -1);
  whole('slot of a stroke', stroke.slot, 0);
  whole('parts of a slot', stroke.parts, 1);
  oneOf('limb', stroke.limb, LIMBS);
}
