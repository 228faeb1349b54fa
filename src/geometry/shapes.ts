import { GeometryError } from '../errors/geometry-error.js';
import type { Box } from './box.js';
import { type Arc, arcPoint, type Path, type Segment } from './path.js';
import { distance, type Point, point } from './point.js';

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

/** A closed path through arcs in turn, joined by straight runs where one does not begin where the last one ended. */
const roundTrip = (arcs: readonly Arc[]): Path => {
  const start = arcPoint(arcs[0]!, arcs[0]!.t0);
  const segments = arcs.flatMap((arc, i): Segment[] => {
    const next = arcs[(i + 1) % arcs.length]!;
    const begin = i === arcs.length - 1 ? start : arcPoint(next, next.t0);
    return distance(arcPoint(arc, arc.t1), begin) > 1e-9 ? [arc, straight(begin)] : [arc];
  });
  return { start, segments, closed: true };
};

/**
 * An axis-parallel rectangle with rounded corners from its top left corner, clockwise on the page; exact arcs. A radius of
 * half the lesser side gives a slot with round ends. Refuses a radius beyond that.
 */
export const roundedRectangle = (box: Box, radius: number): Path => {
  const [width, height] = [box.x1 - box.x0, box.y1 - box.y0];
  if (!(radius >= 0 && width > 0 && height > 0 && 2 * radius <= Math.min(width, height) * (1 + 1e-12))) {
    throw new GeometryError('corner-radius-too-large', 'The corner radius is more than half the lesser side.', { radius, width, height });
  }
  if (radius === 0) return rectangle(box.x0, box.y0, width, height);
  const corner = (x: number, y: number, t0: number): Arc => circularArc(point(x, y), radius, t0, t0 + Math.PI / 2);
  const [left, right, top, bottom] = [box.x0 + radius, box.x1 - radius, box.y0 + radius, box.y1 - radius];
  const corners = [corner(right, top, -Math.PI / 2), corner(right, bottom, 0), corner(left, bottom, Math.PI / 2), corner(left, top, Math.PI)];
  return roundTrip(corners);
};

/** A slot with round ends between two centres, clockwise on the page; exact arcs. The centres must differ. */
export const slot = (a: Point, b: Point, radius: number): Path => {
  const along = Math.atan2(b.y - a.y, b.x - a.x);
  if (!(radius > 0 && distance(a, b) > 0)) throw new GeometryError('slot-without-size', 'A slot needs two centres and a radius.', { radius, length: distance(a, b) });
  return roundTrip([
    circularArc(b, radius, along - Math.PI / 2, along + Math.PI / 2),
    circularArc(a, radius, along + Math.PI / 2, along + 1.5 * Math.PI),
  ]);
};
