import type { Point } from './point.js';

/** A straight run from the pen to `to`. */
export interface Line {
  readonly kind: 'line';
  readonly to: Point;
}

/**
 * A circular or elliptical arc, exact: centre + u·cos t + v·sin t for t from `t0` to `t1` (radians, either sense).
 * `u` and `v` are conjugate half-diameters, so every affine map of an arc is an arc again and nothing is approximated
 * before a writer asks for it. The pen must already stand at t0.
 */
export interface Arc {
  readonly kind: 'arc';
  readonly centre: Point;
  readonly u: Point;
  readonly v: Point;
  readonly t0: number;
  readonly t1: number;
}

/** A cubic Bézier from the pen by the handles `c1` and `c2` to `to`. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

/** One piece of a path; it starts where the piece before it ends. */
export type Segment = Line | Arc | Cubic;

/** One unbroken pen stroke in mm. A closed path ends where it starts, with a straight run if its segments do not. */
export interface Path {
  readonly start: Point;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

/** The point of an arc at parameter `t`; exact. */
export const arcPoint = (arc: Arc, t: number): Point => ({
  x: arc.centre.x + arc.u.x * Math.cos(t) + arc.v.x * Math.sin(t),
  y: arc.centre.y + arc.u.y * Math.cos(t) + arc.v.y * Math.sin(t),
});

/** Where the pen stands after a segment. */
export const endOf = (segment: Segment): Point =>
  segment.kind === 'arc' ? arcPoint(segment, segment.t1) : segment.to;

/** Where the pen stands after a path; its start when the path is closed. */
export const pathEnd = (path: Path): Point => {
  const last = path.segments.at(-1);
  return last === undefined || path.closed ? path.start : endOf(last);
};

/** Calls `visit` with every segment and the point it starts from. */
export const eachSegment = (path: Path, visit: (segment: Segment, from: Point) => void): void => {
  let from = path.start;
  for (const segment of path.segments) {
    visit(segment, from);
    from = endOf(segment);
  }
};
