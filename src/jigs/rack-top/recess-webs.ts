import { boxesMeet, growBox } from '../../geometry/box.js';
import { flattenPath } from '../../geometry/flatten-path.js';
import { between, cross as crossProduct, distance, dot, point, subtract, type Point } from '../../geometry/point.js';
import { pointInPath } from '../../geometry/point-in-path.js';
import { capsule, gapBetween, hullOf, type Convex } from './convex.js';
import type { Recess } from './recess.js';
import { recessBounds } from './solve-recesses.js';

/** Chords along an outline for measuring webs keep within this of it, mm. */
const measuring = 0.01;

/** A recess's box as a region: nothing of the recess is nearer. */
const frameOf = (recess: Recess): Convex => {
  const { x0, y0, x1, y1 } = recessBounds(recess);
  return hullOf([point(x0, y0), point(x1, y0), point(x1, y1), point(x0, y1)]);
};

/**
 * Wood between a recess and a region that holds `inside`, seen from above; Infinity where the recess's box alone is as far off as `reach`. To
 * 0.01 mm. Where they meet, less than 0: as far as one of them must move to clear the other, by the recess's hull.
 */
export const woodToRecess = (recess: Recess, region: Convex, inside: Point, reach: number): number => {
  if (gapBetween(frameOf(recess), region) >= reach) return Infinity;
  const corners = flattenPath(recess.outline, measuring);
  const gap = corners.reduce((least, p, i) => Math.min(least, gapBetween(region, capsule(p, corners[(i + 1) % corners.length]!, 0))), Infinity);
  return gap <= 0 || pointInPath(recess.outline, inside) ? gapBetween(hullOf(corners), region) : gap;
};

type Chord = readonly [Point, Point];

/** Where an outline stands still (two equal points, a side that its corners use up) there is no chord. */
const chordsOf = (corners: readonly Point[]): readonly Chord[] =>
  corners.map((p, i): Chord => [p, corners[(i + 1) % corners.length]!]).filter(([p, q]) => distance(p, q) > 0);

/** Whether two chords cross: each has its ends on both sides of the other. */
const cross = ([a, b]: Chord, [c, d]: Chord): boolean => {
  const side = (from: Point, to: Point, p: Point): number => Math.sign(crossProduct(subtract(to, from), subtract(p, from)));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
};

const toChord = (p: Point, [a, b]: Chord): number => {
  const along = subtract(b, a);
  const t = dot(subtract(p, a), along) / dot(along, along);
  return distance(p, between(a, b, Math.min(1, Math.max(0, t))));
};

/** Wood between two recesses seen from above, to 0.02 mm; Infinity where their boxes are farther apart than `reach`. Where they overlap, less than 0: as far as their hulls must move apart. */
export const woodBetweenRecesses = (a: Recess, b: Recess, reach: number): number => {
  if (!boxesMeet(growBox(recessBounds(a), reach), recessBounds(b))) return Infinity;
  const [of, against] = [flattenPath(a.outline, measuring), flattenPath(b.outline, measuring)];
  const [ours, theirs] = [chordsOf(of), chordsOf(against)];
  const isInside = pointInPath(b.outline, of[0]!) || pointInPath(a.outline, against[0]!);
  if (isInside || ours.some((one) => theirs.some((other) => cross(one, other)))) return gapBetween(hullOf(of), hullOf(against));
  const least = (points: readonly Point[], chords: readonly Chord[]): number =>
    points.reduce((near, p) => chords.reduce((nearer, chord) => Math.min(nearer, toChord(p, chord)), near), Infinity);
  return Math.min(least(of, theirs), least(against, ours));
};
