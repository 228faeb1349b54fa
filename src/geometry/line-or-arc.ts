import { segmentBounds } from './bounds.js';
import { type Box, boxesMeet } from './box.js';
import { type Carrier, carrierCrossings } from './carrier-crossings.js';
import type { PlacedSegment } from './explicit-segments.js';
import { type Arc, endOf } from './path.js';
import { distance, dot, type Point, subtract } from './point.js';

/** Points nearer than this, mm, are one. */
const SAME = 1e-7;

/** The line or circle that a straight run or a circular arc lies on; exact. */
export const carrierOf = ({ segment, from }: PlacedSegment): Carrier => segment.kind === 'arc'
  ? { kind: 'circle', centre: segment.centre, radius: Math.hypot(segment.u.x, segment.u.y) }
  : { kind: 'line', at: from, along: subtract(endOf(segment), from) };

/** The arc's parameter of a point on its circle, the turn chosen that lies nearest to `near`. */
const arcParameter = (arc: Arc, p: Point, near: number): number => {
  const q = subtract(p, arc.centre);
  const t = Math.atan2(dot(q, arc.v), dot(q, arc.u));
  return t + 2 * Math.PI * Math.round((near - t) / (2 * Math.PI));
};

/**
 * A straight run or circular arc with its ends moved along its own line or circle to `begin` and `end`; undefined where it
 * would have to run backwards.
 */
export const trimTo = (placed: PlacedSegment, begin: Point, end: Point): PlacedSegment | undefined => {
  const { segment, from } = placed;
  if (segment.kind !== 'arc') {
    return dot(subtract(end, begin), subtract(endOf(segment), from)) >= 0 ? { from: begin, segment: { kind: 'line', to: end } } : undefined;
  }
  const t0 = arcParameter(segment, begin, segment.t0);
  const t1 = arcParameter(segment, end, segment.t1);
  return (t1 - t0) * (segment.t1 - segment.t0) >= 0 ? { from: begin, segment: { ...segment, t0, t1 } } : undefined;
};

/** Whether a point of the carrier lies within the segment, its ends left out. */
export const liesWithin = ({ segment, from }: PlacedSegment, p: Point): boolean => {
  if (distance(p, from) < SAME || distance(p, endOf(segment)) < SAME) return false;
  if (segment.kind !== 'arc') {
    const d = subtract(endOf(segment), from);
    const t = dot(subtract(p, from), d) / dot(d, d);
    return t > 0 && t < 1;
  }
  const t = (arcParameter(segment, p, (segment.t0 + segment.t1) / 2) - segment.t0) / (segment.t1 - segment.t0);
  return t > 0 && t < 1;
};

const crossEachOther = (one: PlacedSegment, other: PlacedSegment): boolean =>
  carrierCrossings(carrierOf(one), carrierOf(other)).some((p) => liesWithin(one, p) && liesWithin(other, p));

/** Whether any two straight runs or circular arcs of an outline cross other than end to end. */
export const meetAgain = (placed: readonly PlacedSegment[]): boolean => {
  const boxes: readonly Box[] = placed.map(({ segment, from }) => segmentBounds(segment, from));
  const order = placed.map((_, i) => i).sort((i, j) => boxes[i]!.x0 - boxes[j]!.x0);
  return order.some((i, n) => {
    for (let m = n + 1; m < order.length; m += 1) {
      const j = order[m]!;
      if (boxes[j]!.x0 > boxes[i]!.x1) return false;
      if (boxesMeet(boxes[i]!, boxes[j]!) && crossEachOther(placed[i]!, placed[j]!)) return true;
    }
    return false;
  });
};
