import { isObject, must } from '../check.ts';
import { checkTimeline } from '../timeline/check-timeline.ts';
import { HANDS } from '../sticking/limbs.ts';
import type { Stroke, Timeline } from '../timeline/types.ts';

/** How a stick moves for one stroke, from its own height and that of the next stroke of the same hand. */
export type Motion = 'full' | 'down' | 'tap' | 'up';

/** Whether a stroke starts high: accents do, taps, ghosts and grace notes do not. */
export function isHigh(stroke: Stroke): boolean {
  must(isObject(stroke), 'stroke', stroke, 'a stroke of a timeline');
  must(typeof stroke.accent === 'boolean', 'accent', stroke.accent, 'true or false');
  return stroke.accent;
}

const MOTIONS = { high: { high: 'full', low: 'down' }, low: { high: 'up', low: 'tap' } } as const;
const height = (stroke: Stroke): 'high' | 'low' => (isHigh(stroke) ? 'high' : 'low');

/**
 * The motion of every hand stroke, grace notes included: full (high, high), down (high, low), tap (low, low), up (low,
 * high). The phrase is taken as repeated, so the stroke after a hand's last is its first.
 * @example
 * motions(timeline).get('1.0.0') // → 'down'
 */
export function motions(timeline: Timeline): Map<string, Motion> {
  checkTimeline(timeline);
  const found = new Map<string, Motion>();
  for (const limb of HANDS) {
    const strokes = timeline.strokes.filter((s) => s.limb === limb);
    strokes.forEach((stroke, i) => {
      const next = strokes[(i + 1) % strokes.length];
      found.set(stroke.id, MOTIONS[height(stroke)][height(next)]);
    });
  }
  return found;
}
