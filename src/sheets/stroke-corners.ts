import type { Point } from '../geometry/point.js';
import { segmentPoint, segmentSlope } from '../geometry/segment-point.js';
import type { InkSegment, StrokeInk } from './ink-index.js';

/** A turn of the pen sharper than this is seen as a corner, radians. */
const leastTurn = 0.17;

/** How far the pen turns from one segment to the next, radians 0 … π. */
const turnBetween = (before: InkSegment, next: InkSegment): number => {
  const [a, b] = [segmentSlope(before.segment, before.from, 1), segmentSlope(next.segment, next.from, 0)];
  return Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));
};

/** The places of a stroke that one can lay a rule to: where it begins and ends, unless it closes, and where it turns sharply. */
export const strokeCorners = ({ item, segments }: StrokeInk): Point[] => {
  const turns = segments.flatMap((s, i) => {
    const before = i > 0 ? segments[i - 1] : item.path.closed ? segments.at(-1) : undefined;
    return before === undefined || turnBetween(before, s) > leastTurn ? [s.from] : [];
  });
  const last = segments.at(-1);
  return item.path.closed || last === undefined ? turns : [...turns, segmentPoint(last.segment, last.from, 1)];
};
