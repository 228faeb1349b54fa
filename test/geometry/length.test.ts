import { describe, expect, it } from 'vitest';
import { pathLength } from '../../src/geometry/length.js';
import { integrate } from '../../src/geometry/integrate.js';
import { circle, ellipse, rectangle } from '../../src/geometry/shapes.js';
import { point } from '../../src/geometry/point.js';
import { near } from './near.js';

const round = (a: number, b: number): number => pathLength(ellipse(point(3, -7), a, b, 0.4));

describe('pathLength', () => {
  it.each([
    // OEIS A334849: circumference of 4x² + 9y² = 36.
    [3, 2, 15.8654395892905897913],
    [2, 3, 15.8654395892905897913],
    // OEIS A274014: ellipse of eccentricity sin(π/12), a = 1.
    [1, Math.cos(Math.PI / 12), 6.176601987658693464745684],
    // scipy.special.ellipe documentation, Examples.
    [3.5, 2.1, 17.868899204378693],
  ])('of an ellipse %d × %d is the published circumference', (a, b, length) => near(round(a, b), length, 1e-12 * length));

  it.each([
    // "Circumference of an ellipse", code-golf collection, ten digits.
    [1.2, 1, 6.925791195], [1.5, 1, 7.932719795], [2, 1, 9.688448220], [3, 1, 13.36489322],
    [5, 1, 21.01004454], [20, 10, 96.88448220], [123, 45, 556.6359936],
  ])('of an ellipse %d × %d agrees to ten digits', (a, b, length) => near(round(a, b), length, 6e-10 * length));

  it('of a circle is 2πr to the last bits', () => near(pathLength(circle(point(0, 0), 300)), 600 * Math.PI, 1e-12));

  it('counts the run that closes a path', () => expect(pathLength({ ...rectangle(0, 0, 3, 4), closed: true })).toBe(14));

  it('of a cubic with a cusp is 1e-9 near the sum of its two halves in closed form', () => {
    // x = 3t(1−t)², y = 3t²(1−t)… a straight there-and-back: out to 4/9 at t = 1/3 and back.
    const there = pathLength({ start: point(0, 0), closed: false, segments: [{ kind: 'cubic', c1: point(1, 0), c2: point(0, 0), to: point(0, 0) }] });
    near(there, 8 / 9, 1e-9);
  });
});

describe('integrate', () => {
  it('gives the arc length of sin x from 0 to 1 (OEIS A334844)', () =>
    near(integrate((t) => Math.hypot(1, Math.cos(t)), 0, 1), 1.311442498215547045545494, 1e-14));
  it('gives the arc length of a whole period of sin x (OEIS A105419)', () =>
    near(integrate((t) => Math.hypot(1, Math.cos(t)), 0, 2 * Math.PI), 7.640395578055424035809524, 1e-13));
  it('runs backwards too, and is exact for what Gauss’s rule of ten points is', () => {
    near(integrate((x) => x * x + 1, 0, 1), 4 / 3, 1e-14);
    near(integrate((x) => x * x + 1, 1, 0), -4 / 3, 1e-14);
    near(integrate((x) => 20 * x ** 19, 0, 1), 1, 1e-13);
  });
});
