import { greatestHalfDiameter } from '../../src/geometry/arc-to-cubics.js';
import { segmentBounds } from '../../src/geometry/bounds.js';
import type { Box } from '../../src/geometry/box.js';
import { explicitSegments, type PlacedSegment } from '../../src/geometry/explicit-segments.js';
import { cubicBend } from '../../src/geometry/flatten-path.js';
import { isCircular } from '../../src/geometry/length.js';
import type { Path } from '../../src/geometry/path.js';
import { cross, distance, dot, type Point, subtract } from '../../src/geometry/point.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { lineArcDistance, type PointPair } from './line-arc-distance.js';

/** A stretch of a segment, its chord, and how far it may sag from the chord. */
interface Stretch {
  readonly placed: PlacedSegment;
  readonly a: number;
  readonly b: number;
  readonly from: Point;
  readonly to: Point;
  readonly sag: number;
}

const sagOf = ({ segment, from }: PlacedSegment, a: number, b: number): number => {
  switch (segment.kind) {
    case 'line': return 0;
    case 'arc': {
      const half = Math.min(Math.PI, Math.abs(segment.t1 - segment.t0) * (b - a) / 2);
      return greatestHalfDiameter(segment.u, segment.v) * (1 - Math.cos(half));
    }
    case 'cubic': return (cubicBend(segment, from) * (b - a) * (b - a)) / 8;
  }
};

const stretchOf = (placed: PlacedSegment, a: number, b: number): Stretch => ({
  placed, a, b,
  from: segmentPoint(placed.segment, placed.from, a),
  to: segmentPoint(placed.segment, placed.from, b),
  sag: sagOf(placed, a, b),
});

const halves = (s: Stretch): readonly [Stretch, Stretch] => {
  const middle = (s.a + s.b) / 2;
  return [stretchOf(s.placed, s.a, middle), stretchOf(s.placed, middle, s.b)];
};

const along = (a: Point, b: Point, p: Point): number => {
  const d = subtract(b, a);
  const square = dot(d, d);
  return square > 0 ? Math.min(1, Math.max(0, dot(subtract(p, a), d) / square)) : 0;
};

/** Parts of two chords where they come nearest: where they cross, else at one of the four ends. */
const nearestOnChords = (s: Stretch, o: Stretch): readonly [u: number, w: number, distance: number] => {
  const [d, e, r] = [subtract(s.to, s.from), subtract(o.to, o.from), subtract(o.from, s.from)];
  const turn = cross(d, e);
  if (turn !== 0) {
    const [u, w] = [cross(r, e) / turn, cross(r, d) / turn];
    if (u >= 0 && u <= 1 && w >= 0 && w <= 1) return [u, w, 0];
  }
  const at = (p: Point, q: Point, u: number): Point => ({ x: p.x + (q.x - p.x) * u, y: p.y + (q.y - p.y) * u });
  const options = [
    [0, along(o.from, o.to, s.from)], [1, along(o.from, o.to, s.to)], [along(s.from, s.to, o.from), 0], [along(s.from, s.to, o.to), 1],
  ] as const;
  return options
    .map(([u, w]) => [u, w, distance(at(s.from, s.to, u), at(o.from, o.to, w))] as const)
    .reduce((best, next) => (next[2] < best[2] ? next : best));
};

const boxGap = (a: Box, b: Box): number =>
  Math.hypot(Math.max(0, a.x0 - b.x1, b.x0 - a.x1), Math.max(0, a.y0 - b.y1, b.y0 - a.y1));

/** Narrows in on the least distance between two stretches, both halved until their sag cannot matter. */
const search = (first: Stretch, second: Stretch, best: PointPair, accuracy: number): PointPair => {
  const stack: (readonly [Stretch, Stretch])[] = [[first, second]];
  let least = best;
  for (let pair = stack.pop(); pair !== undefined; pair = stack.pop()) {
    const [s, o] = pair;
    const [u, w, chords] = nearestOnChords(s, o);
    if (chords - s.sag - o.sag >= least.distance - accuracy) continue;
    const p = segmentPoint(s.placed.segment, s.placed.from, s.a + u * (s.b - s.a));
    const q = segmentPoint(o.placed.segment, o.placed.from, o.a + w * (o.b - o.a));
    const here = distance(p, q);
    if (here < least.distance) least = { distance: here, first: p, second: q };
    if (s.sag + o.sag <= accuracy / 2) continue;
    if (s.sag >= o.sag) for (const half of halves(s)) stack.push([half, o]);
    else for (const half of halves(o)) stack.push([s, half]);
  }
  return least;
};

const isLineOrArc = ({ segment }: PlacedSegment): boolean =>
  segment.kind === 'line' || (segment.kind === 'arc' && isCircular(segment));

/**
 * The least distance between two paths as pen strokes (what lies within them does not count), and where it is; exact between
 * straight runs and circular arcs, else never below the true one and above it by at most `accuracy` mm. Pairs of segments are tried from
 * the nearest boxes on, so that far ones cost a comparison only.
 */
export const pathDistance = (one: Path, other: Path, accuracy = 1e-6): PointPair => {
  const boxed = (path: Path) => explicitSegments(path).map((placed) => ({ placed, box: segmentBounds(placed.segment, placed.from) }));
  const others = boxed(other);
  const pairs = boxed(one)
    .flatMap((a) => others.map((b) => ({ a, b, gap: boxGap(a.box, b.box) })))
    .sort((p, q) => p.gap - q.gap);
  let least: PointPair = { distance: distance(one.start, other.start), first: one.start, second: other.start };
  for (const { a, b, gap } of pairs) {
    if (gap >= least.distance) break;
    if (isLineOrArc(a.placed) && isLineOrArc(b.placed)) {
      const here = lineArcDistance(a.placed, b.placed);
      if (here.distance < least.distance) least = here;
    } else {
      least = search(stretchOf(a.placed, 0, 1), stretchOf(b.placed, 0, 1), least, accuracy);
    }
  }
  return least;
};
