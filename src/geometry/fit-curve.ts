import { GeometryError } from '../errors/geometry-error.js';
import type { Curve } from './curve.js';
import type { Cubic, Path } from './path.js';
import type { Point } from './point.js';

/** Range, accuracy and forced joints of a fit. */
export interface FitOptions {
  readonly from: number;
  readonly to: number;
  /** Greatest distance, mm, square to the curve, between the fit and the curve. */
  readonly tolerance: number;
  /** Parameters where the fit must part: cusps, and where the curve bends sharply. In any order; those outside are left out. */
  readonly breaks?: readonly number[];
}

/** Where errors are looked at within a piece; the Hermite error of a smooth curve is greatest at the middle. */
const PROBES = [0.2, 0.35, 0.5, 0.65, 0.8] as const;
/** Aim of the next step below the tolerance, so that few steps are tried twice. */
const AIM = 0.85;
/** A piece whose error is this part of the tolerance is long enough. */
const ENOUGH = 0.25;
const TRIES = 12;
/** The least step, as a part of the whole range. */
const LEAST = 1e-11;

interface Knot {
  readonly t: number;
  readonly at: Point;
  readonly slope: Point;
}

/** The cubic with the curve's own ends and slopes over a…b. */
const hermite = (a: Knot, b: Knot): Cubic => {
  const third = (b.t - a.t) / 3;
  return {
    kind: 'cubic',
    c1: { x: a.at.x + third * a.slope.x, y: a.at.y + third * a.slope.y },
    c2: { x: b.at.x - third * b.slope.x, y: b.at.y - third * b.slope.y },
    to: b.at,
  };
};

/**
 * Distance of the cubic from the curve at one parameter, square to the cubic. The slip along the curve costs nothing to
 * first order; what it costs in the second, where a piece turns by up to two radians, is added.
 */
const errorAt = (truth: Point, s: Cubic, from: Point, u: number): number => {
  const k = 1 - u;
  const { c1, c2, to } = s;
  const [w0, w1, w2, w3] = [k * k * k, 3 * k * k * u, 3 * k * u * u, u * u * u];
  const dx = w0 * from.x + w1 * c1.x + w2 * c2.x + w3 * to.x - truth.x;
  const dy = w0 * from.y + w1 * c1.y + w2 * c2.y + w3 * to.y - truth.y;
  const tx = k * k * (c1.x - from.x) + 2 * k * u * (c2.x - c1.x) + u * u * (to.x - c2.x);
  const ty = k * k * (c1.y - from.y) + 2 * k * u * (c2.y - c1.y) + u * u * (to.y - c2.y);
  const speed = Math.sqrt(tx * tx + ty * ty);
  const full = Math.sqrt(dx * dx + dy * dy);
  if (!(speed > 0)) return full;
  const slip = (dx * tx + dy * ty) / speed;
  return Math.min(full, Math.abs(dx * ty - dy * tx) / speed + (slip * slip) / speed);
};

const worstError = (curve: Curve, a: Knot, b: Knot, s: Cubic): number => {
  let worst = 0;
  for (const u of PROBES) worst = Math.max(worst, errorAt(curve.point(a.t + u * (b.t - a.t)), s, a.at, u));
  return worst;
};

const knotAt = (curve: Curve, t: number, side: -1 | 1): Knot => ({ t, at: curve.point(t), slope: curve.slope(t, side) });

interface Piece {
  readonly end: Knot;
  readonly cubic: Cubic;
  /** Worst error ÷ tolerance. */
  readonly error: number;
}

const pieceTo = (curve: Curve, a: Knot, end: Knot, tolerance: number): Piece => {
  const cubic = hermite(a, end);
  const error = worstError(curve, a, end, cubic) / tolerance;
  if (!Number.isFinite(error)) {
    throw new GeometryError('curve-not-finite', 'A curve cannot be fitted: it has no finite point or slope here.', { parameter: a.t });
  }
  return { end, cubic, error };
};

/** By what to stretch a step whose error is known: the fourth-order law of a smooth curve, held within reason near a corner. */
const stretch = (error: number): number =>
  Math.min(8, Math.max(0.05, AIM * (error > 0 ? 1 / Math.sqrt(Math.sqrt(error)) : 8)));

/** The piece from `a` that is as long as the tolerance lets it, nearly: between `step`'s neighbours, by the law, then by halving. */
const longestPiece = (make: (step: number) => Piece, first: number, isLast: (piece: Piece) => boolean, least: number): Piece => {
  let kept: Piece | undefined;
  let [good, bad, step] = [0, Infinity, first];
  for (let tries = 0; ; tries += 1) {
    const piece = make(step);
    if (piece.error > 1 && step > least) {
      bad = step;
    } else {
      kept = piece;
      good = step;
      if (isLast(piece) || piece.error > ENOUGH) return piece;
    }
    if (kept !== undefined && (tries > TRIES || bad < 1.2 * good)) return kept;
    const next = step * stretch(piece.error);
    step = next > good && next < bad ? next : Math.sqrt(Math.max(good, bad / 100) * bad);
  }
};

/** One smooth stretch, each piece as long as the tolerance lets it. */
const fitStretch = (curve: Curve, from: number, to: number, options: FitOptions, out: Cubic[]): void => {
  const least = LEAST * (options.to - options.from);
  const last = knotAt(curve, to, -1);
  let a = knotAt(curve, from, 1);
  let step = (to - from) / 4;
  while (a.t < to) {
    const begin = a;
    const make = (h: number): Piece =>
      pieceTo(curve, begin, begin.t + h >= to - least ? last : knotAt(curve, begin.t + h, -1), options.tolerance);
    const piece = longestPiece(make, step, ({ end }) => end === last, least);
    out.push(piece.cubic);
    step = (piece.end.t - a.t) * stretch(piece.error);
    a = piece.end;
  }
};

/**
 * A curve as cubic Béziers: Hermite pieces with the curve's own points and slopes at the joints, each stretched to where
 * the error, measured square to the curve, meets the tolerance; parted at `breaks`, where the slope is taken from each
 * side. An open path from `from` to `to` (from < to). Refuses a curve without finite points.
 */
export const fitCurve = (curve: Curve, options: FitOptions): Path => {
  const { from, to, tolerance, breaks = [] } = options;
  if (!(from < to && tolerance > 0)) throw new GeometryError('fit-request', 'A fit needs from < to and a tolerance above zero.', { from, to, tolerance });
  const inner = [...breaks].filter((t) => t > from && t < to).sort((a, b) => a - b);
  const segments: Cubic[] = [];
  [...inner, to].forEach((end, i) => fitStretch(curve, inner[i - 1] ?? from, end, options, segments));
  return { start: curve.point(from), segments, closed: false };
};
