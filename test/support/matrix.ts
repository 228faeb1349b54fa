import type { Point } from '../../src/geometry/point.js';

/** An affine map as a PDF writes it: x' = a·x + c·y + e, y' = b·x + d·y + f. Written anew for the readers, not the code under test. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** The map that does `inner`, then `outer`. */
export const compose = (inner: Matrix, outer: Matrix): Matrix => {
  const [a, b, c, d, e, f] = inner;
  const [p, q, r, s, t, u] = outer;
  return [a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, e * p + f * r + t, e * q + f * s + u];
};

export const apply = ([a, b, c, d, e, f]: Matrix, x: number, y: number): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });
