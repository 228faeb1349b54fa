import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf } from '../../src/geometry/box.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import { flattenPath } from '../../src/geometry/flatten-path.js';
import { minimumRadius } from '../../src/geometry/minimum-radius.js';
import { pathArea } from '../../src/geometry/path-area.js';
import { arcPoint, type Path } from '../../src/geometry/path.js';
import { type Point, point } from '../../src/geometry/point.js';
import { pointInPath } from '../../src/geometry/point-in-path.js';
import { reversePath } from '../../src/geometry/reverse-path.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { circle, circularArc, ellipse, line, polyline, rectangle, roundedRectangle, slot } from '../../src/geometry/shapes.js';
import { pathDistance } from './path-distance.js';
import { anyPath, anyPoint } from './arbitrary.js';
import { near, nearPoint } from './near.js';

describe('pathArea', () => {
  it('of a rectangle, ellipse, slot and rounded rectangle is the textbook one, clockwise positive', () => {
    near(pathArea(rectangle(3, 4, 5, 6)), 30, 1e-12);
    near(pathArea(ellipse(point(9, -8), 5, 2, 0.7)), 10 * Math.PI, 1e-11);
    near(pathArea(reversePath(circle(point(1, 1), 3))), -9 * Math.PI, 1e-11);
    near(pathArea(slot(point(0, 0), point(10, 0), 2)), 40 + 4 * Math.PI, 1e-11);
    near(pathArea(slot(point(0, 0), point(10, 0), 0.3)), 6 + 0.09 * Math.PI, 1e-11);
    near(pathArea(roundedRectangle({ x0: 1, y0: 2, x1: 31, y1: 22 }, 5)), 600 - (4 - Math.PI) * 25, 1e-11);
  });
  it('is that of a fine polygon', () => {
    fc.assert(fc.property(anyPath, (path) => {
      const corners = flattenPath({ ...path, closed: true }, 1e-3);
      if (corners.length > 2) near(pathArea(path), pathArea(polyline(corners, true)), 3);
    }), { numRuns: 60 });
  });
});

describe('flattenPath', () => {
  it('takes as many chords of a cubic as the greatest second derivative asks for, at either end', () => {
    // B″ = 6(P0 − 2P1 + P2) at 0 and 6(P1 − 2P2 + P3) at 1; n = √(|B″|max ÷ 8·tolerance). de Boor, A Practical Guide to Splines.
    const cubic = (c1: Point, c2: Point, to: Point): Path => ({ start: point(3, 1), closed: false, segments: [{ kind: 'cubic', c1, c2, to }] });
    // At 0: (3 − 22 + 40, 1 − 8 + 9) = (21, 2), at 1: (11 − 80 + 60, 4 − 18 + 5) = (−9, −9).
    expect(flattenPath(cubic(point(11, 4), point(40, 9), point(60, 5)), 0.01)).toHaveLength(Math.ceil(Math.sqrt((6 * Math.hypot(21, 2)) / 0.08)) + 1);
    // At 0: (3 − 20 + 20, 1 − 4 + 3) = (3, 0), at 1: (10 − 40 + 70, 2 − 6 + 40) = (40, 36).
    expect(flattenPath(cubic(point(10, 2), point(20, 3), point(70, 40)), 0.01)).toHaveLength(Math.ceil(Math.sqrt((6 * Math.hypot(40, 36)) / 0.08)) + 1);
  });
  it('keeps chords within the tolerance', () => {
    fc.assert(fc.property(anyPath, (path) => {
      const corners = flattenPath(path, 0.05);
      const chords = polyline(corners.length > 1 ? corners : [...corners, ...corners], path.closed);
      for (const { segment, from } of explicitSegments(path)) {
        for (let i = 0; i <= 20; i += 1) {
          const p = segmentPoint(segment, from, i / 20);
          expect(pathDistance(line(p, p), chords).distance).toBeLessThanOrEqual(0.0501);
        }
      }
    }), { numRuns: 25 });
  });
});

/** Winding by the sum of the angles that the corners of a fine polygon subtend. */
const winding = (path: Path, p: Point): number => {
  const corners = flattenPath({ ...path, closed: true }, 1e-4);
  return Math.round(corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return sum + Math.atan2((a.x - p.x) * (b.y - p.y) - (a.y - p.y) * (b.x - p.x), (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y));
  }, 0) / (2 * Math.PI));
};

describe('pointInPath', () => {
  it('agrees with the angle sum of a fine polygon', () => {
    fc.assert(fc.property(anyPath, anyPoint, (path, p) => {
      if (pathDistance(line(p, p), { ...path, closed: true }).distance > 1e-3) expect(pointInPath(path, p)).toBe(winding(path, p) !== 0);
    }), { numRuns: 300 });
  });
  it('counts a joint once where the line to it ends a rounding beyond it', () => {
    const there: Path = { start: point(0, 0.014), segments: [{ kind: 'cubic', c1: point(0, 0), c2: point(0, 0), to: point(0, -0.118) }], closed: false };
    expect(pointInPath(there, point(-0.002, 0.014))).toBe(false);
  });
  it('counts a corner level with the point once', () => {
    const diamond = polyline([point(0, -5), point(5, 0), point(0, 5), point(-5, 0)], true);
    expect([point(0, 0), point(-6, 0), point(6, 0), point(-6, -5), point(-6, 5)].map((p) => pointInPath(diamond, p))).toEqual([true, false, false, false, false]);
    expect(pointInPath(circle(point(0, 0), 5), point(-4.9, 0))).toBe(true);
  });
});

describe('pathDistance', () => {
  it('between circles is the gap of their centres less the radii', () => {
    near(pathDistance(circle(point(0, 0), 30), circle(point(70, 20), 25)).distance, Math.hypot(70, 20) - 55, 1e-6);
    near(pathDistance(circle(point(0, 0), 30), circle(point(3, 0), 20)).distance, 7, 1e-6);
    near(pathDistance(circle(point(0, 0), 30), circle(point(0, 0), 24)).distance, 6, 1e-6);
  });
  it('is 0 where paths cross', () => near(pathDistance(circle(point(0, 0), 30), line(point(0, 0), point(90, 1))).distance, 0, 1e-6));
  it('is never above that of dense samples, nor much below, and gives points that lie so far apart', () => {
    fc.assert(fc.property(anyPath, anyPath, (a, b) => {
      const { distance, first, second } = pathDistance(a, b);
      near(Math.hypot(first.x - second.x, first.y - second.y), distance, 1e-12);
      const [p, q] = [a, b].map((path) => explicitSegments(path).flatMap(({ segment, from }) => Array.from({ length: 61 }, (_, i) => segmentPoint(segment, from, i / 60))));
      let least = Infinity;
      for (const m of p!) for (const n of q!) least = Math.min(least, Math.hypot(m.x - n.x, m.y - n.y));
      expect(distance).toBeLessThanOrEqual(least + 1e-6);
      // Neighbouring samples stand at most 15 mm apart at these sizes.
      expect(distance).toBeGreaterThanOrEqual(least - 15);
    }), { numRuns: 60 });
  });
});

describe('minimumRadius', () => {
  const radii = (path: Path) => {
    const { clockwise, anticlockwise } = minimumRadius(path);
    return { clockwise: clockwise.radius, anticlockwise: anticlockwise.radius };
  };

  it('tells the two bends apart', () => {
    const box = boxOf([point(0, 0), point(40, 30)]);
    expect(radii(roundedRectangle(box, 7))).toEqual({ clockwise: 7, anticlockwise: Infinity });
    expect(radii(reversePath(roundedRectangle(box, 7)))).toEqual({ clockwise: Infinity, anticlockwise: 7 });
    expect(radii(rectangle(0, 0, 5, 5))).toEqual({ clockwise: 0, anticlockwise: Infinity });
    const ell = polyline([point(0, 0), point(60, 0), point(60, 25), point(25, 25), point(25, 70), point(0, 70)], true);
    expect(radii(ell)).toEqual({ clockwise: 0, anticlockwise: 0 });
  });

  it('says where the tightest bend is', () => {
    const ell = polyline([point(0, 0), point(60, 0), point(60, 25), point(25, 25), point(25, 70), point(0, 70)], true);
    expect(minimumRadius(ell).anticlockwise.at).toEqual(point(25, 25));
    const vertex: Path = { start: point(-4, 4), closed: false, segments: [{ kind: 'cubic', c1: point(-4 / 3, -4 / 3), c2: point(4 / 3, -4 / 3), to: point(4, 4) }] };
    const { clockwise, anticlockwise } = minimumRadius(vertex);
    const at = (clockwise.at ?? anticlockwise.at)!;
    near(at.x, 0, 1e-3);
    near(at.y, 0, 1e-3);
    expect(minimumRadius(polyline([point(0, 0), point(5, 0)])).clockwise).toEqual({ radius: Infinity, at: undefined });
  });

  it('a kink under 1° is no corner, one of 1° is', () => {
    const kinked = (degrees: number): Path => polyline([point(0, 0), point(50, 0), point(100, 50 * Math.tan((degrees * Math.PI) / 180))]);
    // Half of both runs, turned by 0.99°: as a curve of some 2.9 m radius.
    expect(radii(kinked(0.99)).clockwise).toBeGreaterThan(2800);
    expect(radii(kinked(0.99)).clockwise).toBeLessThan(3000);
    expect(radii(kinked(1.01)).clockwise).toBe(0);
    expect(radii(kinked(-1.01)).anticlockwise).toBe(0);
    for (const degrees of [0.3, 0.99, 1.01, 40]) expect([radii(kinked(degrees)).anticlockwise, radii(kinked(-degrees)).clockwise]).toEqual([Infinity, Infinity]);
  });

  it('a circle drawn as many short straight runs has the circle’s radius', () => {
    const count = 720;
    const polygon = polyline(Array.from({ length: count }, (_, i) => point(3 * Math.cos((2 * Math.PI * i) / count), 3 * Math.sin((2 * Math.PI * i) / count))), true);
    near(radii(polygon).clockwise, 3, 1e-3);
  });

  it('of an arc stands at its middle, of any size', () => {
    for (const [radius, t1, sense] of [[0.4, 1.6, 'clockwise'], [0.4, -1.2, 'anticlockwise'], [250, 0.002, 'clockwise']] as const) {
      const arc = circularArc(point(7, 3), radius, 0.4, 0.4 + t1);
      const bend = minimumRadius({ start: arcPoint(arc, 0.4), segments: [arc], closed: false })[sense];
      near(bend.radius, radius, 1e-12 * radius);
      nearPoint(bend.at!, point(7 + radius * Math.cos(0.4 + t1 / 2), 3 + radius * Math.sin(0.4 + t1 / 2)), 1e-9);
    }
  });

  it('of a corner that a handle of no length stands at is 0, and none where the run only goes on', () => {
    const bent = (c1: Point, c2: Point, to: Point): Path => ({ start: point(0, 0), closed: false, segments: [{ kind: 'line', to: point(30, 0) }, { kind: 'cubic', c1, c2, to }] });
    // Both handles in the run's end and the far one: a straight run at 45°.
    expect(minimumRadius(bent(point(30, 0), point(60, 30), point(60, 30))).clockwise).toEqual({ radius: 0, at: point(30, 0) });
    expect(radii(bent(point(30, 0), point(60, -30), point(60, -30)))).toEqual({ clockwise: Infinity, anticlockwise: 0 });
    expect(radii(bent(point(30, 0), point(60, 0), point(60, 0)))).toEqual({ clockwise: Infinity, anticlockwise: Infinity });
    // The same from the other end, and over the start of a closed outline.
    expect(minimumRadius(reversePath(bent(point(30, 0), point(60, 30), point(60, 30)))).anticlockwise).toEqual({ radius: 0, at: point(30, 0) });
    const drop = { ...bent(point(50, 0), point(60, 10), point(60, 40)), closed: true };
    expect(minimumRadius(drop).clockwise.radius).toBe(0);
    expect(minimumRadius({ ...drop, closed: false }).clockwise.radius).toBeGreaterThan(5);
  });

  it('is the least of all bends, were it but a little tighter than the next', () => {
    const arcs = (first: number, second: number): Path => {
      const [a, b] = [circularArc(point(0, first), first, -Math.PI / 2, 0), circularArc(point(first - second, first), second, 0, Math.PI / 2)];
      return { start: point(0, 0), segments: [a, b], closed: false };
    };
    for (const [first, second] of [[20, 17], [17, 20], [20, 9], [9, 20]] as const) {
      expect(radii(arcs(first, second)).clockwise).toBe(Math.min(first, second));
      expect(radii(reversePath(arcs(first, second))).anticlockwise).toBe(Math.min(first, second));
    }
  });

  it('of an ellipse is b²/a', () => near(radii(ellipse(point(1, 2), 50, 20, 0.4)).clockwise, 8, 1e-4));

  it('of a cubic is that of its sharpest bend, wherever it lies, to 1e-6', () => {
    // Curvature of a Bézier curve from its own derivatives, at 200 001 places: |B′ × B″| ÷ |B′|³.
    const sharpest = ([p, q, r, s]: readonly [Point, Point, Point, Point]): number => {
      let most = 0;
      for (let i = 0; i <= 200_000; i += 1) {
        const [t, u] = [i / 200_000, 1 - i / 200_000];
        const first = (a: number, b: number, c: number, d: number): number => 3 * (u * u * (b - a) + 2 * u * t * (c - b) + t * t * (d - c));
        const second = (a: number, b: number, c: number, d: number): number => 6 * (u * (c - 2 * b + a) + t * (d - 2 * c + b));
        const [x1, y1, x2, y2] = [first(p.x, q.x, r.x, s.x), first(p.y, q.y, r.y, s.y), second(p.x, q.x, r.x, s.x), second(p.y, q.y, r.y, s.y)];
        most = Math.max(most, Math.abs(x1 * y2 - y1 * x2) / Math.hypot(x1, y1) ** 3);
      }
      return most;
    };
    for (const [c1, c2, to] of [
      [point(10, 30), point(12, -25), point(40, 5)], [point(31, 17), point(-9, 18), point(24, -3)], [point(5, 40), point(26, 44), point(30, 0)], [point(22, 1), point(25, 3), point(25.5, 30)],
      // Two bends of one sense, the sharper one first or last; the last pair nearly alike.
      [point(0, 20), point(40, 22), point(40, 0)], [point(2, 30), point(60, 31), point(60, 0)], [point(60, 20), point(-15, 22), point(40, 0)], [point(55, 20), point(-20, 22), point(40, 0)],
    ] as const) {
      const found = radii({ start: point(0, 0), closed: false, segments: [{ kind: 'cubic', c1, c2, to }] });
      const least = Math.min(found.clockwise, found.anticlockwise);
      near(least * sharpest([point(0, 0), c1, c2, to]), 1, 1e-6);
    }
  });

  it('of a cubic like a parabola is its vertex’s', () => {
    // A parabola y = x²/4 as a cubic: radius 2 at its vertex.
    const parabola: Path = { start: point(-4, 4), closed: false, segments: [{ kind: 'cubic', c1: point(-4 / 3, -4 / 3), c2: point(4 / 3, -4 / 3), to: point(4, 4) }] };
    const { clockwise, anticlockwise } = radii(parabola);
    near(Math.min(clockwise, anticlockwise), 2, 1e-5);
    expect(Math.max(clockwise, anticlockwise)).toBe(Infinity);
  });
});
