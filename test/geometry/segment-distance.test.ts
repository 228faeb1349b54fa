import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentDistance } from '../../src/geometry/segment-distance.js';
import { add3, between3, cross3, distance3, dot3, length3, scale3, unit3, vector3, type Vector3 } from '../../src/geometry/vector3.js';
import { lineInRound, skinBeside, webBetween } from '../../src/geometry/web.js';
import { near } from './near.js';

const coordinate = fc.integer({ min: -50000, max: 50000 }).map((n) => n / 1000);
const anyVector: fc.Arbitrary<Vector3> = fc.record({ x: coordinate, y: coordinate, z: coordinate });

describe('segmentDistance', () => {
  it('of crossing, skew, parallel, end-on and one-point runs', () => {
    const x = { a: vector3(-5, 0, 0), b: vector3(5, 0, 0) };
    expect(segmentDistance(x, { a: vector3(0, -5, 3), b: vector3(0, 5, 3) }).distance).toBe(3);
    expect(segmentDistance(x, { a: vector3(-9, 4, 0), b: vector3(9, 4, 0) }).distance).toBe(4);
    expect(segmentDistance(x, { a: vector3(8, 0, 4), b: vector3(20, 0, 4) }).distance).toBe(5);
    expect(segmentDistance(x, { a: vector3(1, 2, 0), b: vector3(1, 2, 0) }).distance).toBe(2);
    expect(segmentDistance(x, x).distance).toBe(0);
  });
  it('is no more than that of any two points, nearly parallel runs among them, and is reached', () => {
    fc.assert(fc.property(anyVector, anyVector, anyVector, anyVector, fc.constantFrom(1, 1e-3, 1e-9), (a, b, c, d, spread) => {
      const one = { a, b };
      const other = { a: c, b: add3(add3(c, add3(b, scale3(a, -1))), scale3(d, spread)) };
      const { distance, first, second } = segmentDistance(one, other);
      near(distance3(first, second), distance, 1e-12);
      for (let i = 0; i <= 10; i += 1) for (let j = 0; j <= 10; j += 1) {
        expect(distance).toBeLessThanOrEqual(distance3(between3(a, b, i / 10), between3(other.a, other.b, j / 10)) + 1e-9);
      }
      near(segmentDistance(other, one).distance, distance, 1e-9);
    }), { numRuns: 200 });
  });
});

describe('vector3', () => {
  it('crosses square to both', () => {
    fc.assert(fc.property(anyVector, anyVector, (a, b) => {
      const c = cross3(a, b);
      near(dot3(c, a), 0, 1e-8);
      near(dot3(c, b), 0, 1e-8);
      if (length3(c) > 1) near(length3(unit3(c)), 1, 1e-12);
    }));
  });
  it('has no direction without length', () => expect(() => unit3(vector3(0, 0, 0))).toThrow(RangeError));
});

describe('webs and skins', () => {
  it('are the axes’ distance less the radii', () => {
    const one = { axis: { a: vector3(-20, 0, 0), b: vector3(20, 0, 0) }, diameter: 10 };
    const other = { axis: { a: vector3(0, -20, 14), b: vector3(0, 20, 14) }, diameter: 12 };
    expect(webBetween(one, other)).toBe(3);
    expect(skinBeside({ radius: 16, offset: -4, bit: 10 })).toBe(7);
  });
  it('clip an axis to its round', () => {
    const run = lineInRound(vector3(3, 0, 7), vector3(0, 2, 1), 5)!;
    near(Math.hypot(run.a.x, run.a.y), 5, 1e-12);
    near(Math.hypot(run.b.x, run.b.y), 5, 1e-12);
    near(run.b.z - run.a.z, 4, 1e-12);
    // Any line: both ends on the line and on the round, its middle nearest to the axis.
    const figure = fc.double({ min: -9, max: 9, noNaN: true });
    fc.assert(fc.property(figure, figure, figure, figure, figure, figure, (x, y, z, p, q, r) => {
      fc.pre(Math.hypot(p, q) > 0.01);
      const found = lineInRound(vector3(x, y, z), vector3(p, q, r), 8);
      const away = Math.abs(x * q - y * p) / Math.hypot(p, q);
      fc.pre(Math.abs(away - 8) > 1e-6);
      expect(found === undefined).toBe(away > 8);
      if (found === undefined) return;
      for (const end of [found.a, found.b]) {
        expect(Math.hypot(end.x, end.y)).toBeCloseTo(8, 6);
        const t = ((end.x - x) * p + (end.y - y) * q) / (p * p + q * q);
        for (const [value, wanted] of [[end.x, x + t * p], [end.y, y + t * q], [end.z, z + t * r]] as const) expect(value).toBeCloseTo(wanted, 5);
      }
      expect(Math.hypot((found.a.x + found.b.x) / 2, (found.a.y + found.b.y) / 2)).toBeCloseTo(away, 5);
    }));
    expect(lineInRound(vector3(6, 0, 0), vector3(0, 1, 0), 5)).toBeUndefined();
    expect(lineInRound(vector3(1, 0, 0), vector3(0, 0, 1), 5)).toBeUndefined();
  });
});
