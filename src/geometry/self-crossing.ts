import { cross, subtract, type Point } from './point.js';

/** Where two straight runs cross within both, their ends left out; undefined where they do not. Exact to rounding. */
const crossing = (a: Point, b: Point, c: Point, d: Point): Point | undefined => {
  const [ab, cd] = [subtract(b, a), subtract(d, c)];
  const [toC, toD] = [cross(ab, subtract(c, a)), cross(ab, subtract(d, a))];
  const [toA, toB] = [cross(cd, subtract(a, c)), cross(cd, subtract(b, c))];
  if (!(toC * toD < 0 && toA * toB < 0)) return undefined;
  const t = toA / (toA - toB);
  return { x: a.x + ab.x * t, y: a.y + ab.y * t };
};

/**
 * A place where the closed polygon through some corners crosses itself; undefined where it does not. What only touches, be it along a
 * run, does not cross. The first found, from the left; the work grows with the sides and those that lie over each other from left to right.
 */
export const selfCrossing = (corners: readonly Point[]): Point | undefined => {
  const sides = corners.map((a, i) => ({ a, b: corners[(i + 1) % corners.length]! })).map(({ a, b }) => ({
    a, b, x0: Math.min(a.x, b.x), x1: Math.max(a.x, b.x), y0: Math.min(a.y, b.y), y1: Math.max(a.y, b.y),
  })).sort((p, q) => p.x0 - q.x0);
  for (const [i, one] of sides.entries()) {
    for (let j = i + 1; j < sides.length && sides[j]!.x0 <= one.x1; j += 1) {
      const other = sides[j]!;
      if (other.y0 > one.y1 || other.y1 < one.y0) continue;
      const at = crossing(one.a, one.b, other.a, other.b);
      if (at !== undefined) return at;
    }
  }
  return undefined;
};
