import { explicitSegments } from './explicit-segments.js';
import { integrate } from './integrate.js';
import type { Arc, Path, Segment } from './path.js';
import { distance, dot, type Point } from './point.js';
import { segmentSlope } from './segment-point.js';

/** Whether an arc is one of a circle: conjugate half-diameters equally long and square to each other. */
export const isCircular = (arc: Arc): boolean => {
  const uu = dot(arc.u, arc.u);
  const vv = dot(arc.v, arc.v);
  const slack = 1e-12 * (uu + vv);
  return Math.abs(uu - vv) <= slack && Math.abs(dot(arc.u, arc.v)) <= slack && uu > 0;
};

/**
 * Length of a segment that starts at `from`, mm. Lines and circular arcs exact; elliptical arcs and cubics by adaptive
 * Gauss–Legendre to 1e-12 relative, 1e-9 at the least where a cubic has a cusp.
 */
export const segmentLength = (segment: Segment, from: Point): number => {
  if (segment.kind === 'line') return distance(from, segment.to);
  if (segment.kind === 'arc' && isCircular(segment)) {
    return Math.hypot(segment.u.x, segment.u.y) * Math.abs(segment.t1 - segment.t0);
  }
  return integrate((t) => {
    const { x, y } = segmentSlope(segment, from, t);
    return Math.sqrt(x * x + y * y);
  }, 0, 1);
};

/** Length of a path, mm, the straight run that closes it counted. Accuracy as `segmentLength`. */
export const pathLength = (path: Path): number =>
  explicitSegments(path).reduce((sum, { segment, from }) => sum + segmentLength(segment, from), 0);
