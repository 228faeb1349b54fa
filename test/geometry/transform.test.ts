import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../src/geometry/point.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import { after, rotation, scaling, transformPath, transformPoint, translation, type Transform } from '../../src/geometry/transform.js';
import { anyPath, anyPoint } from './arbitrary.js';
import { near, nearPoint } from './near.js';

const figure = fc.double({ min: -9, max: 9, noNaN: true });
const anyMap: fc.Arbitrary<Transform> = fc.record({ a: figure, b: figure, c: figure, d: figure, e: figure, f: figure });

describe('maps of the plane', () => {
  it('one after the other do what each does in turn, whatever they are', () => {
    fc.assert(fc.property(anyMap, anyMap, anyPoint, (first, second, p) => nearPoint(transformPoint(after(first, second), p), transformPoint(second, transformPoint(first, p)), 1e-9)));
  });
  it('carry a path point by point', () => {
    fc.assert(fc.property(anyMap, anyPath, (map, path) => {
      const [before, moved] = [explicitSegments({ ...path, closed: false }), explicitSegments({ ...transformPath(map, path), closed: false })];
      before.forEach(({ segment, from }, i) => {
        for (const t of [0, 0.3, 0.5, 1]) nearPoint(segmentPoint(moved[i]!.segment, moved[i]!.from, t), transformPoint(map, segmentPoint(segment, from, t)), 1e-8);
      });
    }), { numRuns: 60 });
  });
  it('turn from +x towards +y, quarters exactly', () => {
    nearPoint(transformPoint(rotation(0.3), point(5, 0)), point(5 * Math.cos(0.3), 5 * Math.sin(0.3)), 1e-12);
    for (let quarter = -9; quarter <= 9; quarter++) {
      const turned = transformPoint(rotation(quarter * (Math.PI / 2)), point(7, 3));
      expect([turned.x, turned.y]).toEqual([[7, 3], [-3, 7], [-7, -3], [3, -7]][((quarter % 4) + 4) % 4]);
    }
    for (const off of [1e-9, -1e-9]) near(transformPoint(rotation(Math.PI / 2 + off), point(7, 0)).x, -7 * off, 1e-14);
  });
  it('move and scale', () => {
    expect(transformPoint(translation(2, -3), point(1, 1))).toEqual(point(3, -2));
    expect(transformPoint(scaling(2, -3), point(1, 1))).toEqual(point(2, -3));
  });
});
