import { describe, expect, it } from 'vitest';
import { GeometryError } from '../../src/errors/geometry-error.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { pathLength } from '../../src/geometry/length.js';
import { minimumRadius } from '../../src/geometry/minimum-radius.js';
import { pathArea } from '../../src/geometry/path-area.js';
import { endOf } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { circle, ellipse, polyline, rectangle, roundedRectangle, slot } from '../../src/geometry/shapes.js';
import { near } from './near.js';

const box = { x0: 7, y0: -3, x1: 37, y1: 9 };

describe('shapes', () => {
  it('a rectangle, sharp or rounded, fills its box and is left clockwise', () => {
    for (const radius of [0, 0.2, 4, 6]) {
      const path = roundedRectangle(box, radius);
      expect(pathBounds(path)).toEqual({ x0: expect.closeTo(7, 9), y0: expect.closeTo(-3, 9), x1: expect.closeTo(37, 9), y1: expect.closeTo(9, 9) });
      near(pathArea(path), 30 * 12 - (4 - Math.PI) * radius * radius, 1e-9);
      near(pathLength(path), 84 - (8 - 2 * Math.PI) * radius, 1e-9);
      near(minimumRadius(path).clockwise.radius, radius, 1e-9);
      // Straight runs stand only where there is length for one.
      expect(path.segments.filter(({ kind }) => kind === 'line')).toHaveLength(radius === 0 ? 3 : radius === 6 ? 2 : 4);
    }
    expect(roundedRectangle(box, 0)).toEqual(rectangle(7, -3, 30, 12));
    expect(rectangle(7, -3, 30, 12).segments.map(endOf)).toEqual([point(37, -3), point(37, 9), point(7, 9)]);
    const upright = { x0: 0, y0: 0, x1: 12, y1: 30 };
    near(pathArea(roundedRectangle(upright, 6)), 360 - (4 - Math.PI) * 36, 1e-9);
  });

  it('a rounded rectangle of sides under a millimetre is one too', () =>
    near(pathArea(roundedRectangle({ x0: 0, y0: 0, x1: 0.8, y1: 0.6 }, 0.3)), 0.48 - (4 - Math.PI) * 0.09, 1e-9));

  it('refuses a radius of more than half the lesser side, a negative one, and sides of no length', () => {
    for (const [of, radius] of [[box, 6.01], [{ x0: 0, y0: 0, x1: 12, y1: 30 }, 6.01], [box, -0.1], [{ ...box, y1: -3 }, 0], [{ ...box, x1: 7 }, 0], [box, NaN]] as const) {
      expect(() => roundedRectangle(of, radius)).toThrow(GeometryError);
    }
  });

  it('a slot lies about the run between its centres, whichever way it runs', () => {
    for (const [ax, ay, bx, by] of [[3, 2, 33, 42], [33, 42, 3, 2], [-7, 30, 12, -4], [5, 5, 5, 45], [45, 5, 5, 5], [0.1, 0, 0.3, 0.1]] as const) {
      for (const radius of [0.4, 9]) {
        const path = slot(point(ax, ay), point(bx, by), radius);
        near(pathArea(path), 2 * radius * Math.hypot(bx - ax, by - ay) + Math.PI * radius * radius, 1e-9);
        expect(pathBounds(path)).toEqual({
          x0: expect.closeTo(Math.min(ax, bx) - radius, 9), y0: expect.closeTo(Math.min(ay, by) - radius, 9),
          x1: expect.closeTo(Math.max(ax, bx) + radius, 9), y1: expect.closeTo(Math.max(ay, by) + radius, 9),
        });
      }
    }
    expect(() => slot(point(1, 2), point(1, 2), 4)).toThrow(GeometryError);
    expect(() => slot(point(1, 2), point(9, 2), 0)).toThrow(GeometryError);
  });

  it('an ellipse reaches as far as its turned axes take it', () => {
    const [rx, ry, turn] = [40, 15, 0.6];
    const path = ellipse(point(3, -8), rx, ry, turn);
    const [w, h] = [Math.hypot(rx * Math.cos(turn), ry * Math.sin(turn)), Math.hypot(rx * Math.sin(turn), ry * Math.cos(turn))];
    expect(pathBounds(path)).toEqual({ x0: expect.closeTo(3 - w, 9), y0: expect.closeTo(-8 - h, 9), x1: expect.closeTo(3 + w, 9), y1: expect.closeTo(-8 + h, 9) });
    near(pathLength(circle(point(1, 2), 9)), 18 * Math.PI, 1e-9);
  });

  it('a polyline goes through its points, and needs two', () => {
    expect(polyline([point(1, 2), point(3, 4), point(5, 0)], true)).toEqual({ start: point(1, 2), segments: [{ kind: 'line', to: point(3, 4) }, { kind: 'line', to: point(5, 0) }], closed: true });
    expect(() => polyline([point(1, 2)])).toThrow(RangeError);
    expect(() => polyline([])).toThrow(RangeError);
  });
});
