import { describe, expect, it } from 'vitest';
import { carrierCrossings, type Carrier } from '../../src/geometry/carrier-crossings.js';
import { point } from '../../src/geometry/point.js';

const circle = (x: number, y: number, radius: number): Carrier => ({ kind: 'circle', centre: point(x, y), radius });
const line = (x: number, y: number, dx: number, dy: number): Carrier => ({ kind: 'line', at: point(x, y), along: point(dx, dy) });
const found = (a: Carrier, b: Carrier): string[] => carrierCrossings(a, b).map(({ x, y }) => `${x.toFixed(9)} ${y.toFixed(9)}`.replaceAll('-0.000000000', '0.000000000')).sort();
const at = (...points: readonly (readonly [number, number])[]): string[] => points.map(([x, y]) => `${x.toFixed(9)} ${y.toFixed(9)}`).sort();

describe('carrierCrossings', () => {
  it('of two circles are the two corners of 3-4-5 triangles, whichever is asked first', () => {
    const [a, b] = [circle(0, 0, 5), circle(6, 0, 5)];
    expect(found(a, b)).toEqual(at([3, 4], [3, -4]));
    expect(found(b, a)).toEqual(at([3, 4], [3, -4]));
    // 13 and 15 about centres 14 apart: 5 along from the one, 12 beside.
    expect(found(circle(2, 1, 13), circle(2, 15, 15))).toEqual(at([14, 6], [-10, 6]));
    // The 3-4-5 triangles again, turned by the angle of another: along (0.8, 0.6), 3 that way and 4 to either side.
    expect(found(circle(1, 2, 5), circle(5.8, 5.6, 5))).toEqual(at([1 + 2.4 - 2.4, 2 + 1.8 + 3.2], [1 + 2.4 + 2.4, 2 + 1.8 - 3.2]));
    expect(found(circle(5.8, 5.6, 5), circle(1, 2, 5))).toEqual(at([1, 7], [5.8, 0.6]));
    // They touch: once from outside, once from within.
    expect(new Set(found(circle(1, 2, 5), circle(10.6, 9.2, 7)))).toEqual(new Set(at([5, 5])));
    expect(new Set(found(circle(1, 2, 10), circle(4.2, 4.4, 6)))).toEqual(new Set(at([9, 8])));
  });
  it('of a line and a circle are where it goes in and comes out', () => {
    expect(found(line(-9, 3, 2, 0), circle(0, 0, 5))).toEqual(at([-4, 3], [4, 3]));
    expect(found(circle(0, 0, 5), line(0, 7, 1, -1))).toEqual(at([3, 4], [4, 3]));
    // Slanting, off the origin, however long the line's own step: foot (4, 7) on the line, 3 from the centre, 4 either way along (0.8, 0.6).
    for (const k of [0.001, 1, 700]) expect(found(line(4 + 8, 7 + 6, 0.8 * k, 0.6 * k), circle(4 + 1.8, 7 - 2.4, 5))).toEqual(at([7.2, 9.4], [0.8, 4.6]));
    expect(new Set(found(line(1, 1, 0.8, 0.6), circle(1 + 8 - 3, 1 + 6 + 4, 5)))).toEqual(new Set(at([9, 7])));
  });
  it('of two lines is one point', () => {
    expect(found(line(0, 0, 1, 1), line(4, 0, -3, 3))).toEqual(at([2, 2]));
    // y = x/2 + 1 and y = 3x − 9 meet at (4, 3), whatever their steps.
    for (const [k, m] of [[1, 1], [1e-4, 1e4], [1e5, 1e5], [1e-6, 1e-6]] as const) expect(found(line(10, 6, 2 * k, k), line(5, 6, -m, -3 * m))).toEqual(at([4, 3]));
  });
  it('are none of what is apart, inside, parallel or the same', () => {
    expect([found(circle(0, 0, 5), circle(11, 0, 5)), found(circle(0, 0, 5), circle(1, 0, 2)), found(circle(0, 0, 5), circle(0, 0, 5))]).toEqual([[], [], []]);
    expect([found(line(0, 0, 1, 0), line(0, 1, -2, 0)), found(line(0, 6, 1, 0), circle(0, 0, 5))]).toEqual([[], []]);
  });
});
