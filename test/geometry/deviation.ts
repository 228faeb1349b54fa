import type { Curve } from '../../src/geometry/curve.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import type { Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { segmentPoint, segmentSlope } from '../../src/geometry/segment-point.js';

/** A curve sampled over its range: places to start a search for the nearest point from. */
interface Sampled {
  readonly curve: Curve;
  readonly ts: Float64Array;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
}

const sampled = (curve: Curve, ts: Float64Array): Sampled => {
  const xs = new Float64Array(ts.length);
  const ys = new Float64Array(ts.length);
  ts.forEach((t, i) => {
    const p = curve.point(t);
    xs[i] = p.x;
    ys[i] = p.y;
  });
  return { curve, ts, xs, ys };
};

const evenly = (from: number, to: number, count: number): Float64Array =>
  Float64Array.from({ length: count + 1 }, (_, i) => (i === count ? to : from + ((to - from) * i) / count));

/** A path as a curve: the whole part of t counts its segments, the rest runs along one. */
const pathCurve = (path: Path): { readonly curve: Curve; readonly count: number } => {
  const placed = explicitSegments(path);
  const at = (t: number) => placed[Math.min(placed.length - 1, Math.max(0, Math.floor(t)))]!;
  const inside = (t: number): number => t - Math.min(placed.length - 1, Math.max(0, Math.floor(t)));
  return {
    count: placed.length,
    curve: {
      point: (t) => segmentPoint(at(t).segment, at(t).from, inside(t)),
      slope: (t) => segmentSlope(at(t).segment, at(t).from, inside(t)),
    },
  };
};

/** Least distance from `p` found by sliding along the curve from `start`: Gauss–Newton, halved where it does not get nearer. */
const slide = (curve: Curve, p: Point, start: number, [low, high]: readonly [number, number]): number => {
  let t = start;
  let at = curve.point(t);
  let best = Math.hypot(at.x - p.x, at.y - p.y);
  for (let i = 0; i < 12; i += 1) {
    const d = curve.slope(t);
    let step = ((p.x - at.x) * d.x + (p.y - at.y) * d.y) / (d.x * d.x + d.y * d.y || 1);
    let next = best;
    for (let halvings = 0; halvings < 8; halvings += 1, step /= 2) {
      const u = Math.min(high, Math.max(low, t + step));
      const q = curve.point(u);
      next = Math.hypot(q.x - p.x, q.y - p.y);
      if (next < best) { t = u; at = q; break; }
    }
    const gain = best - next;
    best = Math.min(best, next);
    if (!(gain > 1e-9 * best + 1e-13)) break;
  }
  return best;
};

/** How far along the chord from sample `i` to the next, 0…1, the point nearest to `p` lies. */
const alongChord = ({ xs, ys }: Sampled, i: number, p: Point): number => {
  const [x, y] = [xs[i]!, ys[i]!];
  const [dx, dy] = [xs[i + 1]! - x, ys[i + 1]! - y];
  const square = dx * dx + dy * dy;
  return square > 0 ? Math.min(1, Math.max(0, ((p.x - x) * dx + (p.y - y) * dy) / square)) : 0;
};

const fromChord = (b: Sampled, i: number, p: Point): number => {
  const u = alongChord(b, i, p);
  const dx = b.xs[i]! + u * (b.xs[i + 1]! - b.xs[i]!) - p.x;
  const dy = b.ys[i]! + u * (b.ys[i + 1]! - b.ys[i]!) - p.y;
  return dx * dx + dy * dy;
};

/**
 * Distance of a point from a sampled curve: slid to from each chord that is nearer than the chords beside it. The nearest
 * chord alone would not do at a cusp, where it may lie on the other branch.
 */
const distanceTo = (b: Sampled, p: Point, starts: number): number => {
  const { curve, ts } = b;
  const last = ts.length - 2;
  const far = (i: number): number => (i > last ? Infinity : fromChord(b, i, p));
  const range = [ts[0]!, ts[last + 1]!] as const;
  let best = Infinity;
  let [before, here] = [Infinity, far(0)];
  for (let i = 0; i <= last; i += 1) {
    const next = far(i + 1);
    if (here <= before && here <= next) {
      const low = ts[Math.max(0, i - 1)]!;
      const span = ts[Math.min(last + 1, i + 2)]! - low;
      best = Math.min(best, slide(curve, p, ts[i]! + alongChord(b, i, p) * (ts[i + 1]! - ts[i]!), range));
      for (let k = 0; k < starts; k += 1) best = Math.min(best, slide(curve, p, low + ((k + 0.5) / starts) * span, range));
    }
    [before, here] = [here, next];
  }
  return best;
};

/** Starts of a slide within a chord: none but the nearest point of the chord, until a point seems to stand out. */
const FEW = 0;
/** Starts over a chord and both beside it: a corner between samples, or a handle of no length, may stop a slide short. */
const MANY = 36;

/** Greatest distance of `a` from `b`: at a's samples, then narrowed in about the worst of them. */
const oneWay = (a: Sampled, b: Sampled): number => {
  let worst = 0;
  let at = 0;
  const standsOut = (p: Point): number => {
    const quick = distanceTo(b, p, FEW);
    return quick > worst ? distanceTo(b, p, MANY) : quick;
  };
  a.xs.forEach((x, i) => {
    const d = standsOut({ x, y: a.ys[i]! });
    if (d > worst) { worst = d; at = i; }
  });
  let low = a.ts[Math.max(0, at - 1)]!;
  let high = a.ts[Math.min(a.ts.length - 1, at + 1)]!;
  for (let i = 0; i < 20; i += 1) {
    const [m, n] = [low + (high - low) / 3, high - (high - low) / 3];
    const [dm, dn] = [standsOut(a.curve.point(m)), standsOut(a.curve.point(n))];
    worst = Math.max(worst, dm, dn);
    if (dm < dn) low = m; else high = n;
  }
  return worst;
};

/** The stretch of the true curve, and how densely to look: samples of the curve (2048) and of each segment (16). */
export interface DeviationOptions {
  readonly from: number;
  readonly to: number;
  readonly curveSamples?: number;
  readonly segmentSamples?: number;
}

/**
 * The greatest distance, mm, between a path and a true curve over `from`…`to`, both ways: no point of the path lies farther
 * from the curve, none of the curve farther from the path (Hausdorff distance). Found by dense samples, the nearest point of
 * the other searched from the nearest chords, and the worst narrowed in; never below the distance at a sample.
 * It depends on neither curve's parameter, so it judges any path, a fit's or one read back from a file.
 */
export const deviation = (path: Path, curve: Curve, options: DeviationOptions): number => {
  const { from, to, curveSamples = 2048, segmentSamples = 16 } = options;
  const own = pathCurve(path);
  const drawn = sampled(own.curve, evenly(0, own.count, own.count * segmentSamples));
  const truth = sampled(curve, evenly(from, to, curveSamples));
  return Math.max(oneWay(drawn, truth), oneWay(truth, drawn));
};
