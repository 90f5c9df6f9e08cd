import type { Position } from '../../../src/audio/index.ts';
import type { Ticks, Timeline } from '../../../src/core/index.ts';
import type { FigureView } from './figure.ts';

/**
 * Calls `draw` with what is heard, once a frame, until the returned function is called.
 */
export function everyFrame(position: () => Position | undefined, draw: (position: Position | undefined) => void) {
  let frame = requestAnimationFrame(function next() {
    draw(position());
    frame = requestAnimationFrame(next);
  });
  return () => cancelAnimationFrame(frame);
}

/**
 * The tick of the last stroke that has begun, where a gliding line is not wanted.
 *
 * @example
 * stepTo([0, 5040, 10080], 6000); // 5040
 */
export function stepTo(ticks: readonly Ticks[], tick: Ticks): Ticks {
  return ticks.findLast((begun) => begun <= tick) ?? tick;
}

/** Shows a position in the score it belongs to; in the count-in there is none. */
export function showPosition(
  figure: FigureView,
  at: Position | undefined,
  ticksOf: Record<'check' | 'pattern', Ticks[]>,
) {
  if (!at || at.phase === 'count-in') return figure.clear();
  const [view, other] = at.phase === 'check' ? [figure.check, figure.score] : [figure.score, figure.check];
  other?.clear();
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  view?.show({ tick: still ? stepTo(ticksOf[at.phase], at.tick) : at.tick, lit: at.lit });
}

/** When the strokes of a timeline begin, in order. */
export const ticksOf = (timeline: Timeline): Ticks[] => timeline.strokes.map((stroke) => stroke.tick);
