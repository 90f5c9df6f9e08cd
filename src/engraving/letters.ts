import type { Stroke, Timeline } from '../core/index.ts';

/**
 * The letter under a stroke: the limb that plays it, R, L, K or H. A grace note's is drawn smaller, not lower case: a small
 * l alone is too easily read as a stroke of the pen.
 */
export const letterOf = (stroke: Stroke): string => stroke.limb;

/** The letters of a timeline by stroke id: what a change of lead rewrites. */
export const lettersOf = (timeline: Timeline): Map<string, string> =>
  new Map(timeline.strokes.map((stroke) => [stroke.id, letterOf(stroke)]));
