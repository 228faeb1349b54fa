import fc from 'fast-check';
import { describe, it } from 'vitest';
import { boreOnMain } from '../../src/geometry/bore-on-main.js';
import { curveLength } from './curve-length.js';
import { planeCutCurve } from './plane-cut.js';
import type { SaddleJoint } from '../../src/geometry/saddle.js';
import { saddleCurve, wingParameters } from '../../src/geometry/saddle-curve.js';
import { anyJoint } from './arbitrary.js';
import { degrees, near, nearPoint } from './near.js';

const TURN = 2 * Math.PI;
const WINGS = wingParameters(0, TURN);
const edge = (j: SaddleJoint): number => curveLength(saddleCurve(j, 0), 0, TURN, WINGS);
const hole = (j: SaddleJoint): number => curveLength(boreOnMain(j), 0, TURN, WINGS);

describe('the length of the cut edge', () => {
  // Computed from the length integral at 30 digits, R = 1.
  it.each([
    [0.25, 90, 0, 1.5771127945], [0.5, 90, 0, 3.1972444568], [0.75, 90, 0, 4.9439868806], [0.9, 90, 0, 6.1748933280],
    [0.5, 60, 0, 3.4484420278], [0.5, 45, 0, 3.8843643874], [0.5, 90, 0.25, 3.2773443529], [0.5, 60, 0.25, 3.5419996220],
  ])('with r/R %d at %d°, offset %d is %d', (branch, angle, offset, length) =>
    near(edge({ main: 1, branch, angle: degrees(angle), offset }), length, 6e-11));

  // Two half ellipses, tilted 90° − θ/2 and θ/2, by DLMF 19.30; the last is OEIS A105419.
  it.each([[30, 11.515064443], [45, 9.2343155228], [60, 8.2331829166], [75, 7.7752566537], [90, 7.6403955781]])(
    'of equal rounds at %d° is %d r', (angle, length) => near(edge({ main: 1, branch: 1, angle: degrees(angle), offset: 0 }), length, 6e-11));

  it('is the girth round the hole on the main (Atkins, Practical Sheet and Plate Metal Work, ch. III)', () => {
    fc.assert(fc.property(anyJoint, (j) => near(hole(j), edge(j), 1e-8 * edge(j))), { numRuns: 60 });
  });

  it('tends to the plane cut as the main grows flat', () => {
    const cut = curveLength(planeCutCurve({ radius: 1, tilt: degrees(60) }, 0), 0, TURN);
    near(edge({ main: 1e6, branch: 1, angle: degrees(30), offset: 0 }), cut, 1e-5);
  });
});

describe('planeCutCurve', () => {
  it('stands r·cos φ·tan tilt up the paper at φ·(r + t/2) along it', () => {
    const { point } = planeCutCurve({ radius: 10, tilt: degrees(30) }, 0.2);
    for (const at of [0, 40, 180, 250]) nearPoint(point(degrees(at)), { x: degrees(at) * 10.1, y: -10 * Math.cos(degrees(at)) * Math.tan(degrees(30)) }, 1e-12);
  });
  // 4·sec·E(sin²) by DLMF 19.30; 45° is OEIS A105419, 60° the 2 × 1 ellipse of the code-golf collection.
  it.each([[5, 6.2951914], [10, 6.33174218], [15, 6.39448891], [22.5, 6.54458864], [30, 6.77791761], [45, 7.64039558], [60, 9.68844822]])(
    'tilted %d° is as long as its ellipse', (tilt, length) =>
      near(curveLength(planeCutCurve({ radius: 1, tilt: degrees(tilt) }, 0), 0, TURN), length, 6e-9));
});

describe('boreOnMain', () => {
  it('has the published half-girths along a 323.8 mm header for a 202.74 mm bore', () => {
    // The same published example prints 39.2, 74.3, 99.8 and 109.5; its last digit is loose.
    const { point } = boreOnMain({ main: 161.9, branch: 101.37, angle: degrees(90), offset: 0 });
    [[22.5, 39.2], [45, 74.3], [67.5, 99.8], [90, 109.5]].forEach(([at, girth]) => near(point(degrees(at!)).x, girth!, 0.1));
    near(point(degrees(67.5)).x, 99.8675, 6e-5);
  });
  it('of a bore as wide as the main is u = |cos x| (Apostol & Mnatsakanian 2007, example 8)', () => {
    const { point } = boreOnMain({ main: 1, branch: 1, angle: degrees(90), offset: 0 });
    for (let a = 0; a < 360; a += 9) near(Math.abs(point(degrees(a)).y), Math.abs(Math.cos(point(degrees(a)).x)), 1e-12);
  });
});
