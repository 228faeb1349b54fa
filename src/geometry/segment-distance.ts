import { between3, distance3, dot3, subtract3, type Vector3 } from './vector3.js';

/** A straight run in space from `a` to `b`, mm; the two may be one point. */
export interface Segment3 {
  readonly a: Vector3;
  readonly b: Vector3;
}

/** Where two runs come nearest: their distance, and the nearest point of each. */
export interface Nearest3 {
  readonly distance: number;
  readonly first: Vector3;
  readonly second: Vector3;
}

const unitClamp = (t: number): number => Math.min(1, Math.max(0, t));

/** The part 0…1 of the run nearest to a point. */
const along = ({ a, b }: Segment3, p: Vector3): number => {
  const d = subtract3(b, a);
  const square = dot3(d, d);
  return square > 0 ? unitClamp(dot3(subtract3(p, a), d) / square) : 0;
};

/** Parts of both runs where the lines' common normal stands, when it stands within both; none when they run parallel. */
const commonNormal = (first: Segment3, second: Segment3): readonly [number, number] | undefined => {
  const u = subtract3(first.b, first.a);
  const v = subtract3(second.b, second.a);
  const w = subtract3(first.a, second.a);
  const [uu, uv, vv, uw, vw] = [dot3(u, u), dot3(u, v), dot3(v, v), dot3(u, w), dot3(v, w)];
  const determinant = uu * vv - uv * uv;
  if (!(determinant > 1e-24 * uu * vv)) return undefined;
  const s = (uv * vw - vv * uw) / determinant;
  const t = (uu * vw - uv * uw) / determinant;
  return s >= 0 && s <= 1 && t >= 0 && t <= 1 ? [s, t] : undefined;
};

/**
 * The least distance between two straight runs in space and where it is; exact to rounding. The four ends against the
 * other run are always tried, so that parallel and nearly parallel runs need no case of their own.
 */
export const segmentDistance = (first: Segment3, second: Segment3): Nearest3 => {
  const inner = commonNormal(first, second);
  const pairs: (readonly [number, number])[] = [
    [0, along(second, first.a)], [1, along(second, first.b)], [along(first, second.a), 0], [along(first, second.b), 1],
    ...(inner === undefined ? [] : [inner]),
  ];
  return pairs
    .map(([s, t]) => ({ first: between3(first.a, first.b, s), second: between3(second.a, second.b, t) }))
    .map((pair) => ({ ...pair, distance: distance3(pair.first, pair.second) }))
    .reduce((best, pair) => (pair.distance < best.distance ? pair : best));
};
