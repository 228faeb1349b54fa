import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carrierOf } from '../../../src/jigs/v-cradle/carrier.js';
import { carrierPlan } from '../../../src/jigs/v-cradle/carrier-plan.js';
import { distance, dot, subtract } from '../../../src/geometry/point.js';
import { radians } from '../../../src/units/units.js';
import { cradle, figure } from './cradle.js';

describe('carrier values', () => {
  it('follow the closed form: α = 90° − (μ + κ), d / sin α, d / tan α, d·δ / sin²α', () => {
    const { values } = cradle({ fields: 'holds: [post, rail], carrier: { sharpAngle: 20, sawReading: 15, round: rail }' });
    const carrier = values['carrier'];
    expect(figure(carrier, 'turn')).toBeCloseTo(55, 9);
    expect(figure(carrier, 'endCut')).toBeCloseTo(35, 9);
    expect(figure(carrier, 'faceLength')).toBeCloseTo(24 / Math.sin(Math.PI / 9), 9);
    expect(figure(carrier, 'heelToToe')).toBeCloseTo(24 / Math.tan(Math.PI / 9), 9);
    expect(figure(carrier, 'toeShift')).toBeCloseTo((24 * Math.PI) / 360 / Math.sin(Math.PI / 9) ** 2, 9);
  });

  it('take the thickest round where none is named', () => {
    const { solution } = cradle({ fields: 'holds: [rail, post], carrier: { sharpAngle: 30 }' });
    expect(solution.carrier!.round.name).toBe('post');
  });

  it('give a toe shift that a cut half a degree out really makes, to first order', () => {
    const { toeShift } = cradle({ fields: 'holds: [post], carrier: { sharpAngle: 20 }' }).solution.carrier!;
    const at = (deg: number): number => 32 / Math.tan(radians(deg));
    expect((at(19.5) - at(20.5)) / 2).toBeCloseTo(toeShift, 2);
  });
});

describe('carrierOf(request, grooveWidth, units)', () => {
  const any = fc.record({
    diameter: fc.double({ min: 6, max: 90, noNaN: true }), sharp: fc.double({ min: 8, max: 60, noNaN: true }),
    reading: fc.double({ min: 0, max: 1, noNaN: true }), units: fc.constantFrom('mm' as const, 'inch' as const),
  });
  const made = ({ diameter, sharp, reading, units }: { diameter: number; sharp: number; reading: number; units: 'mm' | 'inch' }) => carrierOf(
    { round: { name: 'r', diameter }, sharpAngle: radians(sharp), sawReading: radians(reading * Math.max(0, 90 - sharp - 21)) }, 0.9 * diameter, units,
  );

  it('sizes itself so that hands keep 150 mm off and 50 mm of seat is left', () => {
    fc.assert(fc.property(any, (input) => {
      const c = made(input);
      expect(c.handDistance).toBeGreaterThanOrEqual(150 - 1e-6);
      expect(c.seat).toBeGreaterThanOrEqual(50 - 1e-6);
      expect(c.seatSide + c.bladeSide).toBeCloseTo(c.width, 9);
    }));
  });

  it('agrees with its own plan on the saw', () => {
    fc.assert(fc.property(any, (input) => {
      const c = made(input);
      const plan = carrierPlan(c);
      expect(Math.acos(dot(plan.away, plan.blade))).toBeCloseTo(c.sharpAngle, 9);
      expect(distance(plan.toe, plan.heel)).toBeCloseTo(c.faceLength, 6);
      expect(dot(subtract(plan.heel, plan.toe), plan.away)).toBeCloseTo(c.heelToToe, 6);
      expect(Math.abs(dot(subtract(plan.heel, plan.toe), plan.across))).toBeCloseTo(c.round.diameter, 6);
      // Seat: from the carrier's far corner on the fence to the blade's line, which meets the fence at the origin.
      expect(-plan.onFence(-c.seatSide).x).toBeCloseTo(c.seat, 6);
      expect(distance(plan.onFence(0), plan.crossing)).toBeCloseTo(c.endToBlade, 6);
      // The nearer corner of the far end, square off the blade's line: side B's.
      const off = (side: number): number => {
        const far = plan.at(c.length - c.endToBlade, side);
        return Math.abs(far.x * plan.blade.y - far.y * plan.blade.x);
      };
      expect(off(c.bladeSide)).toBeCloseTo(c.handDistance, 6);
      expect(off(-c.seatSide)).toBeGreaterThan(c.handDistance);
      // The blank reaches along side B from the far end to the corner on the fence; side A is what is left on the other.
      expect(distance(plan.onFence(c.bladeSide), plan.at(c.length - c.endToBlade, c.bladeSide))).toBeCloseTo(c.blankLength, 6);
      expect(distance(plan.onFence(-c.seatSide), plan.at(c.length - c.endToBlade, -c.seatSide))).toBeCloseTo(c.length - c.seatSide / Math.tan(c.turn), 6);
      expect(dot(subtract(plan.at(c.length - c.endToBlade, -c.seatSide), plan.onFence(-c.seatSide)), plan.away)).toBeGreaterThanOrEqual(50 - 1e-6);
    }));
  });
});
