import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import { isCircular } from './length.js';
import { endOf, type Path } from './path.js';
import { cross, distance, dot, type Point } from './point.js';
import { segmentPoint, segmentSecond, segmentSlope } from './segment-point.js';

/** The tightest bend of one sense, and where it is: radius 0 at a sharp corner, Infinity (and no place) where there is none. mm. */
export interface Bend {
  readonly radius: number;
  readonly at: Point | undefined;
}

/** The tightest bend of a path for each sense as seen on the page. */
export interface LeastRadii {
  readonly clockwise: Bend;
  readonly anticlockwise: Bend;
}

/** Samples of a segment between which the sharpest bend is narrowed in. */
const SAMPLES = 64;
/**
 * A joint that turns by less, radians, is no corner: 1°, less than a file or the paper shows. Traced outlines are full of such
 * kinks; each bends the outline as a curve would that turns as much over half of the two runs beside it.
 */
const CORNER = Math.PI / 180;
/** A turn by less is none: what arithmetic leaves between tangent segments. */
const STRAIGHT = 1e-6;

const none: Bend = { radius: Infinity, at: undefined };

/** Signed curvature, positive where the bend is clockwise on the page. */
const curvature = ({ segment, from }: PlacedSegment, t: number): number => {
  const d = segmentSlope(segment, from, t);
  const speed = Math.hypot(d.x, d.y);
  return speed === 0 ? 0 : cross(d, segmentSecond(segment, from, t)) / (speed * speed * speed);
};

/** Greatest of sign × curvature along a segment: the best sample, narrowed in between its neighbours. */
const sharpest = (placed: PlacedSegment, sign: 1 | -1): { readonly value: number; readonly t: number } => {
  const f = (t: number): number => sign * curvature(placed, t);
  let at = 0;
  for (let i = 1; i <= SAMPLES; i += 1) if (f(i / SAMPLES) > f(at)) at = i / SAMPLES;
  let [low, high] = [Math.max(0, at - 1 / SAMPLES), Math.min(1, at + 1 / SAMPLES)];
  for (let i = 0; i < 40; i += 1) {
    const [m, n] = [low + (high - low) / 3, high - (high - low) / 3];
    if (f(m) < f(n)) low = m; else high = n;
  }
  const between = (low + high) / 2;
  return f(between) > f(at) ? { value: f(between), t: between } : { value: f(at), t: at };
};

const segmentRadii = (placed: PlacedSegment): LeastRadii => {
  const { segment } = placed;
  if (segment.kind === 'line') return { clockwise: none, anticlockwise: none };
  if (segment.kind === 'arc' && isCircular(segment)) {
    const radius = Math.hypot(segment.u.x, segment.u.y);
    const clockwise = cross(segment.u, segment.v) * (segment.t1 - segment.t0) > 0;
    const bend: Bend = { radius, at: segmentPoint(segment, placed.from, 0.5) };
    return { clockwise: clockwise ? bend : none, anticlockwise: clockwise ? none : bend };
  }
  const bend = ({ value, t }: { readonly value: number; readonly t: number }): Bend =>
    (value > 1e-12 ? { radius: 1 / value, at: segmentPoint(segment, placed.from, t) } : none);
  return { clockwise: bend(sharpest(placed, 1)), anticlockwise: bend(sharpest(placed, -1)) };
};

/** The direction in which a segment ends or begins; from a little way in where a handle is of no length. */
const heading = ({ segment, from }: PlacedSegment, end: 0 | 1): Point => {
  const d = segmentSlope(segment, from, end);
  return d.x === 0 && d.y === 0 ? segmentSlope(segment, from, end === 0 ? 1e-6 : 1 - 1e-6) : d;
};

const jointRadii = (before: PlacedSegment, after: PlacedSegment): LeastRadii => {
  const [a, b] = [heading(before, 1), heading(after, 0)];
  const turn = Math.atan2(cross(a, b), dot(a, b));
  if (Math.abs(turn) < STRAIGHT) return { clockwise: none, anticlockwise: none };
  const runs = (distance(before.from, after.from) + distance(after.from, endOf(after.segment))) / 2;
  const bend: Bend = { radius: Math.abs(turn) >= CORNER ? 0 : runs / Math.abs(turn), at: after.from };
  return { clockwise: turn > 0 ? bend : none, anticlockwise: turn < 0 ? bend : none };
};

const tighter = (a: Bend, b: Bend): Bend => (b.radius < a.radius ? b : a);

/**
 * The tightest bends of a path, told apart by sense, corners of 1° and more counted as radius 0. Exact for circular arcs; for ellipses and cubics the
 * curvature is searched (64 samples a segment, then narrowed in) to about 1e-6 relative.
 */
export const minimumRadius = (path: Path): LeastRadii => {
  const placed = explicitSegments(path);
  const joints = placed.slice(1).map((after, i) => jointRadii(placed[i]!, after));
  const [first, last] = [placed[0], placed.at(-1)];
  if (path.closed && first !== undefined && last !== undefined) joints.push(jointRadii(last, first));
  return [...placed.map(segmentRadii), ...joints].reduce((least, radii) => ({
    clockwise: tighter(least.clockwise, radii.clockwise),
    anticlockwise: tighter(least.anticlockwise, radii.anticlockwise),
  }), { clockwise: none, anticlockwise: none });
};
