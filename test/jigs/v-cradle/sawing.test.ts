import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grooveOf } from '../../../src/jigs/v-cradle/held-round.js';
import { sawingOf } from '../../../src/jigs/v-cradle/sawing.js';
import { radians } from '../../../src/units/units.js';

/** What a square-topped blade `kerf` wide takes away at `x` from the fence: height above the table, 0 where it is not. */
const cutHeight = (x: number, pass: { fence: number; tilt: number; height: number; kerf: number }): number => {
  const { fence, tilt, height, kerf } = pass;
  // In the blade's own frame: across from its near side, up along it; the near side's tip stands `height` above the table.
  let highest = 0;
  for (let y = 0; y <= height; y += height / 400) {
    const [dx, dy] = [x - fence, y];
    const across = dx * Math.cos(tilt) - dy * Math.sin(tilt);
    const up = dx * Math.sin(tilt) + dy * Math.cos(tilt);
    if (across >= -1e-9 && across <= kerf + 1e-9 && up <= height / Math.cos(tilt) + 1e-9) highest = y;
  }
  return highest;
};

describe('sawingOf(groove, sides, kerf)', () => {
  it('sets the fence by the walls and the height by the depth', () => {
    const groove = grooveOf(radians(45), 4, 14);
    const { fence, height, tilt } = sawingOf(groove, { a: 30, b: 22 }, { width: 3, assumed: false });
    expect(fence.a).toBeCloseTo(30 - 16, 12);
    expect(fence.b).toBeCloseTo(22 - 16, 12);
    expect(height).toBe(14);
    expect(tilt).toBeCloseTo(Math.PI / 4, 12);
  });

  it('clears the whole flat with passes that stay within it', () => {
    fc.assert(fc.property(fc.double({ min: 1, max: 4, noNaN: true }), fc.double({ min: 1, max: 30, noNaN: true }), (kerf, extra) => {
      const flat = kerf * extra;
      const { flatFences } = sawingOf(grooveOf(radians(45), flat, 10), { a: 50, b: 40 }, { width: kerf, assumed: false });
      // From the groove's middle: side A's passes as they are, side B's mirrored.
      const cuts = flatFences.flatMap(({ a, b }) => [[a - 50, a - 50 + kerf], [40 - b - kerf, 40 - b]]).sort((p, q) => p[0]! - q[0]!);
      expect(cuts[0]![0]).toBeCloseTo(-flat / 2, 9);
      expect(Math.max(...cuts.map((c) => c[1]!))).toBeCloseTo(flat / 2, 9);
      let reached = cuts[0]![1]!;
      for (const [from, to] of cuts) {
        expect(from).toBeLessThanOrEqual(reached + 1e-9);
        reached = Math.max(reached, to!);
      }
    }));
  });

  it('saws no upright pass for a sharp V or a flat narrower than the kerf', () => {
    for (const flat of [0, 3.1]) expect(sawingOf(grooveOf(radians(45), flat, 10), { a: 20, b: 20 }, { width: 3.2, assumed: true }).flatFences).toEqual([]);
  });

  it('leaves a blade that cuts the flank and nothing beyond the groove', () => {
    for (const [angle, flat] of [[90, 0], [90, 4], [70, 3], [110, 5]] as const) {
      const groove = grooveOf(radians(angle / 2), flat, 12);
      const sawing = sawingOf(groove, { a: 30, b: 30 }, { width: 3, assumed: false });
      expect(sawing.toothPast).toBe(0);
      const pass = { fence: sawing.fence.a, tilt: sawing.tilt, height: sawing.height, kerf: 3 };
      for (let x = 0; x <= 60; x += 0.25) {
        const off = Math.abs(x - 30);
        const allowed = off >= groove.width / 2 ? 0 : Math.min(12, (groove.width / 2 - off) / Math.tan(groove.halfAngle));
        expect(cutHeight(x, pass)).toBeLessThanOrEqual(allowed + 12 / 400 + 1e-6);
      }
      // On the near flank the blade takes all that the groove takes.
      expect(cutHeight(30 - groove.flat / 2 - 2, pass)).toBeGreaterThan((12 - 2 / Math.tan(groove.halfAngle)) - 12 / 400 - 1e-6);
    }
  });

  it('says how high a square tooth scores the other flank of a narrow V, and the flat that keeps it inside', () => {
    const kerf = { width: 3, assumed: false };
    const least = (3 * Math.cos(radians(60))) / Math.cos(radians(30));
    expect(sawingOf(grooveOf(radians(30), least - 1e-6, 20), { a: 30, b: 30 }, kerf).toothPast).toBeCloseTo(1.5, 9);
    expect(sawingOf(grooveOf(radians(30), least + 1e-6, 20), { a: 30, b: 30 }, kerf).toothPast).toBe(0);
  });
});
