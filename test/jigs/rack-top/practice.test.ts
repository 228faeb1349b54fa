import { expect, test } from 'vitest';
import { splineThickness } from '../../../src/jigs/rack-top/practice.js';

test.each([
  // Board, and what stands nearest a third of it among the sizes that splines are bought or planed to (common practice).
  ['mm', 9, 3], ['mm', 13, 4], ['mm', 18, 6], ['mm', 25, 8], ['mm', 29, 10], ['mm', 38, 12], ['mm', 45, 15], ['mm', 60, 20], ['mm', 90, 25], ['mm', 5, 5 / 3],
  ['inch', 25.4 * 0.375, 25.4 / 8], ['inch', 25.4 * 0.55, 25.4 * 0.1875], ['inch', 25.4 * 0.75, 25.4 / 4], ['inch', 25.4 * 1.125, 25.4 * 0.375],
  ['inch', 25.4 * 1.5, 25.4 / 2], ['inch', 25.4 * 2.25, 25.4 * 0.75], ['inch', 25.4 * 3.5, 25.4], ['inch', 25.4 / 8, 25.4 / 24],
] as const)('in %s a board of %d mm takes a spline of %d mm', (units, board, spline) => {
  expect(splineThickness(board, units)).toBeCloseTo(spline, 9);
});
