import type { Arc, Path, Segment } from './path.js';
import { arcPoint } from './path.js';
import { type Point, point } from './point.js';

const straight = (to: Point): Segment => ({ kind: 'line', to });

/** One straight line. */
export const line = (a: Point, b: Point): Path => ({ start: a, segments: [straight(b)], closed: false });

/** Straight lines through the points in turn; at least two points. */
export const polyline = (points: readonly Point[], closed = false): Path => {
  const [start, ...rest] = points;
  if (start === undefined || rest.length === 0) throw new RangeError('a polyline needs two points');
  return { start, segments: rest.map(straight), closed };
};

/** An axis-parallel rectangle from its top left corner. */
export const rectangle = (x: number, y: number, width: number, height: number): Path =>
  polyline([point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)], true);

/** An arc of a circle; angles from +x towards +y (clockwise on the page), either sense. */
export const circularArc = (centre: Point, radius: number, t0: number, t1: number): Arc => ({
  kind: 'arc', centre, u: point(radius, 0), v: point(0, radius), t0, t1,
});

/** A path that is one arc. */
export const arcPath = (arc: Arc): Path => ({ start: arcPoint(arc, arc.t0), segments: [arc], closed: false });

/** A whole circle as two half arcs (SVG drops an arc that ends where it starts). */
export const circle = (centre: Point, radius: number): Path => ellipse(centre, radius, radius, 0);

/** A whole ellipse, its `rx` axis turned by `turn` from +x towards +y. */
export const ellipse = (centre: Point, rx: number, ry: number, turn: number): Path => {
  const u = point(rx * Math.cos(turn), rx * Math.sin(turn));
  const v = point(-ry * Math.sin(turn), ry * Math.cos(turn));
  const half = (t0: number): Arc => ({ kind: 'arc', centre, u, v, t0, t1: t0 + Math.PI });
  return { start: arcPoint(half(0), 0), segments: [half(0), half(Math.PI)], closed: true };
};
