import { describe, expect, it } from 'vitest';
import { pathArea } from '../../src/geometry/path-area.js';
import { endOf } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { circle, polyline, rectangle } from '../../src/geometry/shapes.js';
import { clipFilled } from '../../src/sheets/clip-filled.js';

const area = (paths: ReturnType<typeof clipFilled>): number => paths.reduce((sum, p) => sum + Math.abs(pathArea(p)), 0);

describe('clipFilled', () => {
  it('keeps half of an arrowhead cut through its middle', () => {
    const head = polyline([point(0, 0), point(-1, 4), point(1, 4)], true);
    expect(area(clipFilled(head, { x0: 0, y0: -10, x1: 10, y1: 10 }))).toBeCloseTo(2, 12);
  });

  it('parts a block without loss along any line', () => {
    const block = rectangle(0, 0, 10, 3);
    for (const at of [0.1, 2.5, 9.99]) {
      const [left, right] = [clipFilled(block, { x0: -1, y0: -1, x1: at, y1: 9 }), clipFilled(block, { x0: at, y0: -1, x1: 99, y1: 9 })];
      expect(area(left) + area(right)).toBeCloseTo(30, 12);
    }
  });

  it('keeps on each side what lies there, away from the origin too', () => {
    const block = rectangle(20, 30, 10, 8);
    const around = { x0: 0, y0: 0, x1: 99, y1: 99 };
    for (const [box, kept] of [[{ ...around, x0: 23 }, 56], [{ ...around, x1: 23 }, 24], [{ ...around, y0: 33 }, 50], [{ ...around, y1: 33 }, 30], [{ x0: 22, y0: 31, x1: 25, y1: 33 }, 6]] as const) {
      const parts = clipFilled(block, box);
      expect(area(parts)).toBeCloseTo(kept, 9);
      for (const p of parts.flatMap(({ start, segments }) => [start, ...segments.map(endOf)])) expect(p.x >= box.x0 && p.x <= box.x1 && p.y >= box.y0 && p.y <= box.y1).toBe(true);
    }
  });

  it('keeps a quarter of a disc within a thousandth', () => {
    expect(area(clipFilled(circle(point(0, 0), 1), { x0: 0, y0: 0, x1: 2, y1: 2 })) / (Math.PI / 4)).toBeCloseTo(1, 2);
  });

  it('keeps nothing of what lies outside', () => {
    expect(clipFilled(rectangle(0, 0, 1, 1), { x0: 5, y0: 5, x1: 6, y1: 6 })).toEqual([]);
  });
});
