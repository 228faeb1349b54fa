import { GeometryError } from '../errors/geometry-error.js';
import { carrierCrossings } from './carrier-crossings.js';
import { explicitSegments, type PlacedSegment } from './explicit-segments.js';
import { carrierOf, meetAgain, trimTo } from './line-or-arc.js';
import { pathArea } from './path-area.js';
import { type Arc, endOf, type Path, type Segment } from './path.js';
import { cross, distance, dot, type Point } from './point.js';
import { segmentSlope } from './segment-point.js';

/** Ends nearer than this, mm, are one. */
const SAME = 1e-7;

const unit = (d: Point): Point => ({ x: d.x / Math.hypot(d.x, d.y), y: d.y / Math.hypot(d.x, d.y) });

/** One segment moved by `by` to the left of its travel as a mathematician sees it, (y, −x); undefined where an arc shrinks to its centre. */
const moved = ({ segment, from }: PlacedSegment, by: number): PlacedSegment | undefined => {
  const shift = (p: Point, d: Point): Point => ({ x: p.x + d.y * by, y: p.y - d.x * by });
  const along = unit(segmentSlope(segment, from, 0));
  if (segment.kind !== 'arc') return { from: shift(from, along), segment: { kind: 'line', to: shift(endOf(segment), along) } };
  const radius = Math.hypot(segment.u.x, segment.u.y);
  const outwards = Math.sign(cross(segment.u, segment.v) * (segment.t1 - segment.t0));
  const left = radius + outwards * by;
  if (Math.abs(left) < SAME) return undefined;
  if (left < 0) throw new GeometryError('bend-tighter-than-offset', 'A bend of the outline is tighter than the offset.', { radius, offset: Math.abs(by) });
  const k = left / radius;
  const arc: Arc = { ...segment, u: { x: segment.u.x * k, y: segment.u.y * k }, v: { x: segment.v.x * k, y: segment.v.y * k } };
  return { from: shift(from, along), segment: arc };
};

/** The arc about a corner that fills the gap between two moved segments. */
const cornerArc = (corner: Point, from: Point, to: Point): Arc => {
  const u = { x: from.x - corner.x, y: from.y - corner.y };
  const w = { x: to.x - corner.x, y: to.y - corner.y };
  return { kind: 'arc', centre: corner, u, v: { x: -u.y, y: u.x }, t0: 0, t1: Math.atan2(cross(u, w), dot(u, w)) };
};

interface Moved {
  readonly placed: PlacedSegment;
  /** The outline's own point where the segment ended. */
  readonly corner: Point;
  /** Whether the joint after it opens (an arc fills it) or closes (both are trimmed). */
  readonly opens: boolean;
}

const moveAll = (path: Path, by: number): readonly Moved[] => {
  const placed = explicitSegments(path).filter(({ segment, from }) => segment.kind === 'arc' || distance(from, segment.to) > SAME);
  const kept = placed.flatMap((each) => {
    const segment = moved(each, by);
    return segment === undefined ? [] : [{ each, segment }];
  });
  return kept.map(({ each, segment }, i) => {
    const next = kept[(i + 1) % kept.length]!.each;
    const turn = cross(unit(segmentSlope(each.segment, each.from, 1)), unit(segmentSlope(next.segment, next.from, 0)));
    return { placed: segment, corner: endOf(each.segment), opens: turn * by > 0 };
  });
};

/** Where two moved segments that overlap at a closing joint cross; the crossing nearest to the corner. */
const meeting = (one: PlacedSegment, other: PlacedSegment, corner: Point, by: number): Point => {
  const all = carrierCrossings(carrierOf(one), carrierOf(other));
  const [first, ...rest] = all;
  if (first === undefined) throw new GeometryError('offset-closes-up', 'The offset outline closes up on itself.', { offset: by });
  return rest.reduce((near, p) => (distance(p, corner) < distance(near, corner) ? p : near), first);
};

/** Trims closing joints and fills opening ones. */
const joinAll = (all: readonly Moved[], by: number): readonly PlacedSegment[] => {
  const joints = all.map(({ placed, corner, opens }, i) => {
    const next = all[(i + 1) % all.length]!.placed;
    const end = endOf(placed.segment);
    if (distance(end, next.from) < SAME) return { end, begin: next.from, arc: undefined };
    if (opens) return { end, begin: next.from, arc: cornerArc(corner, end, next.from) };
    const at = meeting(placed, next, corner, by);
    return { end: at, begin: at, arc: undefined };
  });
  return all.flatMap(({ placed }, i) => {
    const { end, arc } = joints[i]!;
    const begin = joints[(i + all.length - 1) % all.length]!.begin;
    const trimmed = trimTo(placed, begin, end);
    if (trimmed === undefined) throw new GeometryError('offset-closes-up', 'The offset outline closes up on itself.', { offset: by });
    return [trimmed, ...(arc === undefined ? [] : [{ from: end, segment: arc }])];
  });
};

const asPath = (placed: readonly PlacedSegment[]): Path => ({
  start: placed[0]?.from ?? { x: 0, y: 0 },
  segments: placed.map(({ segment }): Segment => segment),
  closed: true,
});

/** The exact parallel of a closed outline of straight runs and circular arcs; see `offsetPath`. */
export const offsetArcOutline = (path: Path, by: number): Path => {
  if (!path.closed) throw new GeometryError('outline-open', 'Only a closed outline can be offset.', { offset: by });
  if (by === 0) return path;
  // (y, −x) of the travel points out of an outline whose signed area is positive.
  const outwards = pathArea(path) > 0 ? by : -by;
  const joined = joinAll(moveAll(path, outwards), by);
  const [first] = joined;
  if (first === undefined || Math.sign(pathArea(path)) !== Math.sign(pathArea(asPath(joined))) || meetAgain(joined)) {
    throw new GeometryError('offset-closes-up', 'The offset outline closes up on itself.', { offset: by });
  }
  return asPath(joined);
};
