import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import Module from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { GeometryError } from '../../src/errors/geometry-error.js';
import { arcFromEnds } from '../../src/geometry/arc-from-ends.js';
import { flattenPath } from '../../src/geometry/flatten-path.js';
import { pathLength } from '../../src/geometry/length.js';
import { offsetFreeForm } from '../../src/geometry/offset-free-form.js';
import { offsetPath } from '../../src/geometry/offset-path.js';
import { pathArea } from '../../src/geometry/path-area.js';
import type { Path } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { reversePath } from '../../src/geometry/reverse-path.js';
import { circle, ellipse, polyline, rectangle, roundedRectangle, slot } from '../../src/geometry/shapes.js';
import { rotation, transformPath } from '../../src/geometry/transform.js';
import { pathDistance } from './path-distance.js';
import { near } from './near.js';

/** A board's edge with two U-shaped seats opening upwards, their bottoms half circles, the mouths sharp. */
const seats = (width: number): Path => {
  const seat = (x: number): Path['segments'] => {
    const r = width / 2;
    return [
      { kind: 'line', to: point(x - r, 0) }, { kind: 'line', to: point(x - r, 20) },
      { kind: 'arc', centre: point(x, 20), u: point(r, 0), v: point(0, r), t0: Math.PI, t1: 0 },
      { kind: 'line', to: point(x + r, 0) },
    ];
  };
  return {
    start: point(0, 0), closed: true,
    segments: [...seat(30), ...seat(80), { kind: 'line', to: point(120, 0) }, { kind: 'line', to: point(120, 60) }, { kind: 'line', to: point(0, 60) }],
  };
};

const outlines: readonly (readonly [string, Path, number])[] = [
  ['a rectangle', rectangle(0, 0, 60, 30), 6],
  ['a rounded rectangle', roundedRectangle({ x0: 0, y0: 0, x1: 60, y1: 30 }, 8), 6],
  ['a slot', slot(point(0, 0), point(40, 9), 12), 6],
  ['an L', polyline([point(0, 0), point(60, 0), point(60, 25), point(25, 25), point(25, 70), point(0, 70)], true), 5],
  ['seats', seats(24), 5],
  ['a circle', circle(point(3, 4), 25), 6],
];

describe('offsetPath of lines and circular arcs', () => {
  for (const [name, outline, by] of outlines) {
    for (const move of [by, -by, by / 7, -by / 7]) {
      for (const turn of [0, 0.7, 2.9]) {
        it(`moves ${name} by ${move} mm, turned by ${turn}, as clipper does`, () => {
          const path = transformPath(rotation(turn), outline);
          const moved = offsetPath(path, move);
          const corners = flattenPath(path, 1e-5).map(({ x, y }) => ({ x, y }));
          const [theirs] = inflatePathsD([corners], move, JoinType.Round, EndType.Polygon, 2, 6, 1e-5);
          near(Math.abs(pathArea(moved)), Math.abs(pathArea(polyline(theirs!.map(({ x, y }) => ({ x, y })), true))), 2e-3);
          expect(Math.sign(pathArea(moved))).toBe(Math.sign(pathArea(path)));
          near(pathDistance(moved, path).distance, Math.abs(move), 2e-6);
        });
      }
    }
  }

  it('of an outline run the other way is the same outline', () => {
    for (const [, path, by] of outlines) near(pathLength(offsetPath(reversePath(path), by)), pathLength(offsetPath(path, by)), 1e-9);
  });

  it('moves any outline of straight runs and arcs as clipper does, or refuses it', () => {
    let moved = 0;
    const corner = fc.record({ reach: fc.double({ min: 25, max: 60, noNaN: true }), bulge: fc.double({ min: 0.55, max: 3, noNaN: true }), run: fc.constantFrom('line', 'outwards', 'inwards') });
    fc.assert(fc.property(fc.array(corner, { minLength: 4, maxLength: 8 }), fc.double({ min: 0.4, max: 6, noNaN: true }), fc.boolean(), (corners, by, out) => {
      const at = corners.map(({ reach }, i) => point(reach * Math.cos((2 * Math.PI * i) / corners.length), 20 + reach * Math.sin((2 * Math.PI * i) / corners.length)));
      const path: Path = {
        start: at[0]!, closed: true,
        segments: corners.map(({ bulge, run }, i) => {
          const [from, to] = [at[i]!, at[(i + 1) % at.length]!];
          const radius = bulge * Math.hypot(to.x - from.x, to.y - from.y);
          return run === 'line' ? { kind: 'line', to } : arcFromEnds({ from, to, rx: radius, ry: radius, turn: 0, large: false, sweep: run === 'outwards' })!;
        }),
      };
      let ours: Path;
      try { ours = offsetPath(path, out ? by : -by); } catch (error) { expect(error).toBeInstanceOf(GeometryError); return; }
      const [theirs] = inflatePathsD([flattenPath(path, 1e-4).map(({ x, y }) => ({ x, y }))], out ? by : -by, JoinType.Round, EndType.Polygon, 2, 6, 1e-4);
      near(pathArea(ours), Math.abs(pathArea(polyline(theirs!.map(({ x, y }) => ({ x, y })), true))), 0.05);
      moved++;
    }), { numRuns: 150, seed: 7 });
    expect(moved).toBeGreaterThan(60);
  });

  it('keeps an arc that the move leaves hardly any of', () => {
    for (const left of [1e-6, 0.3, 0.9]) near(pathArea(offsetPath(roundedRectangle({ x0: 0, y0: 0, x1: 60, y1: 30 }, 5 + left), -5)), 50 * 20 - (4 - Math.PI) * left * left, 1e-9);
  });

  it('trims a wall to the near one of the two places where the parallel of an arc meets it', () => {
    // A wall along y = 0 up to a bay of radius 10 about (0, 3): moved 2 into the wood, the wall’s parallel y = 2 meets the circle of 12 at ±√(144 − 1).
    const bay = Math.sqrt(91);
    const path: Path = {
      start: point(-40, 0), closed: true,
      segments: [
        { kind: 'line', to: point(-bay, 0) },
        arcFromEnds({ from: point(-bay, 0), to: point(bay, 0), rx: 10, ry: 10, turn: 0, large: true, sweep: false })!,
        { kind: 'line', to: point(40, 0) }, { kind: 'line', to: point(40, 50) }, { kind: 'line', to: point(-40, 50) },
      ],
    };
    // The mouth of the bay turns out of the wood: outwards its corners close, inwards they open.
    const [theirs] = inflatePathsD([flattenPath(path, 1e-5).map(({ x, y }) => ({ x, y }))], -2, JoinType.Round, EndType.Polygon, 2, 6, 1e-5);
    near(pathArea(offsetPath(path, -2)), Math.abs(pathArea(polyline(theirs!.map(({ x, y }) => ({ x, y })), true))), 2e-3);
    const [wider] = inflatePathsD([flattenPath(path, 1e-5).map(({ x, y }) => ({ x, y }))], 2, JoinType.Round, EndType.Polygon, 2, 6, 1e-5);
    near(pathArea(offsetPath(path, 2)), Math.abs(pathArea(polyline(wider!.map(({ x, y }) => ({ x, y })), true))), 2e-3);
  });

  it('puts arcs about convex corners and keeps corners sharp inwards', () => {
    const out = offsetPath(rectangle(0, 0, 60, 30), 5);
    expect(out.segments.map((s) => s.kind).filter((k) => k === 'arc')).toHaveLength(4);
    near(pathArea(out), 60 * 30 + 2 * 5 * 90 + Math.PI * 25, 1e-9);
    near(pathArea(offsetPath(rectangle(0, 0, 60, 30), -5)), 50 * 20, 1e-9);
    expect(offsetPath(rectangle(0, 0, 60, 30), -5).segments.every((s) => s.kind === 'line')).toBe(true);
  });

  it('shrinks a corner arc of the same radius to a sharp corner', () => {
    near(pathArea(offsetPath(roundedRectangle({ x0: 0, y0: 0, x1: 60, y1: 30 }, 5), -5)), 50 * 20, 1e-9);
  });

  it('refuses a bend tighter than the move, with the figures', () => {
    try {
      offsetPath(seats(8), 5);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(GeometryError);
      expect((error as GeometryError).figures).toEqual({ radius: 4, offset: 5 });
    }
    expect(() => offsetPath(roundedRectangle({ x0: 0, y0: 0, x1: 60, y1: 30 }, 4.9), -5)).toThrow(GeometryError);
  });

  it('refuses an outline that closes up', () => {
    expect(() => offsetPath(rectangle(0, 0, 60, 9), -5)).toThrow(GeometryError);
    const neck = polyline([point(0, 0), point(30, 0), point(30, 12), point(50, 12), point(50, 0), point(80, 0), point(80, 30), point(50, 30), point(50, 18), point(30, 18), point(30, 30), point(0, 30)], true);
    expect(() => offsetPath(neck, -3.5)).toThrow(GeometryError);
    expect(pathArea(offsetPath(neck, -2.5))).toBeGreaterThan(0);
    const mouth = polyline([point(0, 0), point(60, 0), point(60, 27), point(40, 27), point(40, 10), point(20, 10), point(20, 50), point(40, 50), point(40, 33), point(60, 33), point(60, 60), point(0, 60)], true);
    expect(() => offsetPath(mouth, 4)).toThrow(GeometryError);
    expect(pathArea(offsetPath(mouth, 2))).toBeGreaterThan(0);
  });

  it('refuses a free-form outline that falls into two', () => {
    const corners = polyline([point(0, 0), point(30, 0), point(30, 12), point(50, 12), point(50, 0), point(80, 0), point(80, 30), point(50, 30), point(50, 18), point(30, 18), point(30, 30)], true);
    const neck: Path = { ...corners, segments: [...corners.segments, { kind: 'cubic', c1: point(20, 30), c2: point(10, 30), to: point(0, 30) }] };
    expect(() => offsetPath(neck, -3.5)).toThrow(GeometryError);
    expect(pathArea(offsetPath(neck, -2.5))).toBeGreaterThan(0);
  });

  it('refuses an open path', () => expect(() => offsetPath(polyline([point(0, 0), point(9, 9)]), 1)).toThrow(GeometryError));
});

describe('offsetPath of free forms', () => {
  it('of an outline run the other way, or under a square millimetre, is the same outline run as it was', () => {
    for (const scale of [1, 0.06]) {
      const oval = ellipse(point(5, 6), 5 * scale, 3 * scale, 0.3);
      for (const by of [0.4 * scale, -0.4 * scale]) {
        const [there, back] = [offsetPath(oval, by), offsetPath(reversePath(oval), by)];
        // Steiner’s formula for the parallel of a convex outline: A + L·d + π·d².
        const area = Math.PI * 15 * scale * scale + pathLength(oval) * by + Math.PI * by * by;
        near(pathArea(there), area, 2e-3 * pathLength(oval));
        near(pathArea(back), -area, 2e-3 * pathLength(oval));
      }
    }
  });

  it('of a long outline, inwards, keeps within 10 µm of the true parallel, which clipper finds in one go', () => {
    // A ring of 90 scallops with their cusps inwards: from 6 mm in only the arcs about the cusps are left.
    const at = (turn: number, reach: number) => point(reach * Math.cos((2 * Math.PI * turn) / 90), reach * Math.sin((2 * Math.PI * turn) / 90));
    const ring: Path = { start: at(0, 60), closed: true, segments: Array.from({ length: 90 }, (_, i) => ({ kind: 'cubic', c1: at(i + 0.3, 63), c2: at(i + 0.7, 63), to: at(i + 1, 60) })) };
    const corners = flattenPath(ring, 1e-4).map(({ x, y }) => ({ x, y }));
    expect(flattenPath(ring, 0.002).length).toBeGreaterThan(1000);
    const [true6] = inflatePathsD([corners], -6, JoinType.Round, EndType.Polygon, 2, 6, 1e-4);
    const moved = offsetFreeForm(polyline(flattenPath(ring, 0.002), true), -6);
    near(pathArea(moved), Math.abs(pathArea(polyline(true6!.map(({ x, y }) => ({ x, y })), true))), 0.01 * pathLength(moved));
    // Its corners lie on the true parallel, arcs of 6 about the cusps, and the middles of its runs.
    const cusps = Array.from({ length: 90 }, (_, i) => at(i, 60));
    const points = flattenPath(moved, 1);
    const off = points.flatMap((p, i) => [p, point((p.x + points[(i + 1) % points.length]!.x) / 2, (p.y + points[(i + 1) % points.length]!.y) / 2)])
      .map((p) => Math.min(...cusps.map((c) => Math.hypot(p.x - c.x, p.y - c.y))) - 6);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.01);
  });

  it('of an ellipse keeps within 10 µm of the true parallel', () => {
    const oval = ellipse(point(5, 6), 60, 30, 0.3);
    for (const by of [7, -7]) {
      const moved = offsetPath(oval, by);
      for (const corner of flattenPath(moved, 1)) {
        const spot: Path = { start: corner, closed: false, segments: [{ kind: 'line', to: corner }] };
        near(pathDistance(spot, oval).distance, Math.abs(by), 0.01);
      }
    }
  });

  it('agrees with an independent polygon library in area', async () => {
    const { CrossSection, setup } = await Module().then((m) => { m.setup(); return m; });
    expect(setup).toBeTypeOf('function');
    const leaf: Path = {
      start: point(0, 0), closed: true,
      segments: [{ kind: 'cubic', c1: point(40, -50), c2: point(90, -20), to: point(100, 0) }, { kind: 'cubic', c1: point(80, 60), c2: point(20, 50), to: point(0, 0) }],
    };
    const polygon = flattenPath(leaf, 1e-4).map(({ x, y }): [number, number] => [x, y]);
    const section = new CrossSection([polygon], 'NonZero');
    for (const by of [4, -4]) near(Math.abs(pathArea(offsetPath(leaf, by))), section.offset(by, 'Round', 2, 3000).area(), 0.01 * 300);
  });

  it('refuses a bend tighter than the move', () => {
    expect(() => offsetPath(ellipse(point(0, 0), 60, 10, 0), -2)).toThrow(GeometryError);
    expect(pathArea(offsetPath(ellipse(point(0, 0), 60, 10, 0), -1.6))).toBeGreaterThan(0);
  });
});
