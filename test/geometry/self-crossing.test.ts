import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point, type Point } from '../../src/geometry/point.js';
import { selfCrossing } from '../../src/geometry/self-crossing.js';
import { nearPoint } from './near.js';

const at = (...coordinates: readonly number[]): Point[] => Array.from({ length: coordinates.length / 2 }, (_, i) => point(coordinates[2 * i]!, coordinates[2 * i + 1]!));

describe('selfCrossing', () => {
  it('of a figure of eight is its middle, of a star one of its five inner corners', () => {
    nearPoint(selfCrossing(at(0, 0, 10, 6, 10, 0, 0, 6))!, point(5, 3), 1e-12);
    const star = Array.from({ length: 5 }, (_, i) => point(10 * Math.sin((4 * Math.PI * i) / 5), -10 * Math.cos((4 * Math.PI * i) / 5)));
    const { x, y } = selfCrossing(star)!;
    // The inner pentagon’s circle: 10·cos 72° ÷ cos 36°.
    expect(Math.hypot(x, y)).toBeCloseTo((10 * Math.cos((2 * Math.PI) / 5)) / Math.cos(Math.PI / 5), 9);
  });

  it('is none of what goes round once, turns back upon itself or touches itself', () => {
    for (const corners of [at(0, 0, 10, 0, 10, 5, 0, 5), at(0, 0, 10, 0, 10, 5, 5, 0, 0, 5), at(0, 0, 10, 0, 20, 0, 10, 0, 10, 5), at(0, 0, 5, 5, 10, 0, 10, 10, 5, 5, 0, 10), at(0, 0, 5, 5), []]) {
      expect(selfCrossing(corners)).toBeUndefined();
    }
  });

  it('is found wherever any two sides cross, by trying all pairs, and lies on both', () => {
    const corner = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 })).map(([x, y]) => point(x, y));
    fc.assert(fc.property(fc.array(corner, { minLength: 3, maxLength: 9 }), (corners) => {
      const sides = corners.map((a, i) => [a, corners[(i + 1) % corners.length]!] as const);
      // Which side of a run a corner lies on, in whole numbers.
      const side = ([a, b]: readonly [Point, Point], p: Point): number => Math.sign((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
      const cross = sides.some((one, i) => sides.slice(i + 1).some((other) => side(one, other[0]) * side(one, other[1]) < 0 && side(other, one[0]) * side(other, one[1]) < 0));
      const found = selfCrossing(corners);
      expect(found !== undefined).toBe(cross);
      if (found === undefined) return;
      const on = sides.filter(([a, b]) => Math.abs((b.x - a.x) * (found.y - a.y) - (b.y - a.y) * (found.x - a.x)) < 1e-6 && Math.min(a.x, b.x) - 1e-9 <= found.x && found.x <= Math.max(a.x, b.x) + 1e-9 && Math.min(a.y, b.y) - 1e-9 <= found.y && found.y <= Math.max(a.y, b.y) + 1e-9);
      expect(on.length).toBeGreaterThanOrEqual(2);
    }), { numRuns: 1000 });
  });
});
