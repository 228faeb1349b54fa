import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import type { Path } from './path.js';
import { cross } from './point.js';
import { segmentPoint, segmentSlope } from './segment-point.js';

/** Three-point Gauss–Legendre on 0…1: exact to the fifth degree, which is that of p × p′ of a cubic. */
const GAUSS = [[0.5, 4 / 9], [0.5 - Math.sqrt(0.15), 5 / 18], [0.5 + Math.sqrt(0.15), 5 / 18]] as const;

/** Half the integral of p × dp over a segment. */
const swept = ({ segment, from }: PlacedSegment): number => {
  switch (segment.kind) {
    case 'line': return cross(from, segment.to) / 2;
    case 'arc': {
      const end = segmentPoint(segment, from, 1);
      const begin = segmentPoint(segment, from, 0);
      const chord = { x: end.x - begin.x, y: end.y - begin.y };
      return (cross(segment.centre, chord) + cross(segment.u, segment.v) * (segment.t1 - segment.t0)) / 2;
    }
    case 'cubic':
      return GAUSS.reduce((sum, [t, w]) => sum + w * cross(segmentPoint(segment, from, t), segmentSlope(segment, from, t)), 0) / 2;
  }
};

/**
 * Signed area within a path, mm², an open one closed by a straight run; exact. Positive where the path runs clockwise as
 * seen on the page (y down).
 */
export const pathArea = (path: Path): number =>
  explicitSegments({ ...path, closed: true }).reduce((sum, placed) => sum + swept(placed), 0);
