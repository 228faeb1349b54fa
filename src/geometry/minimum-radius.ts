import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import { isCircular } from './length.js';
import type { Path } from './path.js';
import { cross, dot, type Point } from './point.js';
import { segmentSlope } from './segment-point.js';

/** The least radius on a path for each sense of bend as seen on the page, mm: 0 at a sharp corner, Infinity where there is none. */
export interface LeastRadii {
  readonly clockwise: number;
  readonly anticlockwise: number;
}

/** Samples of a segment between which the sharpest bend is narrowed in. */
const SAMPLES = 64;
/** A joint that turns by less, radians, is smooth. */
const SMOOTH = 1e-6;

const second = ({ segment, from }: PlacedSegment, t: number): Point => {
  const h = 1e-4;
  const [a, b] = [Math.max(0, t - h), Math.min(1, t + h)];
  const [p, q] = [segmentSlope(segment, from, a), segmentSlope(segment, from, b)];
  return { x: (q.x - p.x) / (b - a), y: (q.y - p.y) / (b - a) };
};

/** Signed curvature, positive where the bend is clockwise on the page. */
const curvature = (placed: PlacedSegment, t: number): number => {
  const d = segmentSlope(placed.segment, placed.from, t);
  const speed = Math.hypot(d.x, d.y);
  return speed === 0 ? 0 : cross(d, second(placed, t)) / (speed * speed * speed);
};

/** Greatest of sign × curvature along a segment: the best sample, narrowed in between its neighbours. */
const sharpest = (placed: PlacedSegment, sign: 1 | -1): number => {
  const f = (t: number): number => sign * curvature(placed, t);
  let at = 0;
  for (let i = 1; i <= SAMPLES; i += 1) if (f(i / SAMPLES) > f(at)) at = i / SAMPLES;
  let [low, high] = [Math.max(0, at - 1 / SAMPLES), Math.min(1, at + 1 / SAMPLES)];
  for (let i = 0; i < 40; i += 1) {
    const [m, n] = [low + (high - low) / 3, high - (high - low) / 3];
    if (f(m) < f(n)) low = m; else high = n;
  }
  return Math.max(f(at), f((low + high) / 2));
};

const segmentRadii = (placed: PlacedSegment): LeastRadii => {
  const { segment } = placed;
  if (segment.kind === 'line') return { clockwise: Infinity, anticlockwise: Infinity };
  if (segment.kind === 'arc' && isCircular(segment)) {
    const radius = Math.hypot(segment.u.x, segment.u.y);
    const clockwise = cross(segment.u, segment.v) * (segment.t1 - segment.t0) > 0;
    return { clockwise: clockwise ? radius : Infinity, anticlockwise: clockwise ? Infinity : radius };
  }
  const radius = (k: number): number => (k > 1e-12 ? 1 / k : Infinity);
  return { clockwise: radius(sharpest(placed, 1)), anticlockwise: radius(sharpest(placed, -1)) };
};

/** The direction in which a segment ends or begins; from a little way in where a handle is of no length. */
const heading = ({ segment, from }: PlacedSegment, end: 0 | 1): Point => {
  const d = segmentSlope(segment, from, end);
  return d.x === 0 && d.y === 0 ? segmentSlope(segment, from, end === 0 ? 1e-6 : 1 - 1e-6) : d;
};

const jointRadii = (before: PlacedSegment, after: PlacedSegment): LeastRadii => {
  const [a, b] = [heading(before, 1), heading(after, 0)];
  const turn = Math.atan2(cross(a, b), dot(a, b));
  return { clockwise: turn > SMOOTH ? 0 : Infinity, anticlockwise: turn < -SMOOTH ? 0 : Infinity };
};

/**
 * The least radii of a path, told apart by sense, corners counted as 0. Exact for circular arcs; for ellipses and cubics the
 * curvature is searched (64 samples a segment, then narrowed in) to about 1e-6 relative.
 */
export const minimumRadius = (path: Path): LeastRadii => {
  const placed = explicitSegments(path);
  const joints = placed.slice(1).map((after, i) => jointRadii(placed[i]!, after));
  const [first, last] = [placed[0], placed.at(-1)];
  if (path.closed && first !== undefined && last !== undefined) joints.push(jointRadii(last, first));
  return [...placed.map(segmentRadii), ...joints].reduce((least, radii) => ({
    clockwise: Math.min(least.clockwise, radii.clockwise),
    anticlockwise: Math.min(least.anticlockwise, radii.anticlockwise),
  }), { clockwise: Infinity, anticlockwise: Infinity });
};
