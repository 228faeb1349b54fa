import { describe, expect, it } from 'vitest';
import { arcToCubics } from '../../src/geometry/arc-to-cubics.js';
import { cubicPoint } from '../../src/geometry/bounds.js';
import { arcPoint } from '../../src/geometry/path.js';
import type { Arc } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { circularArc } from '../../src/geometry/shapes.js';
import { near, nearPoint } from './near.js';

/** Greatest |distance from the centre − 1| in the frame in which the arc is one of the unit circle, times `radius`. */
const worst = (arc: Arc, radius: number, tolerance?: number): number => {
  let most = 0;
  let from = arcPoint(arc, arc.t0);
  const turn = arc.u.x * arc.v.y - arc.u.y * arc.v.x;
  for (const cubic of arcToCubics(arc, tolerance)) {
    for (let i = 0; i <= 200; i += 1) {
      const p = cubicPoint(from, cubic, i / 200);
      const [x, y] = [p.x - arc.centre.x, p.y - arc.centre.y];
      const unit = Math.hypot((x * arc.v.y - y * arc.v.x) / turn, (arc.u.x * y - arc.u.y * x) / turn);
      most = Math.max(most, Math.abs(unit - 1) * radius);
    }
    from = cubic.to;
  }
  nearPoint(from, arcPoint(arc, arc.t1), 1e-12);
  return most;
};

describe('arcToCubics', () => {
  it('errs by 4.25e-6 of the radius with 45° pieces when the tolerance lets it', () => {
    expect(arcToCubics(circularArc(point(0, 0), 1, 0, 2 * Math.PI), 1)).toHaveLength(8);
    near(worst(circularArc(point(0, 0), 1, 0, 2 * Math.PI), 1, 1), 4.245e-6, 2e-8);
  });
  it.each([1, 50, 117, 300, 3000])('keeps a circle of radius %d mm within half a micrometre', (radius) => {
    expect(worst(circularArc(point(7, 9), radius, 0.3, -5.9), radius)).toBeLessThanOrEqual(0.0005);
  });
  it('takes as many pieces as the published error asks for, no more', () => {
    // Radial error of the usual handles, from memory: 2/27 · sin⁶(α/4) ÷ cos²(α/4) of the radius for a piece of angle α; at 90° the well-known 2.73e-4.
    const error = (degrees: number): number => { const a = (degrees * Math.PI) / 720; return (2 / 27) * Math.sin(a) ** 6 / Math.cos(a) ** 2; };
    const pieces = (tolerance: number): number => arcToCubics(circularArc(point(0, 0), 300, 0, Math.PI / 2), tolerance).length;
    for (const count of [2, 3, 4, 6, 9]) {
      expect(pieces(1.01 * 300 * error(90 / count))).toBe(count);
      expect(pieces(0.99 * 300 * error(90 / count))).toBe(count + 1);
    }
  });

  it('keeps an ellipse given by conjugate half-diameters within half a micrometre', () => {
    expect(worst({ kind: 'arc', centre: point(1, 2), u: point(250, 60), v: point(40, 90), t0: -1, t1: 4 }, 270)).toBeLessThanOrEqual(0.0005);
  });
});
