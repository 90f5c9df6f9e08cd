import { motions, type Motion, type Stroke, type Timeline } from '../core/index.ts';
import { isSurface, STROKE_COUNTS, type StrokeCount } from './question-kinds.ts';

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
