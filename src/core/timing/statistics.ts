import type { Spread, Widths } from './types.ts';

/** How many numbers, their mean, and their standard deviation by one less than there are. */
export function widthsOf(values: readonly number[]): Widths {
  const count = values.length;
  if (count === 0) return { count, mean: undefined, sd: undefined };
  const mean = sum(values) / count;
  const squares = sum(values.map((value) => (value - mean) ** 2));
  return { count, mean, sd: count < 2 ? undefined : Math.sqrt(squares / (count - 1)) };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** The spread of strokes of which some were hit. */
export function spreadOf(strokes: readonly { offset?: number }[]): Spread {
  const offsets = strokes.flatMap(({ offset }) => (offset === undefined ? [] : [offset]));
  const { mean, sd } = widthsOf(offsets);
  return { strokes: strokes.length, missed: strokes.length - offsets.length, mean, sd };
}

/** The least-squares slope of y on x; nothing where all x are one. */
export function slopeOf(points: readonly { x: number; y: number }[]): number | undefined {
  const [x, y] = [widthsOf(points.map((p) => p.x)).mean, widthsOf(points.map((p) => p.y)).mean];
  if (x === undefined || y === undefined) return undefined;
  const spread = sum(points.map((p) => (p.x - x) ** 2));
  return spread > 0 ? sum(points.map((p) => (p.x - x) * (p.y - y))) / spread : undefined;
}
