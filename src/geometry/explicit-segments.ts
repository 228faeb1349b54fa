import { endOf, type Path, type Segment } from './path.js';
import type { Point } from './point.js';

/** A segment with the point that it starts from. */
export interface PlacedSegment {
  readonly from: Point;
  readonly segment: Segment;
}

/** The segments of a path with their starts, the straight run that closes a closed path among them where one is needed. */
export const explicitSegments = (path: Path): readonly PlacedSegment[] => {
  const placed: PlacedSegment[] = [];
  let from = path.start;
  for (const segment of path.segments) {
    placed.push({ from, segment });
    from = endOf(segment);
  }
  // An arc's computed end may miss the start by rounding alone: that gap is no run of its own.
  const gap = Math.hypot(from.x - path.start.x, from.y - path.start.y);
  if (path.closed && gap > 1e-9) placed.push({ from, segment: { kind: 'line', to: path.start } });
  return placed;
};
