import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import { monotoneKnots } from './monotone-knots.js';
import { endOf, type Path } from './path.js';
import type { Point } from './point.js';
import { segmentPoint } from './segment-point.js';

/** x of a stretch on which y is monotone, where it passes the level: by halving, to the last bit. */
const xAtLevel = ({ segment, from }: PlacedSegment, a: number, b: number, level: number): number => {
  const rises = segmentPoint(segment, from, a).y <= level;
  let [low, high] = [a, b];
  for (let i = 0; i < 60; i += 1) {
    const t = (low + high) / 2;
    if ((segmentPoint(segment, from, t).y <= level) === rises) low = t; else high = t;
  }
  return segmentPoint(segment, from, (low + high) / 2).x;
};

/** How often a ray to the right of `p` passes a segment, signed. Half-open in y, so that a joint on the ray counts once. */
const passes = (placed: PlacedSegment, p: Point): number => {
  const { segment, from } = placed;
  const knots = monotoneKnots(placed);
  // The ends as the neighbouring segments have them: worked out from t they may be a rounding off, and a joint counts twice.
  const level = (i: number): number => (i === 0 ? from.y : i === knots.length - 1 ? endOf(segment).y : segmentPoint(segment, from, knots[i]!).y);
  let count = 0;
  for (let i = 1; i < knots.length; i += 1) {
    const [a, b] = [knots[i - 1]!, knots[i]!];
    const below = level(i - 1) <= p.y;
    if (below === level(i) <= p.y) continue;
    if (xAtLevel(placed, a, b, p.y) > p.x) count += below ? 1 : -1;
  }
  return count;
};

/** Whether a point lies within a path (non-zero winding; an open path closed by a straight run). On the path itself, to rounding, either. */
export const pointInPath = (path: Path, p: Point): boolean =>
  explicitSegments({ ...path, closed: true }).reduce((sum, placed) => sum + passes(placed, p), 0) !== 0;
