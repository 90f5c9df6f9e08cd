import { num } from './pen.ts';

interface Point {
  x: number;
  y: number;
}

const between = (a: Point, b: Point, t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
const at = ({ x, y }: Point): string => `${num(x)} ${num(y)}`;

/** The part of a quadratic curve between two of its parameters. */
function partOf(curve: [Point, Point, Point], from: number, to: number): [Point, Point, Point] {
  const on = (t: number): Point => between(between(curve[0], curve[1], t), between(curve[1], curve[2], t), t);
  const control = between(between(curve[0], curve[1], from), between(curve[1], curve[2], from), to);
  return [on(from), control, on(to)];
}

/** How thick a curve is in its middle. */
const THICKNESS = 2.2;

/**
 * A slur or tie as a filled shape: thin at its ends, so deep in its middle. `from` and `to` cut out the part between two
 * places of its width, 0 to 1, for a curve that goes over the edge of a picture.
 */
export function curvePath(start: Point, end: Point, depth: number, from = 0, to = 1): string {
  const middle = between(start, end, 0.5);
  const length = Math.hypot(end.x - start.x, end.y - start.y) || 1;
  const across = { x: -(end.y - start.y) / length, y: (end.x - start.x) / length };
  const bent = (by: number): [Point, Point, Point] => [
    start,
    { x: middle.x + 2 * by * across.x, y: middle.y + 2 * by * across.y },
    end,
  ];
  const outer = partOf(bent(depth), from, to);
  const inner = partOf(bent(depth - Math.sign(depth) * THICKNESS * 0.5), from, to);
  return `M${at(outer[0])}Q${at(outer[1])} ${at(outer[2])}L${at(inner[2])}Q${at(inner[1])} ${at(inner[0])}z`;
}
