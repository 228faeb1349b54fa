import { dot, point, polar, type Point } from '../../geometry/point.js';

/** A convex region of the plane, known by its farthest point along any unit vector. mm. */
export interface Convex {
  readonly farthest: (way: Point) => Point;
}

/** The run of a disc of `radius` along a straight line from `a` to `b`. */
export const capsule = (a: Point, b: Point, radius: number): Convex => ({
  farthest: (way) => {
    const end = dot(way, b) > dot(way, a) ? b : a;
    return point(end.x + way.x * radius, end.y + way.y * radius);
  },
});

/** The run of an ellipse from `a` to `b`; `long` and `short` are its half axes as vectors. */
export const ellipseRun = (a: Point, b: Point, long: Point, short: Point): Convex => ({
  farthest: (way) => {
    const end = dot(way, b) > dot(way, a) ? b : a;
    const [p, q] = [dot(way, long), dot(way, short)];
    const size = Math.hypot(p, q);
    return point(end.x + (long.x * p + short.x * q) / size, end.y + (long.y * p + short.y * q) / size);
  },
});

/** The hull of points. */
export const hullOf = (points: readonly Point[]): Convex => ({
  farthest: (way) => points.reduce((far, p) => (dot(way, p) > dot(way, far) ? p : far)),
});

const coarse = 90;

/** The greatest value of f on a circle of angles: sampled every 4°, then narrowed to 1e-9 rad about the best sample. */
export const greatestRound = (f: (angle: number) => number): number => {
  const step = (2 * Math.PI) / coarse;
  let best = 0;
  let value = -Infinity;
  for (let i = 0; i < coarse; i++) {
    const v = f(i * step);
    if (v > value) [best, value] = [i * step, v];
  }
  let [low, high] = [best - step, best + step];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 45; i++) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (f(a) < f(b)) low = a;
    else high = b;
  }
  return Math.max(value, f((low + high) / 2));
};

/**
 * The least distance between two convex regions: the widest strip that keeps them apart, over all directions. Negative where they
 * overlap: how far one would have to move. To 1e-9 mm where the distance is under a metre.
 */
export const gapBetween = (a: Convex, b: Convex): number => greatestRound((angle) => {
  const way = polar(angle);
  return dot(way, b.farthest(point(-way.x, -way.y))) - dot(way, a.farthest(way));
});

/** The least of a function that is concave over the plane (a distance to the edge of a board) over a convex region. */
export const leastOver = (region: Convex, f: (p: Point) => number): number =>
  -greatestRound((angle) => -f(region.farthest(polar(angle))));
