import { segmentBounds } from '../../src/geometry/bounds.js';
import type { Box } from '../../src/geometry/box.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import type { Path, Segment } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';

/** A segment with its start and its box: what distances are taken to. */
export interface Target {
  readonly from: Point;
  readonly segment: Segment;
  readonly box: Box;
}

export const targetsOf = (path: Path): Target[] =>
  explicitSegments(path).map(({ from, segment }) => ({ from, segment, box: segmentBounds(segment, from) }));

/** Points along a segment, ends among them. */
export const samplesOf = ({ segment, from }: Target, count: number): Point[] =>
  Array.from({ length: count + 1 }, (_, i) => segmentPoint(segment, from, i / count));

const toLine = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length));
  return Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y);
};

const golden = 0.6180339887498949;

const narrow = (at: (t: number) => number, from: number, to: number): number => {
  let [low, high] = [from, to];
  for (let i = 0; i < 36; i++) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (at(a) < at(b)) high = b; else low = a;
  }
  return at((low + high) / 2);
};

/** Nearest of a curve: every dip among its samples narrowed by golden section, since a loop comes near twice. */
const toCurve = (p: Point, { segment, from }: Target, n: number): number => {
  const at = (t: number): number => {
    const q = segmentPoint(segment, from, t);
    return Math.hypot(q.x - p.x, q.y - p.y);
  };
  const ds = Array.from({ length: n + 1 }, (_, i) => at(i / n));
  const dips = ds.flatMap((d, i) => (d <= (ds[i - 1] ?? Infinity) && d <= (ds[i + 1] ?? Infinity) ? [i] : []));
  return Math.min(ds[0]!, ds[n]!, ...dips.map((i) => narrow(at, Math.max(0, (i - 1) / n), Math.min(1, (i + 1) / n))));
};

const passes = (p: Point, target: Target, within: number, samples: number): boolean => {
  const { box } = target;
  if (p.x < box.x0 - within || p.x > box.x1 + within || p.y < box.y0 - within || p.y > box.y1 + within) return false;
  return (target.segment.kind === 'line' ? toLine(p, target.from, target.segment.to) : toCurve(p, target, samples)) <= within;
};

/** Whether some target passes within `within` mm of a point. Close to a cusp two dips may lie between samples: looked at again more closely. */
export const isNear = (p: Point, targets: readonly Target[], within: number): boolean =>
  [24, 1500].some((samples) => targets.some((target) => passes(p, target, within, samples)));
