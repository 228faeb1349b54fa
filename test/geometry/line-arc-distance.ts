import { type Carrier, carrierCrossings } from '../../src/geometry/carrier-crossings.js';
import type { PlacedSegment } from '../../src/geometry/explicit-segments.js';
import { carrierOf, liesWithin } from '../../src/geometry/line-or-arc.js';
import { endOf } from '../../src/geometry/path.js';
import { distance, dot, type Point, subtract } from '../../src/geometry/point.js';

/** Two points, one on each of two strokes, and how far apart they stand, mm. */
export interface PointPair {
  readonly distance: number;
  readonly first: Point;
  readonly second: Point;
}

/** The point of a carrier nearest to `p`; none for a circle's own centre, from which all are as far. */
const footOn = (carrier: Carrier, p: Point): Point | undefined => {
  if (carrier.kind === 'line') {
    const t = dot(subtract(p, carrier.at), carrier.along) / (dot(carrier.along, carrier.along) || 1);
    return { x: carrier.at.x + carrier.along.x * t, y: carrier.at.y + carrier.along.y * t };
  }
  const away = subtract(p, carrier.centre);
  const length = Math.hypot(away.x, away.y);
  if (length === 0) return undefined;
  const k = carrier.radius / length;
  return { x: carrier.centre.x + away.x * k, y: carrier.centre.y + away.y * k };
};

/** The point of a straight run or circular arc nearest to `p`; exact. */
const nearestOn = (placed: PlacedSegment, p: Point): Point => {
  const foot = footOn(carrierOf(placed), p);
  const ends = [placed.from, endOf(placed.segment)];
  return (foot !== undefined && liesWithin(placed, foot) ? [foot, ...ends] : ends)
    .reduce((best, q) => (distance(p, q) < distance(p, best) ? q : best));
};

/** Points of `one` at which a common normal with `other` may stand inside both: its centre line, its farthest and nearest to a line. */
const normalFeet = (one: PlacedSegment, other: PlacedSegment): readonly Point[] => {
  const [a, b] = [carrierOf(one), carrierOf(other)];
  if (b.kind === 'line') return [];
  const foot = footOn(a, b.centre);
  if (foot === undefined) return [];
  const opposite = a.kind === 'circle' ? [{ x: 2 * a.centre.x - foot.x, y: 2 * a.centre.y - foot.y }] : [];
  return [foot, ...opposite].filter((p) => liesWithin(one, p));
};

/**
 * Where two straight runs or circular arcs come nearest; exact. The least distance stands at an end of one, on a common normal,
 * or at a crossing: each is tried, and every pair tried is one of true points.
 */
export const lineArcDistance = (one: PlacedSegment, other: PlacedSegment): PointPair => {
  const onFirst = [one.from, endOf(one.segment), ...normalFeet(one, other)];
  const onSecond = [other.from, endOf(other.segment), ...normalFeet(other, one)];
  const crossings = carrierCrossings(carrierOf(one), carrierOf(other)).filter((p) => liesWithin(one, p) && liesWithin(other, p));
  return [
    ...crossings.map((p) => ({ first: p, second: p })),
    ...onFirst.map((p) => ({ first: p, second: nearestOn(other, p) })),
    ...onSecond.map((p) => ({ first: nearestOn(one, p), second: p })),
  ]
    .map((pair) => ({ ...pair, distance: distance(pair.first, pair.second) }))
    .reduce((best, pair) => (pair.distance < best.distance ? pair : best));
};
