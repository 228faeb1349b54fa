import { describe, expect, it } from 'vitest';
import { cradle, figure } from './cradle.js';

const onlyRound = (fields: string, units: 'mm' | 'inch' = 'mm') => {
  const { solution, values } = cradle({ fields, units });
  return { solution, values, held: solution.held[0]!, name: solution.held[0]!.round.name };
};

describe('a V-cradle’s heights', () => {
  it('puts a 1 in plug in a 65° V 1.8306 in above the block’s underside', () => {
    // US Army Ordnance course OD1640 "Machine Shop Calculation", lesson 2 task 3: block 1.500, slot 1.100 deep.
    const { solution, held, values, name } = onlyRound('holds: [1], includedAngle: 65, flat: 0, depth: 1.1, block: { height: 1.5 }', 'inch');
    expect((solution.block.height + held.proud) / 25.4).toBeCloseTo(1.8306, 4);
    expect((solution.block.height + held.proud) / 25.4).toBeCloseTo(1.8305795, 7);
    expect(figure(values['axisHeight'], name) / 25.4).toBeCloseTo(0.9305795, 7);
    expect(solution.block.floor / 25.4).toBeCloseTo(0.4, 12);
  });

  it.each([
    // Over-wire constants 1 + 1/sin h. F. D. Jones, Turning and Boring (60°, 55°); Machinery's Handbook, from memory (29°).
    [60, 3, 1e-9], [55, 3.1657, 5e-5], [29, 4.9939, 5e-5],
  ])('lifts the top of a wire in a %d° V by %f of its radius above the V’s point', (angle, factor, tolerance) => {
    const { held } = onlyRound(`holds: [10], includedAngle: ${angle}, flat: 0`);
    expect(Math.abs((held.axisHeight + held.radius) / held.radius - factor)).toBeLessThan(tolerance);
  });

  it.each([
    // Closed form for D 25, heights from the V's point.
    { angle: 60, axis: 25, top: 37.5, gap: 12.5, flank: 21.6506351, halfWidth: 10.8253175 },
    { angle: 90, axis: 17.6776695, top: 30.1776695, gap: 5.1776695, flank: 12.5, halfWidth: 8.8388348 },
    { angle: 120, axis: 14.4337567, top: 26.9337567, gap: 1.9337567, flank: 7.2168784, halfWidth: 6.25 },
  ])('agrees at $angle° with the closed form', ({ angle, axis, top, gap, flank, halfWidth }) => {
    const { held, solution } = onlyRound(`holds: [25], includedAngle: ${angle}, flat: 0`);
    expect(held.axisHeight).toBeCloseTo(axis, 6);
    expect(held.axisHeight + held.radius).toBeCloseTo(top, 6);
    expect(held.gap).toBeCloseTo(gap, 6);
    expect(held.flankLength).toBeCloseTo(flank, 6);
    expect(held.contactHalfWidth).toBeCloseTo(halfWidth, 6);
    expect(held.proud).toBeCloseTo(top - solution.groove.depth, 6);
  });

  it('prints every figure of the table by name, to 1e-6 mm, for a V with a flat', () => {
    const { values } = cradle({ fields: 'holds: [post, rail], depth: 14, flat: 4' });
    expect(values['grooveDepth']).toBeCloseTo(14, 9);
    expect(values['grooveWidth']).toBeCloseTo(2 * 14 + 4, 9);
    expect(values['apexDepth']).toBeCloseTo(16, 9);
    expect(values['sawTilt']).toBeCloseTo(45, 9);
    for (const [name, d] of [['post', 32], ['rail', 24]] as const) {
      expect(figure(values['axisHeight'], name)).toBeCloseTo(d * Math.SQRT1_2, 9);
      expect(figure(values['contactHeight'], name)).toBeCloseTo((d * Math.SQRT1_2) / 2, 9);
      expect(figure(values['contactHalfWidth'], name)).toBeCloseTo((d * Math.SQRT1_2) / 2, 9);
      expect(figure(values['proud'], name)).toBeCloseTo(d * Math.SQRT1_2 + d / 2 - 16, 9);
    }
  });
});

describe('what a V-cradle works out when the spec leaves it out', () => {
  it('cuts deep enough for the thickest round at 2.25 depths, to the next half millimetre', () => {
    const { solution } = cradle({ fields: 'holds: [post, rail], flat: 0' });
    expect(solution.groove.depth).toBe(Math.ceil((32 / 2.25) * 2) / 2);
  });

  it('counts the flat: the depth is measured from the V’s point', () => {
    const { solution } = cradle({ fields: 'holds: [post], flat: 6' });
    expect(solution.groove.depth).toBe(Math.ceil((32 / 2.25 - 3) * 2) / 2);
  });

  it('makes the block four diameters long beyond its stop, at least 150 mm', () => {
    expect(cradle({ fields: 'holds: [post]' }).solution.block.length).toBe(150);
    expect(cradle({ fields: 'holds: [60], stop: 12' }).solution.block.length).toBe(255);
  });

  it('gives floor and walls 12 mm or more, on whole steps of a rule', () => {
    for (const units of ['mm', 'inch'] as const) {
      const { block } = cradle({ fields: 'holds: [leg, rail]', units }).solution;
      const step = units === 'mm' ? 5 : 25.4 / 4;
      expect(block.floor).toBeGreaterThanOrEqual(12);
      expect(block.wall).toBeGreaterThanOrEqual(12);
      for (const size of [block.length, block.width, block.height]) expect(Math.abs(size / step - Math.round(size / step))).toBeLessThan(1e-9);
    }
  });
});
