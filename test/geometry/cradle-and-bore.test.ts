import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GeometryError } from '../../src/errors/geometry-error.js';
import { markShift, openingLength, pointLeadsLimit, runOnFlat, runOnRound, sagitta, throughLength } from '../../src/geometry/bore.js';
import { carrierTurn, faceLength, heelToToe, toeShift } from '../../src/geometry/steep-cut.js';
import { gimballedSecondTilt, rakeAndSplay, resultantTilt } from '../../src/geometry/tilt.js';
import { apexDepth, gapOverFlat, grooveWidth, proudOf, veeContact } from '../../src/geometry/vee.js';
import { degrees, near } from './near.js';

const toDegrees = (angle: number): number => (angle * 180) / Math.PI;

describe('veeContact', () => {
  it('puts a 1.000 in plug 0.93058 in above the apex of a 65° V', () => {
    // US Army Ordnance course OD1640, Machine Shop Calculation, lesson 2 task 3: prints 0.9306, and 1.8306 over all.
    near(veeContact(degrees(65), 0.5).axisHeight, 0.9305795, 6e-8);
    near(veeContact(degrees(65), 0.5).axisHeight + 0.4 + 0.5, 1.8306, 6e-5);
  });
  it('has the three-wire constants of 60°, 55° and 29° threads', () => {
    // F. D. Jones, Turning and Boring, p. 88: 3 and 3.1657. 4.9939: Machinery's Handbook, from memory.
    [[60, 3], [55, 3.1657], [29, 4.9939]].forEach(([angle, factor]) => near(veeContact(degrees(angle!), 1).axisHeight + 1, factor!, 5e-5));
  });
  it.each([
    [60, 25, 21.6506351, 10.8253175], [90, 17.6776695, 12.5, 8.8388348], [120, 14.4337567, 7.2168784, 6.25],
  ])('holds a 25 mm round in %d° as computed from the closed form', (angle, axis, flank, half) => {
    const c = veeContact(degrees(angle), 12.5);
    near(c.axisHeight, axis, 6e-8);
    near(c.flankLength, flank, 6e-8);
    near(c.contactHalfWidth, half, 6e-8);
    near(Math.hypot(c.contactHalfWidth, c.contactHeight), flank, 6e-8);
    near(Math.hypot(c.contactHalfWidth, c.axisHeight - c.contactHeight), 12.5, 1e-12);
  });
  it('refuses no angle and a flat one', () => { for (const a of [0, Math.PI, NaN]) expect(() => veeContact(a, 5)).toThrow(GeometryError); });
});

describe('a groove', () => {
  const vee = { includedAngle: degrees(90), depth: 10, flat: 4 };
  it('is as wide and as deep as drawn', () => {
    near(grooveWidth(vee), 24, 1e-12);
    near(apexDepth(vee), 12, 1e-12);
  });
  it('clears its flat by what the round’s bottom stands over it, at angles where sine and cosine differ too', () => {
    // At 60° the axis of a round of 10 stands 20 over the point, its bottom 10; a flat of 4 lies 2/tan 30° over the point.
    near(gapOverFlat({ includedAngle: degrees(60), depth: 10, flat: 4 }, 10), 10 - 2 * Math.sqrt(3), 1e-12);
    near(proudOf({ includedAngle: degrees(60), depth: 10, flat: 4 }, 10), 30 - 10 - 2 * Math.sqrt(3), 1e-12);
    near(grooveWidth({ includedAngle: degrees(60), depth: 10, flat: 4 }), 20 / Math.sqrt(3) + 4, 1e-12);
    // w/2·cos h ÷ (1 − sin h): at 90° a flat of 4 is just cleared by 2/(√2 − 1).
    near(gapOverFlat(vee, 2 / (Math.SQRT2 - 1)), 0, 1e-12);
  });
  it('leaves a round proud by what its top stands over the groove', () => near(proudOf(vee, 12.5), 12.5 * (Math.SQRT2 + 1) - 12, 1e-12));
});

describe('a steep cut', () => {
  const cut = { diameter: 32, sharpAngle: degrees(24), sawReading: degrees(45) };
  it('turns the carrier by what the saw leaves', () => near(toDegrees(carrierTurn(cut)), 21, 1e-12));
  it('has a face and a heel-to-toe that close on the diameter', () => near(Math.hypot(heelToToe(cut), cut.diameter), faceLength(cut), 1e-12));
  it('moves its toe as the heel-to-toe does for half a degree', () => {
    const moved = heelToToe({ ...cut, sharpAngle: degrees(23.5) }) - heelToToe({ ...cut, sharpAngle: degrees(24.5) });
    near(2 * toeShift(cut, degrees(0.5)), moved, 1e-3 * moved);
  });
});

describe('resultantTilt', () => {
  // Formulae of Machinery's Handbook, 31st ed., p. 121, fig. 6; computed.
  it.each([[5, 5, 7.0532267, 45], [10, 10, 14.001942, 45], [10, 15, 17.784244, 56.652635], [15, 15, 20.753571, 45],
    [12, 8, 14.29574, 33.472384], [14, 22, 25.396723, 58.320913], [20, 10, 22.020002, 25.848072]])(
    'of rake %d° and splay %d° is %d° along %d°', (rake, splay, resultant, sight) => {
      const tilt = resultantTilt(degrees(rake), degrees(splay));
      near(toDegrees(tilt.resultant), resultant, 6e-7);
      near(toDegrees(tilt.sightLine), sight, 6e-7);
      const back = rakeAndSplay(tilt);
      near(toDegrees(back.rake), rake, 1e-10);
      near(toDegrees(back.splay), splay, 1e-10);
    });
  it('needs 14.782166° on a gimbal tilted by 10° for a splay of 15°', () => near(toDegrees(gimballedSecondTilt(degrees(10), degrees(15))), 14.782166, 6e-7));
});

describe('a bore at an angle', () => {
  const bore = { bit: 12, angle: degrees(60) };
  it('opens b/sin θ long and shifts its marks by T/tan θ', () => {
    near(openingLength(bore), 24 / Math.sqrt(3), 1e-12);
    near(throughLength(30, degrees(60)) ** 2, 30 * 30 + markShift(30, degrees(60)) ** 2, 1e-9);
    expect(markShift(30, Math.PI / 2)).toBe(0);
  });
  it('runs b/tan θ on a flat and the sagitta on a round bored square', () => {
    near(runOnFlat(bore), 12 / Math.sqrt(3), 1e-12);
    near(runOnRound({ bit: 12, angle: Math.PI / 2 }, 17), sagitta(17, 12), 1e-12);
    near(runOnRound(bore, 1e7), runOnFlat(bore), 1e-6);
  });
  it('runs no farther on a round than b/tan θ and the sagitta together', () => {
    fc.assert(fc.property(fc.integer({ min: 15, max: 90 }), fc.integer({ min: 2, max: 100 }), (angle, share) => {
      const each = { bit: (40 * share) / 100, angle: degrees(angle) };
      expect(runOnRound(each, 20)).toBeLessThanOrEqual(runOnFlat(each) + sagitta(20, each.bit) + 1e-9);
    }));
  });
  it('refuses no angle, more than square, and a bit wider than the round', () => {
    for (const angle of [0, degrees(91), NaN]) expect(() => openingLength({ bit: 5, angle })).toThrow(GeometryError);
    expect(() => sagitta(5, 10.01)).toThrow(GeometryError);
  });

  it('limits the tilt by its point', () => {
    near(toDegrees(pointLeadsLimit(12, 6)), 45, 1e-12);
  });
});
