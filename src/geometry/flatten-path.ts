import { greatestHalfDiameter } from './arc-to-cubics.js';
import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import type { Cubic, Path } from './path.js';
import type { Point } from './point.js';
import { segmentPoint } from './segment-point.js';

/** Greatest second derivative of a cubic; a chord over 1/n of the parameter sags by at most an eighth of it ÷ n². Exact. */
export const cubicBend = ({ c1, c2, to }: Cubic, from: Point): number => 6 * Math.max(
  Math.hypot(from.x - 2 * c1.x + c2.x, from.y - 2 * c1.y + c2.y),
  Math.hypot(c1.x - 2 * c2.x + to.x, c1.y - 2 * c2.y + to.y),
);

/** How many even steps of its parameter keep a segment's chords within `tolerance` mm of it; a safe bound. */
export const chordCount = ({ segment, from }: PlacedSegment, tolerance: number): number => {
  switch (segment.kind) {
    case 'line': return 1;
    case 'arc': {
      const radius = greatestHalfDiameter(segment.u, segment.v);
      const step = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
      return Math.max(1, Math.ceil(Math.abs(segment.t1 - segment.t0) / step));
    }
    case 'cubic': return Math.max(1, Math.ceil(Math.sqrt(cubicBend(segment, from) / (8 * tolerance))));
  }
};

/** The corners of a polyline that keeps within `tolerance` mm of the path; a closed path's start is not said again at the end. */
export const flattenPath = (path: Path, tolerance: number): readonly Point[] => {
  const points: Point[] = [path.start];
  for (const placed of explicitSegments(path)) {
    const count = chordCount(placed, tolerance);
    for (let i = 1; i <= count; i += 1) points.push(segmentPoint(placed.segment, placed.from, i / count));
  }
  if (path.closed && points.length > 1) points.pop();
  return points;
};
