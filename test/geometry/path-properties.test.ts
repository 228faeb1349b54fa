import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../src/geometry/bounds.js';
import { boxContains, boxOf, growBox } from '../../src/geometry/box.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import { pathLength, segmentLength } from '../../src/geometry/length.js';
import { pathArea } from '../../src/geometry/path-area.js';
import { pathEnd, type Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { reversePath } from '../../src/geometry/reverse-path.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { splitSegment } from '../../src/geometry/split-segment.js';
import { after, rotation, scaling, transformPath, transformPoint, translation } from '../../src/geometry/transform.js';
import { endOf } from '../../src/geometry/path.js';
import { isEmptyBox } from './empty-box.js';
import { anyPath } from './arbitrary.js';
import { near, nearPoint } from './near.js';

const samples = (path: Path, count: number): Point[] =>
  explicitSegments(path).flatMap(({ segment, from }) => Array.from({ length: count + 1 }, (_, i) => segmentPoint(segment, from, i / count)));

describe('pathBounds', () => {
  it('holds every sample and no more than dense samples reach', () => {
    fc.assert(fc.property(anyPath, (path) => {
      const bounds = pathBounds({ ...path, closed: false });
      const reached = boxOf(samples({ ...path, closed: false }, 400));
      expect(isEmptyBox(bounds)).toBe(false);
      expect(boxContains(growBox(bounds, 1e-9), reached)).toBe(true);
      // 400 samples miss an extreme by at most an eighth of the second derivative ÷ 400²: below 0.01 mm at these sizes.
      expect(boxContains(growBox(reached, 0.01), bounds)).toBe(true);
    }), { numRuns: 200 });
  });
});

describe('transformPath', () => {
  it('keeps lengths under turns and shifts, and scales areas', () => {
    fc.assert(fc.property(anyPath, fc.double({ min: -7, max: 7, noNaN: true }), (path, angle) => {
      const length = pathLength(path);
      near(pathLength(transformPath(after(rotation(angle), translation(5, -9)), path)), length, 1e-9 * (1 + length));
      const area = pathArea(path);
      near(pathArea(transformPath(scaling(2, -0.5), path)), -area, 1e-9 * (1 + length * length));
    }), { numRuns: 100 });
  });
  it('maps every point as transformPoint does, apart in x and y, arcs kept', () => {
    fc.assert(fc.property(anyPath, (path) => {
      const map = after(after(scaling(0.98, 1.02), rotation(0.7)), translation(3, 4));
      const moved = transformPath(map, path);
      expect(moved.segments.map((s) => s.kind)).toEqual(path.segments.map((s) => s.kind));
      const [was, is] = [samples(path, 7), samples(moved, 7)];
      was.forEach((p, i) => nearPoint(is[i]!, transformPoint(map, p), 1e-10));
    }), { numRuns: 100 });
  });
});

describe('splitSegment', () => {
  it('parts a segment into two that trace it', () => {
    fc.assert(fc.property(anyPath, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (path, t) => {
      for (const { segment, from } of explicitSegments(path)) {
        const [head, tail] = splitSegment(segment, from, t);
        const joint = endOf(head);
        nearPoint(joint, segmentPoint(segment, from, t), 1e-11);
        nearPoint(segmentPoint(head, from, 0.3), segmentPoint(segment, from, 0.3 * t), 1e-10);
        nearPoint(segmentPoint(tail, joint, 0.3), segmentPoint(segment, from, t + 0.3 * (1 - t)), 1e-10);
        const whole = segmentLength(segment, from);
        near(segmentLength(head, from) + segmentLength(tail, joint), whole, 1e-9 * (1 + whole));
      }
    }), { numRuns: 100 });
  });
});

describe('reversePath', () => {
  it('swaps the ends, keeps the length and turns the area about', () => {
    fc.assert(fc.property(anyPath, (path) => {
      const back = reversePath(path);
      if (!path.closed) { nearPoint(back.start, pathEnd(path), 0); nearPoint(pathEnd(back), path.start, 1e-9); }
      const length = pathLength(path);
      near(pathLength(back), length, 1e-9 * (1 + length));
      near(pathArea(back), -pathArea(path), 1e-9 * (1 + length * length));
    }), { numRuns: 100 });
  });
});
