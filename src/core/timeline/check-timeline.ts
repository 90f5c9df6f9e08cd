import { isObject, list, must, oneOf } from '../check.ts';
import { slotTicks } from '../time/meter.ts';
import { LIMBS } from '../sticking/limbs.ts';
import type { Stroke, Timeline, TimelineBar } from './types.ts';

/** Refuses what is no timeline: what reads ticks, limbs and bars can rely on them. Throws RangeError. */
export function checkTimeline(timeline: Timeline): void {
  must(isObject(timeline), 'timeline', timeline, 'a timeline, as perform gives it');
  list('strokes', timeline.strokes, 'strokes');
  list('bars', timeline.bars, 'bars');
  must(timeline.bars.length > 0, 'bars', timeline.bars.length, 'at least one');
  must(Number.isFinite(timeline.ticks), 'ticks', timeline.ticks, 'the length of the bars');
  for (const bar of timeline.bars) checkBar(bar);
  for (const stroke of timeline.strokes) checkStroke(stroke);
}

function checkBar(bar: TimelineBar): void {
  must(isObject(bar) && Number.isFinite(bar.tick), 'bar', bar, 'a bar with its tick, meter and grid');
  slotTicks(bar.meter, bar.grid);
}

function checkStroke(stroke: Stroke): void {
  const holds = isObject(stroke) && typeof stroke.id === 'string' && Number.isFinite(stroke.tick);
  must(holds && Array.isArray(stroke.graces), 'stroke', stroke, 'a stroke with its id, tick and grace notes');
  oneOf('limb', stroke.limb, LIMBS);
}
