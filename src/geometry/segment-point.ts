import { cubicPoint } from './bounds.js';
import { arcPoint, type Segment } from './path.js';
import { between, type Point, point } from './point.js';

/** The arc's own parameter (its angle) a fraction `t` of the way along. */
export const arcAngle = (arc: { readonly t0: number; readonly t1: number }, t: number): number =>
  t === 1 ? arc.t1 : arc.t0 + (arc.t1 - arc.t0) * t;

/** The point of a segment that starts at `from`, at parameter `t` in 0…1 (an arc by its angle); exact. */
export const segmentPoint = (segment: Segment, from: Point, t: number): Point => {
  switch (segment.kind) {
    case 'line': return between(from, segment.to, t);
    case 'arc': return arcPoint(segment, arcAngle(segment, t));
    case 'cubic': return cubicPoint(from, segment, t);
  }
};

/** The second derivative of `segmentPoint` by `t`, mm per unit of t squared; exact. */
export const segmentSecond = (segment: Segment, from: Point, t: number): Point => {
  switch (segment.kind) {
    case 'line': return point(0, 0);
    case 'arc': {
      const { u, v, t0, t1 } = segment;
      const angle = arcAngle(segment, t);
      const sin = Math.sin(angle) * (t1 - t0) * (t1 - t0);
      const cos = Math.cos(angle) * (t1 - t0) * (t1 - t0);
      return point(-u.x * cos - v.x * sin, -u.y * cos - v.y * sin);
    }
    case 'cubic': {
      const { c1, c2, to } = segment;
      const [a, b] = [6 * (1 - t), 6 * t];
      return point(a * (from.x - 2 * c1.x + c2.x) + b * (c1.x - 2 * c2.x + to.x), a * (from.y - 2 * c1.y + c2.y) + b * (c1.y - 2 * c2.y + to.y));
    }
  }
};

/** The derivative of `segmentPoint` by `t`, mm per unit of t; exact. Zero where a cubic's handle is. */
export const segmentSlope = (segment: Segment, from: Point, t: number): Point => {
  switch (segment.kind) {
    case 'line': return point(segment.to.x - from.x, segment.to.y - from.y);
    case 'arc': {
      const { u, v, t0, t1 } = segment;
      const angle = arcAngle(segment, t);
      const sin = Math.sin(angle) * (t1 - t0);
      const cos = Math.cos(angle) * (t1 - t0);
      return point(v.x * cos - u.x * sin, v.y * cos - u.y * sin);
    }
    case 'cubic': {
      const { c1, c2, to } = segment;
      const [a, b, c] = [3 * (1 - t) * (1 - t), 6 * (1 - t) * t, 3 * t * t];
      return point(
        a * (c1.x - from.x) + b * (c2.x - c1.x) + c * (to.x - c2.x),
        a * (c1.y - from.y) + b * (c2.y - c1.y) + c * (to.y - c2.y),
      );
    }
  }
};
