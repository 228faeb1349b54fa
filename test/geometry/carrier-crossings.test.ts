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
  });
  it('of a line and a circle are where it goes in and comes out', () => {
    expect(found(line(-9, 3, 2, 0), circle(0, 0, 5))).toEqual(at([-4, 3], [4, 3]));
    expect(found(circle(0, 0, 5), line(0, 7, 1, -1))).toEqual(at([3, 4], [4, 3]));
  });
  it('of two lines is one point', () => expect(found(line(0, 0, 1, 1), line(4, 0, -3, 3))).toEqual(at([2, 2])));
  it('are none of what is apart, inside, parallel or the same', () => {
    expect([found(circle(0, 0, 5), circle(11, 0, 5)), found(circle(0, 0, 5), circle(1, 0, 2)), found(circle(0, 0, 5), circle(0, 0, 5))]).toEqual([[], [], []]);
    expect([found(line(0, 0, 1, 0), line(0, 1, -2, 0)), found(line(0, 6, 1, 0), circle(0, 0, 5))]).toEqual([[], []]);
  });
});
