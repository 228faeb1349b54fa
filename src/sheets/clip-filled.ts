import type { Box } from '../geometry/box.js';
import { explicitSegments } from '../geometry/explicit-segments.js';
import type { Path } from '../geometry/path.js';
import { between, type Point } from '../geometry/point.js';
import { segmentPoint } from '../geometry/segment-point.js';
import { polyline } from '../geometry/shapes.js';

/** Chords that stand for a curve of a filled shape: a half circle of 3 mm radius comes out within 0.007 mm. */
const chords = 24;

const corners = (path: Path): Point[] => explicitSegments(path).flatMap(({ segment, from }) =>
  segment.kind === 'line'
    ? [from]
    : Array.from({ length: chords }, (_, i) => segmentPoint(segment, from, i / chords)));

type Inside = (p: Point) => number;

/** One side of Sutherland and Hodgman's clipping (Comm. ACM 17, 1974): keeps where `inside` ≥ 0. */
const clipSide = (points: readonly Point[], inside: Inside): Point[] => points.flatMap((p, i) => {
  const before = points[(i + points.length - 1) % points.length]!;
  const [d0, d1] = [inside(before), inside(p)];
  const crossing = d0 < 0 !== d1 < 0 ? [between(before, p, d0 / (d0 - d1))] : [];
  return d1 < 0 ? crossing : [...crossing, p];
});

/**
 * The part of a filled shape inside a box, for arrowheads and blocks of a rule that a sheet's border cuts. Straight sides
 * exactly; curves by chords. Not for shapes with hollows: their parts would hang together by slivers along the border.
 */
export const clipFilled = (path: Path, box: Box): Path[] => {
  const sides: Inside[] = [(p) => p.x - box.x0, (p) => box.x1 - p.x, (p) => p.y - box.y0, (p) => box.y1 - p.y];
  const left = sides.reduce<Point[]>((points, side) => clipSide(points, side), corners(path));
  return left.length < 3 ? [] : [polyline(left, true)];
};
