import type { Path, Segment } from './path.js';
import type { Point } from './point.js';

/** An affine map of the plane: x' = a·x + c·y + e, y' = b·x + d·y + f (the order SVG and PDF write it in). */
export interface Transform {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Moves by (x, y). */
export const translation = (x: number, y: number): Transform => ({ a: 1, b: 0, c: 0, d: 1, e: x, f: y });

/** Scale about the origin; apart in x and y for a printer's correction. */
export const scaling = (sx: number, sy: number): Transform => ({ a: sx, b: 0, c: 0, d: sy, e: 0, f: 0 });

/** Turn about the origin by `angle` radians from +x towards +y (clockwise on the page). Quarter turns are exact. */
export const rotation = (angle: number): Transform => {
  const quarter = Math.round(angle / (Math.PI / 2));
  const exact = Math.abs(angle - quarter * (Math.PI / 2)) < 1e-15;
  const cos = exact ? [1, 0, -1, 0][((quarter % 4) + 4) % 4]! : Math.cos(angle);
  const sin = exact ? [0, 1, 0, -1][((quarter % 4) + 4) % 4]! : Math.sin(angle);
  return { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 };
};

/** The map that does `first`, then `second`. */
export const after = (first: Transform, second: Transform): Transform => ({
  a: second.a * first.a + second.c * first.b,
  b: second.b * first.a + second.d * first.b,
  c: second.a * first.c + second.c * first.d,
  d: second.b * first.c + second.d * first.d,
  e: second.a * first.e + second.c * first.f + second.e,
  f: second.b * first.e + second.d * first.f + second.f,
});

/** A point under an affine map; exact to rounding. */
export const transformPoint = (t: Transform, p: Point): Point => ({
  x: t.a * p.x + t.c * p.y + t.e,
  y: t.b * p.x + t.d * p.y + t.f,
});

const transformVector = (t: Transform, p: Point): Point => ({ x: t.a * p.x + t.c * p.y, y: t.b * p.x + t.d * p.y });

const transformSegment = (t: Transform, s: Segment): Segment => {
  switch (s.kind) {
    case 'line': return { kind: 'line', to: transformPoint(t, s.to) };
    case 'arc': return { ...s, centre: transformPoint(t, s.centre), u: transformVector(t, s.u), v: transformVector(t, s.v) };
    case 'cubic': return { kind: 'cubic', c1: transformPoint(t, s.c1), c2: transformPoint(t, s.c2), to: transformPoint(t, s.to) };
  }
};

/** The path under an affine map. Exact: arcs stay arcs, circles become ellipses where x and y scale apart. */
export const transformPath = (t: Transform, path: Path): Path => ({
  start: transformPoint(t, path.start),
  segments: path.segments.map((s) => transformSegment(t, s)),
  closed: path.closed,
});
