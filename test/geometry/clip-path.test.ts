import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../src/geometry/bounds.js';
import { type Box, boxContains, growBox } from '../../src/geometry/box.js';
import { clipPath, pathClipper } from '../../src/geometry/clip-path.js';
import { pathLength } from '../../src/geometry/length.js';
import { pathEnd } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { circle, line, polyline, rectangle } from '../../src/geometry/shapes.js';
import { anyPath } from './arbitrary.js';
import { near, nearPoint } from './near.js';

const box: Box = { x0: 0, y0: 0, x1: 10, y1: 10 };

describe('clipPath', () => {
  it('parts a line where it crosses, with the length gone before as its phase', () => {
    const [only, ...rest] = clipPath(line(point(-5, 5), point(20, 5)), box);
    expect(rest).toEqual([]);
    near(only!.phase, 5, 1e-12);
    nearPoint(only!.path.start, point(0, 5), 1e-12);
    nearPoint(pathEnd(only!.path), point(10, 5), 1e-12);
  });

  it('gives nothing for a path outside, one that only touches, and one past a corner', () => {
    expect(clipPath(line(point(-5, 11), point(20, 11)), box)).toEqual([]);
    expect(clipPath(circle(point(5, 15), 5), box)).toEqual([]);
    expect(clipPath(polyline([point(4, -4), point(5, 0), point(6, -4)]), box)).toEqual([]);
    expect(clipPath(line(point(-1, 1), point(1, -1)), box)).toEqual([]);
  });

  it('keeps a run along the border', () => {
    const [only] = clipPath(line(point(-5, 10), point(20, 10)), box);
    expect(pathLength(only!.path)).toBe(10);
  });

  it('gives a closed path wholly inside back as it is', () => {
    const round = circle(point(5, 5), 5);
    expect(clipPath(round, box)).toEqual([{ path: round, phase: 0 }]);
    expect(clipPath(rectangle(0, 0, 10, 10), box)).toEqual([{ path: rectangle(0, 0, 10, 10), phase: 0 }]);
  });

  it('joins a part that runs through the start of a closed path', () => {
    const pieces = clipPath(rectangle(5, 5, 20, 20), box);
    expect(pieces).toHaveLength(1);
    const { path, phase } = pieces[0]!;
    nearPoint(path.start, point(5, 10), 1e-12);
    nearPoint(pathEnd(path), point(10, 5), 1e-12);
    near(phase, 75, 1e-12);
  });

  it('does not join the last part to a first that begins elsewhere, though both begin at a corner on the border', () => {
    const corners = [point(10, 5), point(15, 6), point(10, 8), point(5, 8), point(5, 12), point(2, 12), point(2, 5)];
    const parts = clipPath(polyline(corners, true), box);
    expect(parts.map(({ path }) => [path.start, pathEnd(path)])).toEqual([[point(10, 8), point(5, 10)], [point(2, 10), point(10, 5)]]);
  });

  it('does not join a part that ends at a corner on the border and then leaves to the one that begins at the start', () => {
    const corners = [point(10, 5), point(5, 5), point(5, 12), point(-3, 12), point(-3, 2), point(10, 2), point(15, 2), point(15, 5)];
    const parts = clipPath(polyline(corners, true), box);
    expect(parts.map(({ path }) => [path.start, pathEnd(path)])).toEqual([[point(10, 5), point(5, 10)], [point(0, 2), point(10, 2)]]);
  });

  it('of nothing, or of a start alone, is nothing', () => expect(clipPath({ start: point(5, 5), segments: [], closed: false }, box)).toEqual([]));

  it('keeps a closed path closed when only its start lies on the border', () => {
    expect(clipPath(rectangle(10, 2, -4, 4), box)).toEqual([{ path: rectangle(10, 2, -4, 4), phase: 0 }]);
  });

  it('parts a cubic to 1e-9 mm', () => {
    const cubic = { start: point(-3, 2), closed: false, segments: [{ kind: 'cubic', c1: point(60, 1), c2: point(-50, 9), to: point(13, 8) }] } as const;
    const pieces = clipPath(cubic, box);
    expect(pieces.length).toBeGreaterThan(1);
    for (const { path } of pieces) for (const p of [path.start, pathEnd(path)]) near(Math.min(Math.abs(p.x), Math.abs(p.x - 10)), 0, 1e-9);
  });

  it('gives parts that lie in their boxes and add up to the whole over a grid', () => {
    const cells: Box[] = [-1000, -23, 1, 40, 1000].flatMap((x0, i, xs) => (i === 4 ? [] : [-1000, -11, 17, 1000].flatMap((y0, j, ys) =>
      (j === 3 ? [] : [{ x0, y0, x1: xs[i + 1]!, y1: ys[j + 1]! }]))));
    fc.assert(fc.property(anyPath, (path) => {
      const whole = pathLength(path);
      const clip = pathClipper(path);
      let sum = 0;
      for (const cell of cells) {
        for (const piece of clip(cell)) {
          sum += pathLength(piece.path);
          expect(boxContains(growBox(cell, 1e-8), pathBounds(piece.path))).toBe(true);
          expect(piece.phase).toBeGreaterThanOrEqual(0);
          expect(piece.phase).toBeLessThanOrEqual(whole + 1e-9);
        }
      }
      near(sum, whole, 1e-7);
    }), { numRuns: 200 });
  });

  it('gives phases at which the pieces of an open path follow on from each other', () => {
    fc.assert(fc.property(anyPath, (path) => {
      const halves = [{ x0: -1000, y0: -1000, x1: 3, y1: 1000 }, { x0: 3, y0: -1000, x1: 1000, y1: 1000 }];
      const pieces = halves.flatMap((half) => clipPath({ ...path, closed: false }, half)).sort((a, b) => a.phase - b.phase);
      let at = 0;
      for (const { path: piece, phase } of pieces) {
        near(phase, at, 1e-7);
        at += pathLength(piece);
      }
    }), { numRuns: 100 });
  });
});
