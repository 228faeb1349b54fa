import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcFromEnds } from '../../src/geometry/arc-from-ends.js';
import { arcPoint } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { near, nearPoint } from './near.js';

describe('arcFromEnds', () => {
  it('finds the centre, axes and sense of the arc whose ends it is given', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(fc.property(within(-90, 90), within(-90, 90), within(1, 60), within(1, 60), within(-7, 7), within(-3, 3), within(0.2, 6.1), fc.boolean(), (cx, cy, rx, ry, turn, t0, span, sweep) => {
      // A half turn has its centre on the chord, where either side is as near.
      fc.pre(Math.abs(span - Math.PI) > 0.05);
      const at = (t: number) => point(
        cx + Math.cos(turn) * rx * Math.cos(t) - Math.sin(turn) * ry * Math.sin(t),
        cy + Math.sin(turn) * rx * Math.cos(t) + Math.cos(turn) * ry * Math.sin(t),
      );
      const t1 = sweep ? t0 + span : t0 - span;
      const arc = arcFromEnds({ from: at(t0), to: at(t1), rx, ry, turn, large: span > Math.PI, sweep })!;
      nearPoint(arc.centre, point(cx, cy), 1e-7);
      near(arc.t1 - arc.t0, t1 - t0, 1e-8);
      for (const part of [0, 0.3, 0.7, 1]) nearPoint(arcPoint(arc, arc.t0 + part * (arc.t1 - arc.t0)), at(t0 + part * (t1 - t0)), 1e-7);
    }), { numRuns: 500 });
  });

  it('enlarges half-axes that are too small, both alike, to the half ellipse over the ends', () => {
    for (const [large, sweep] of [[false, true], [true, false]] as const) {
      const arc = arcFromEnds({ from: point(-10, 3), to: point(30, 3), rx: 4, ry: 1, turn: 0, large, sweep })!;
      nearPoint(arc.centre, point(10, 3), 1e-9);
      nearPoint(arcPoint(arc, (arc.t0 + arc.t1) / 2), point(10, sweep ? 3 - 5 : 3 + 5), 1e-9);
    }
    // Turned by 90° the short half-axis lies along the chord and grows to half of it: the other to 80.
    const upright = arcFromEnds({ from: point(-10, 3), to: point(30, 3), rx: 4, ry: 1, turn: Math.PI / 2, large: false, sweep: true })!;
    nearPoint(arcPoint(upright, (upright.t0 + upright.t1) / 2), point(10, 3 - 80), 1e-9);
  });

  it('is none where a half-axis is 0 or both ends are one point', () => {
    const given = { from: point(1, 2), to: point(5, 6), rx: 4, ry: 3, turn: 0, large: false, sweep: true };
    expect([arcFromEnds({ ...given, rx: 0 }), arcFromEnds({ ...given, ry: 0 }), arcFromEnds({ ...given, to: given.from })]).toEqual([undefined, undefined, undefined]);
    expect(arcFromEnds(given)).toBeDefined();
  });
});
