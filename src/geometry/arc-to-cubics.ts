import { type Arc, arcPoint, type Cubic } from './path.js';
import { dot, type Point } from './point.js';

const WIDEST = Math.PI / 4;

/** Greatest half-diameter of the ellipse with conjugate half-diameters `u` and `v` (the greater singular value), mm. */
export const greatestHalfDiameter = (u: Point, v: Point): number => {
  const uu = dot(u, u);
  const vv = dot(v, v);
  return Math.sqrt((uu + vv + Math.hypot(uu - vv, 2 * dot(u, v))) / 2);
};

/** Radial error of the cubic with handles 4⁄3·tan(α/4) for an arc of angle α of the unit circle; exact to its leading term. */
const unitError = (angle: number): number => {
  const sin = Math.sin(angle / 4);
  const cos = Math.cos(angle / 4);
  return (2 / 27) * (sin * sin * sin * sin * sin * sin) / (cos * cos);
};

const pieceCount = (arc: Arc, tolerance: number): number => {
  const sweep = Math.abs(arc.t1 - arc.t0);
  const radius = greatestHalfDiameter(arc.u, arc.v);
  let count = Math.max(1, Math.ceil(sweep / WIDEST - 1e-12));
  while (radius * unitError(sweep / count) > tolerance) count += 1;
  return count;
};

/**
 * An arc as cubic Béziers in equal pieces of 45° or less, each nowhere farther than `tolerance` mm from the arc (45° alone
 * errs by 4.26e-6 of the radius: 1.3 µm at 300 mm). An ellipse is the affine image of a circle, so its error is at most
 * the circle's times the greatest half-diameter.
 */
export const arcToCubics = (arc: Arc, tolerance = 0.0005): readonly Cubic[] => {
  const count = pieceCount(arc, tolerance);
  const step = (arc.t1 - arc.t0) / count;
  const handle = (4 / 3) * Math.tan(step / 4);
  const along = (p: Point, t: number, k: number): Point => ({
    x: p.x + k * (arc.v.x * Math.cos(t) - arc.u.x * Math.sin(t)),
    y: p.y + k * (arc.v.y * Math.cos(t) - arc.u.y * Math.sin(t)),
  });
  return Array.from({ length: count }, (_, i): Cubic => {
    const a = arc.t0 + i * step;
    const b = i === count - 1 ? arc.t1 : a + step;
    const to = arcPoint(arc, b);
    return { kind: 'cubic', c1: along(arcPoint(arc, a), a, handle), c2: along(to, b, -handle), to };
  });
};
