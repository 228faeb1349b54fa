import { describe, expect, it } from 'vitest';
import { GeometryError } from '../../src/errors/geometry-error.js';
import type { Curve } from '../../src/geometry/curve.js';
import { fitCurve } from '../../src/geometry/fit-curve.js';
import { endOf } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { deviation } from './deviation.js';
import { near, nearPoint } from './near.js';

/** Half circles of radius 10 side by side, one for each π of t: bends to a corner at every multiple of π. */
const arches: Curve = {
  point: (t) => { const k = Math.floor(t / Math.PI); const a = t - k * Math.PI; return point(20 * k + 10 - 10 * Math.cos(a), -10 * Math.sin(a)); },
  slope: (t, side) => { const at = t / Math.PI; const k = Number.isInteger(at) && side === -1 ? at - 1 : Math.floor(at); const a = t - k * Math.PI; return point(10 * Math.sin(a), -10 * Math.cos(a)); },
};
const spiral: Curve = { point: (t) => point(3 * t * Math.cos(t), 3 * t * Math.sin(t)), slope: (t) => point(3 * Math.cos(t) - 3 * t * Math.sin(t), 3 * Math.sin(t) + 3 * t * Math.cos(t)) };

describe('fitCurve', () => {
  it('parts at the breaks given, in any order, those outside left out', () => {
    const fit = (breaks: readonly number[]) => fitCurve(arches, { from: 0.5, to: 3 * Math.PI + 0.5, tolerance: 0.001, breaks });
    const path = fit([3 * Math.PI, Math.PI, -7, 2 * Math.PI, 99]);
    expect(fit([Math.PI, 2 * Math.PI, 3 * Math.PI])).toEqual(path);
    nearPoint(path.start, arches.point(0.5), 1e-12);
    nearPoint(endOf(path.segments.at(-1)!), arches.point(3 * Math.PI + 0.5), 1e-12);
    for (const corner of [20, 40, 60]) expect(path.segments.some((s) => Math.hypot(endOf(s).x - corner, endOf(s).y) < 1e-9)).toBe(true);
    // On every arch as far from its middle as the radius.
    let from = path.start;
    for (const segment of path.segments) {
      if (segment.kind !== 'cubic') throw new Error('a fit is of cubics');
      const { c1, c2, to } = segment;
      const middle = point((from.x + 3 * c1.x + 3 * c2.x + to.x) / 8, (from.y + 3 * c1.y + 3 * c2.y + to.y) / 8);
      near(Math.hypot(middle.x - 10 - 20 * Math.floor(middle.x / 20), middle.y), 10, 0.0011);
      from = to;
    }
  });

  it.each([0.1, 0.01, 1e-3, 1e-4])('keeps within %d mm, in no more pieces than the fourth-order law asks for', (tolerance) => {
    for (const [from, to] of [[1, 12], [2, 3]] as const) {
      const path = fitCurve(spiral, { from, to, tolerance });
      expect(deviation(path, spiral, { from, to })).toBeLessThanOrEqual(1.05 * tolerance);
      // Hermite pieces err by |P⁗|·h⁴ ÷ 384 square to the curve; P⁗ of the spiral is about 3t.
      const pieces = (to - from) / (384 * tolerance / (3 * to)) ** 0.25;
      expect(path.segments.length).toBeLessThanOrEqual(Math.ceil(1.6 * pieces) + 2);
    }
  });

  it('refuses a range that does not rise, a tolerance of nothing and a curve with no finite point', () => {
    for (const options of [{ from: 1, to: 1, tolerance: 1 }, { from: 2, to: 1, tolerance: 1 }, { from: 0, to: 1, tolerance: 0 }, { from: NaN, to: 1, tolerance: 1 }]) expect(() => fitCurve(spiral, options)).toThrow(GeometryError);
    const holed: Curve = { point: () => point(NaN, 0), slope: () => point(1, 0) };
    expect(() => fitCurve(holed, { from: 0, to: 1, tolerance: 0.01 })).toThrow(GeometryError);
    expect(() => fitCurve({ ...spiral, point: (t) => (t === 3 ? point(Infinity, 0) : spiral.point(t)) }, { from: 1, to: 3, tolerance: 0.01 })).toThrow(GeometryError);
  });
});
