import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import { sawCutHeight } from '../../../src/geometry/saw-cut.js';
import { isSquare } from '../../../src/jigs/saddle-cope/solve.js';
import { radians } from '../../../src/units/units.js';
import { context, fields, solved } from './written.js';

const valuesOf = (given: Parameters<typeof fields>[0]) => saddleCope.values(solved(fields({ pin: { diameter: 0 }, ...given })));

describe('solve gives the values of', () => {
  it('a worked header example: OD 323.8, branch 202.74, 90° (published piping inspection notes; read 4.716 … 35.663)', () => {
    // Depth below the crown at 22.5° steps, R = 161.9, r = 101.37; ours stand every 15°, so 0°, 45° and 90° are shared.
    const { ordinates, saddleDepth } = valuesOf({ mainDiameter: 323.8, branchDiameter: 202.74 }) as { ordinates: number[]; saddleDepth: number };
    expect(161.9 - ordinates[3]!).toBeCloseTo(16.732, 3);
    expect(161.9 - ordinates[6]!).toBeCloseTo(35.663, 3);
    expect(saddleDepth).toBeCloseTo(35.663186, 6);
  });

  it('D 50, d 25, 60°: the ordinates that are shared with the 22.5° series (computed to 30 digits from the closed form)', () => {
    const { throat, longPoint, wing, ordinates } = valuesOf({ angle: radians(60) }) as Record<string, number> & { ordinates: number[] };
    expect(throat).toBeCloseTo(36.0843918, 7);
    expect(ordinates[3]).toBeCloseTo(32.1061899, 7);
    expect(wing).toBeCloseTo(25, 9);
    expect(ordinates[9]).toBeCloseTo(21.8999826, 7);
    expect(longPoint).toBeCloseTo(21.6506351, 7);
  });

  it('D 50, d 25, 60°, offset 5: φ turns the right way (series of 22.5°, computed to 30 digits, checked on a mesh)', () => {
    const { ordinates } = valuesOf({ angle: radians(60), offset: 5 }) as unknown as { ordinates: number[] };
    expect(ordinates[0]).toBeCloseTo(35.5011496, 7);
    expect(ordinates[3]).toBeCloseTo(29.1443641, 7);
    expect(ordinates[6]).toBeCloseTo(20.6155281, 7);
    expect(ordinates[9]).toBeCloseTo(18.9381568, 7);
    expect(ordinates[12]).toBeCloseTo(21.0673929, 7);
    expect(ordinates[18]).toBeCloseTo(27.5378527, 7);
    expect(ordinates[21]).toBeCloseTo(33.6282586, 7);
  });

  it('a 25 mm dowel in 0.1 mm paper: wrap 78.8539756 (π × (D + paper), 30 digits)', () => {
    expect(valuesOf({})['wrapLength']).toBeCloseTo(78.8539756, 7);
  });

  it('a 25 mm rail square on two of 38 mm at 500 mm centres: 471.382 horn to horn, 462 throat to throat (closed form)', () => {
    const rail = valuesOf({
      branchDiameter: 25, mainDiameter: 38, centres: 500,
      farEnd: { main: { name: 'post', diameter: 38 }, angle: Math.PI / 2, offset: 0, twist: 0 },
    });
    expect(rail['hornToHorn']).toBeCloseTo(500 - 2 * Math.sqrt(19 ** 2 - 12.5 ** 2), 9);
    expect(rail['hornToHorn']).toBeCloseTo(471.382, 3);
    expect(rail['throatToThroat']).toBeCloseTo(462, 9);
    expect((rail['throat'] as { near: number; far: number }).far).toBeCloseTo(19, 12);
  });
});

describe('solve', () => {
  it('finds the lowest and the highest point of the edge for every angle and offset', () => {
    for (const angle of [8, 30, 64, 89, 90]) {
      for (const offset of [-4, 0, 3.3]) {
        const { near } = solved(fields({ angle: radians(angle), offset, mainDiameter: 40, branchDiameter: 28 }));
        const edge = Array.from({ length: 7200 }, (_, i) => {
          const phi = (i * Math.PI) / 3600;
          return (Math.sqrt(400 - (offset + 14 * Math.sin(phi)) ** 2) + 14 * Math.cos(phi) * Math.cos(near.joint.angle)) / Math.sin(near.joint.angle);
        });
        expect(near.horn).toBeLessThanOrEqual(Math.min(...edge) + 1e-12);
        expect(near.horn).toBeGreaterThan(Math.min(...edge) - 1e-4);
        expect(near.crest).toBeGreaterThanOrEqual(Math.max(...edge) - 1e-12);
      }
    }
  });

  it('keeps all of the wood with the first saw cut: nowhere above the edge, touching it at the wing', () => {
    for (const offset of [-5, 0, 7]) {
      const { near } = solved(fields({ angle: radians(50), offset }));
      const spare = near.ordinates.map((z, i) => z - sawCutHeight(near.joint, (i * Math.PI) / 12));
      expect(Math.min(...spare)).toBeGreaterThan(-1e-12);
      expect(Math.min(...spare)).toBeLessThan(1e-12);
    }
  });

  it('calls a joint square at 90° only', () => {
    expect(isSquare(solved(fields({})).near)).toBe(true);
    expect(isSquare(solved(fields({ angle: radians(89.9) })).near)).toBe(false);
  });

  it('chooses an owned bit of a third to half the branch nearest to two fifths, else 1 mm or 1/16 in (common practice)', () => {
    const bit = (diameter: number) => ({ diameter, usableLength: 90, point: 2 });
    const owned = { ...context, shop: { bits: [bit(6), bit(9.5), bit(12)] } };
    expect(solved(fields({}), owned).near.pin!.diameter).toBe(9.5);
    expect(solved(fields({}), { ...context, shop: { bits: [bit(6)] } }).near.pin!.diameter).toBe(10);
    expect(solved(fields({ branchDiameter: 28.575 }), { ...context, units: 'inch' }).near.pin!.diameter).toBeCloseTo((25.4 * 7) / 16, 9);
  });

  it('measures the wall beyond a square pin hole on the chord of its rim, or beyond the bit’s point where that is nearer', () => {
    const withPoint = (point: number) =>
      solved(fields({ pin: { diameter: 10, intoMain: 40 } }), { ...context, shop: { bits: [{ diameter: 10, usableLength: 90, point }] } }).near.pin!.wall;
    expect(withPoint(0)).toBeCloseTo(25 - Math.hypot(5, 41.5 - 25), 9);
    expect(withPoint(4)).toBeCloseTo(25 - (41.5 + 4 - 25), 9);
  });
});

test('the horn never stands further on than where the bit enters, nor the throat further back', () => {
  // By closed form: z(φ) = (√(R² − w²) + r·cos φ·cos θ) ÷ sin θ with w = e + r·sin φ stands z·cos θ + r·cos φ·sin θ along the main; the horn is the lowest.
  fc.assert(fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), fc.double({ min: -0.9, max: 0.9, noNaN: true }), fc.double({ min: 8, max: 89, noNaN: true }), (share, aside, deg) => {
    const [R, theta] = [30, (deg * Math.PI) / 180];
    const e = aside * R;
    const r = share * (R - Math.abs(e));
    fc.pre(r > 0.5);
    const { entry } = solved(fields({ mainDiameter: 2 * R, branchDiameter: 2 * r, angle: theta, offset: e, pin: { diameter: 0 } })).near;
    const z = (phi: number): number => (Math.sqrt(Math.max(0, R * R - (e + r * Math.sin(phi)) ** 2)) + r * Math.cos(phi) * Math.cos(theta)) / Math.sin(theta);
    const turns = Array.from({ length: 3600 }, (_, i) => (i * Math.PI) / 1800);
    const horn = turns.reduce((low, phi) => (z(phi) < z(low) ? phi : low));
    const along = (phi: number): number => z(phi) * Math.cos(theta) + r * Math.cos(phi) * Math.sin(theta);
    const station = Math.sqrt(R * R - e * e) / Math.tan(theta);
    expect(entry.toHorn).toBeGreaterThanOrEqual(-1e-9);
    expect(entry.toThroat).toBeGreaterThanOrEqual(-1e-9);
    // Near a flat low the sampled horn may stand a little off the true one.
    expect(Math.abs(entry.toHorn - (station - along(horn)))).toBeLessThan(1 + 0.02 * station);
  }), { numRuns: 100 });
});
