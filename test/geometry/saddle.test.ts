import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GeometryError } from '../../src/errors/geometry-error.js';
import { planeCutHeight } from './plane-cut.js';
import { cuspParameters, saddleHeight, saddleSlope, type SaddleJoint } from '../../src/geometry/saddle.js';
import { saddleHeights, wingAngle, woodAngle } from '../../src/geometry/saddle-heights.js';
import { hollowDepth, sawCutHeight } from '../../src/geometry/saw-cut.js';
import { anyJoint, easyJoint } from './arbitrary.js';
import { degrees, near } from './near.js';

const joint = (main: number, branch: number, angle: number, offset = 0): SaddleJoint => ({ main, branch, angle: degrees(angle), offset });
const phi = fc.integer({ min: 0, max: 6283 }).map((n) => n / 1000);

describe('saddleHeight', () => {
  it('gives the published depths of a 202.74 mm branch on a 323.8 mm header', () => {
    // A published worked example for pipe inspectors: header OD 323.8, branch bore 202.74, 90°; depths to 0.001 mm.
    const pipe = joint(161.9, 101.37, 90);
    const depth = (deg: number): number => 161.9 - saddleHeight(pipe, degrees(deg));
    [[22.5, 4.716], [45, 16.732], [67.5, 29.837], [90, 35.663]].forEach(([at, expected]) => near(depth(at!), expected!, 0.0006));
  });

  // Computed at 30 digits from the closed form, and confirmed by a mesh boolean: D 50, d 25.
  it.each([
    [60, 0, [36.0843918, 35.0016686, 32.1061899, 28.3647036, 25, 22.8411441, 21.8999826, 21.6666161, 21.6506351]],
    [45, 0, [47.8553391, 46.2505897, 41.9107262, 36.1405926, 30.6186218, 26.5735068, 24.2330566, 23.1536014, 22.8553391]],
    [60, 5, [35.5011496, 33.2327237, 29.1443641, 24.3996275, 20.6155281, 18.876068, 18.9381568, 19.8976713, 21.0673929,
      22.1989052, 23.4220513, 25.0978020, 27.5378527, 30.6213616, 33.6282586, 35.5339576]],
  ])('at %d° with offset %d gives the ordinates every 22.5°', (angle, offset, ordinates) => {
    ordinates.forEach((z, i) => near(saddleHeight(joint(25, 12.5, angle, offset), degrees(22.5 * i)), z, 6e-8));
  });

  it('gives 12.5·√3 at the wings of D 50, d 25 at 90°', () => near(saddleHeight(joint(25, 12.5, 90), degrees(90)), 12.5 * Math.sqrt(3), 1e-12));

  it('of equal rounds at 90° is |cos φ| (Apostol & Mnatsakanian 2007, p. 397)', () => {
    for (let a = 0; a <= 360; a += 7) near(saddleHeight(joint(1, 1, 90), degrees(a)), Math.abs(Math.cos(degrees(a))), 1e-15);
  });

  it('of equal rounds lies in the two bisector planes, of slopes tan(90° − θ/2) and −tan(θ/2)', () => {
    // T. Klemm, HP Museum forum, 16 September 2013, for 45°: slopes 2.41421356 and −0.41421356.
    near(saddleHeight(joint(1, 1, 45), 0), 2.41421356, 5e-9);
    near(saddleHeight(joint(1, 1, 45), Math.PI), 0.41421356, 5e-9);
    fc.assert(fc.property(fc.integer({ min: 8, max: 90 }), phi, (angle, at) => {
      const across = Math.cos(at);
      const slope = across >= 0 ? Math.tan(degrees(90 - angle / 2)) : -Math.tan(degrees(angle / 2));
      near(saddleHeight(joint(1, 1, angle), at), slope * across, 1e-13);
    }));
  });

  it('at 90° keeps z² − x² = R² − r² (Marin, intersection of cylindrical surfaces, eq. 3)', () => {
    fc.assert(fc.property(easyJoint, phi, ({ main, branch }, at) => {
      const z = saddleHeight({ main, branch, angle: Math.PI / 2, offset: 0 }, at);
      near(z * z - (branch * Math.cos(at)) ** 2, main * main - branch * branch, 1e-11 * main * main);
    }));
  });

  it('puts every point on the main as well as on the branch', () => {
    fc.assert(fc.property(easyJoint, phi, (j, at) => {
      const lift = saddleHeight(j, at) * Math.sin(j.angle) - j.branch * Math.cos(at) * Math.cos(j.angle);
      near(Math.hypot(lift, j.offset + j.branch * Math.sin(at)), j.main, 1e-12 * j.main);
    }));
  });

  it('mirrors with the offset, and with the angle beyond square', () => {
    fc.assert(fc.property(easyJoint, phi, (j, at) => {
      near(saddleHeight({ ...j, offset: -j.offset }, -at), saddleHeight(j, at), 1e-12 * j.main / j.angle);
      near(saddleHeight({ ...j, angle: Math.PI - j.angle }, Math.PI - at), saddleHeight(j, at), 1e-12 * j.main / j.angle);
    }));
  });

  it('tends to the plane cut tilted 90° − θ as the main grows flat', () => {
    fc.assert(fc.property(fc.integer({ min: 20, max: 90 }), phi, (angle, at) => {
      const main = 1e9;
      const above = saddleHeight(joint(main, 10, angle), at) - main / Math.sin(degrees(angle));
      near(above, planeCutHeight({ radius: 10, tilt: degrees(90 - angle) }, at), 1e-6);
    }));
  });

  it('refuses a branch that the main does not meet all round, with the figures; forgives 1e-12', () => {
    expect(() => saddleHeight(joint(20, 15, 60, 5.001), 0)).toThrow(GeometryError);
    expect(() => saddleHeight(joint(20, 15, 60, -5.001), 0)).toThrow(GeometryError);
    expect(saddleHeight(joint(20, 15, 60, 5 + 1e-12), degrees(90))).not.toBeNaN();
    try { saddleHeight(joint(20, 20.5, 60), 0); } catch (error) { near((error as GeometryError).figures['excess']!, 0.5, 1e-12); }
    for (const offset of [NaN, Infinity, -Infinity]) {
      expect(() => saddleHeight(joint(20, 15, 60, offset), 0)).toThrow(expect.objectContaining({ code: 'saddle-request' }));
    }
    for (const angle of [0, 180, NaN, -4]) expect(() => saddleHeight(joint(20, 10, angle), 0)).toThrow(GeometryError);
  });
});

describe('saddleSlope', () => {
  it('is the difference quotient of the height', () => {
    fc.assert(fc.property(easyJoint, phi, (j, at) => {
      const h = 1e-5;
      near(saddleSlope(j, at), (saddleHeight(j, at + h) - saddleHeight(j, at - h)) / (2 * h), 1e-5 * j.main / j.angle);
    }));
  });
  it('has a slope to each side of a cusp', () => {
    near(saddleSlope(joint(10, 10, 90), Math.PI / 2, -1), -10, 1e-12);
    near(saddleSlope(joint(10, 10, 90), Math.PI / 2, 1), 10, 1e-12);
    near(saddleSlope(joint(10, 6, 90, -4), 1.5 * Math.PI, -1), -saddleSlope(joint(10, 6, 90, -4), 1.5 * Math.PI, 1), 1e-12);
  });
  it('is finite everywhere', () => {
    fc.assert(fc.property(anyJoint, phi, (j, at) => {
      for (const p of [at, Math.PI / 2, 1.5 * Math.PI]) for (const side of [-1, 1] as const) expect(Number.isFinite(saddleSlope(j, p, side))).toBe(true);
    }));
  });
});

describe('cuspParameters', () => {
  it('are both wings at equal radii, one at an offset that just fits, none inside', () => {
    expect(cuspParameters(joint(10, 10, 60))).toEqual([Math.PI / 2, 1.5 * Math.PI]);
    expect(cuspParameters(joint(10, 6, 60, 4))).toEqual([Math.PI / 2]);
    expect(cuspParameters(joint(10, 6, 60, -4))).toEqual([1.5 * Math.PI]);
    expect(cuspParameters(joint(10, 6, 60, 3.99))).toEqual([]);
  });
});

describe('saddleHeights', () => {
  it('are the ends and extremes of the edge', () => {
    const h = saddleHeights(joint(25, 12.5, 60));
    near(h.throat, (25 + 6.25) / Math.sin(degrees(60)), 1e-12);
    near(h.longPoint, (25 - 6.25) / Math.sin(degrees(60)), 1e-12);
    near(h.rightWing, Math.sqrt(25 * 25 - 12.5 * 12.5) / Math.sin(degrees(60)), 1e-12);
    near(h.greatest, h.throat, 1e-12);
  });
  it('have each wing by its own side of the offset', () => {
    // √(R² − (e ± r)²) ÷ sin θ: at φ = ±90° the branch’s own lift, r·cos φ, is 0.
    const h = saddleHeights(joint(25, 12.5, 60, 5));
    near(h.rightWing, Math.sqrt(25 * 25 - 17.5 * 17.5) / Math.sin(degrees(60)), 1e-12);
    near(h.leftWing, Math.sqrt(25 * 25 - 7.5 * 7.5) / Math.sin(degrees(60)), 1e-12);
    expect(h.least).toBeLessThan(h.rightWing);
  });
  it('find a crest that lies just before φ = 360°', () => {
    const j = { main: 1.5, branch: 0.075, angle: 0.14, offset: 0.001425 };
    expect(saddleHeights(j).greatest).toBeGreaterThanOrEqual(saddleHeight(j, 6.282));
  });
  it('hold every height between them', () => {
    fc.assert(fc.property(anyJoint, phi, (j, at) => {
      const { least, greatest } = saddleHeights(j);
      const z = saddleHeight(j, at);
      expect(z).toBeGreaterThanOrEqual(least - 1e-9);
      expect(z).toBeLessThanOrEqual(greatest + 1e-9);
    }), { numRuns: 40 });
  });
});

describe('woodAngle', () => {
  it('is 180° − θ at the throat, θ at the long point, acos(r/R) at the wings', () => {
    const j = joint(20, 15, 35);
    near(woodAngle(j, 0), degrees(145), 1e-12);
    near(woodAngle(j, Math.PI), degrees(35), 1e-12);
    near(woodAngle(j, Math.PI / 2), Math.acos(0.75), 1e-12);
    near(wingAngle(j), Math.acos(0.75), 1e-12);
    near(wingAngle(joint(20, 20, 35)), 0, 1e-12);
    near(wingAngle(joint(20, 10, 35, -4)), woodAngle(joint(20, 10, 35, -4), -Math.PI / 2), 1e-12);
  });
});

describe('sawCutHeight', () => {
  it('lies nowhere above the saddle and meets it at the wing', () => {
    fc.assert(fc.property(anyJoint, phi, (j, at) => {
      expect(sawCutHeight(j, at)).toBeLessThanOrEqual(saddleHeight(j, at) + 1e-6);
      const wing = j.offset >= 0 ? Math.PI / 2 : -Math.PI / 2;
      near(sawCutHeight(j, wing), saddleHeight(j, wing), 1e-6 * j.main);
    }));
  });
  it('leaves a hollow of R − √(R² − r²)', () => near(hollowDepth(joint(25, 12.5, 40)), 25 - 12.5 * Math.sqrt(3), 1e-12));
  it('leaves the greatest difference of the two, square to the main', () => {
    fc.assert(fc.property(easyJoint, (j) => {
      let most = 0;
      for (let i = 0; i < 3600; i += 1) most = Math.max(most, saddleHeight(j, degrees(i / 10)) - sawCutHeight(j, degrees(i / 10)));
      near(hollowDepth(j), most * Math.sin(j.angle), 1e-4 * j.main);
    }), { numRuns: 20 });
  });
});
