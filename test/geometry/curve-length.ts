import type { Curve } from '../../src/geometry/curve.js';
import { integrate } from '../../src/geometry/integrate.js';

/** Length of a true curve from `from` to `to`, mm, to 1e-10 relative; parted at `breaks` (cusps, sharp bends), where it may have no one slope. */
export const curveLength = (curve: Curve, from: number, to: number, breaks: readonly number[] = []): number => {
  const inner = breaks.filter((t) => t > from && t < to).sort((a, b) => a - b);
  const speed = (t: number): number => {
    const { x, y } = curve.slope(t);
    return Math.sqrt(x * x + y * y);
  };
  return [...inner, to].reduce((sum, end, i) => sum + integrate(speed, inner[i - 1] ?? from, end), 0);
};
