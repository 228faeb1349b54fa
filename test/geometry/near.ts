import { expect } from 'vitest';
import type { Point } from '../../src/geometry/point.js';

/** Holds `actual` to within `by` of `expected`; NaN never passes. */
export const near = (actual: number, expected: number, by: number): void => {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(by);
};

export const nearPoint = (actual: Point, expected: Point, by: number): void => {
  expect(Math.hypot(actual.x - expected.x, actual.y - expected.y), `${JSON.stringify(actual)} against ${JSON.stringify(expected)}`).toBeLessThanOrEqual(by);
};

export const degrees = (angle: number): number => (angle * Math.PI) / 180;
