import { expect, test } from 'vitest';
import type { Board } from '../../../src/jigs/rack-top/board.js';
import { edgeDistance, edgeStart, endDistance, endInset } from '../../../src/jigs/rack-top/board.js';
import { findingsOf } from './rack.js';

const plain: Board = { length: 800, width: 200, thickness: 27, endRadius: undefined, cornerRadius: 0 };

test('an end stands in by its corner’s arc or its own, alike from either edge', () => {
  // r − √(r² − (r − y)²) in a corner; 20 and 5: 20 − √(400 − 225).
  const corners = { ...plain, cornerRadius: 20 };
  for (const [y, inset] of [[0, 20], [5, 20 - Math.sqrt(175)], [20, 0], [100, 0]] as const) {
    expect(endInset(corners, y)).toBeCloseTo(inset, 9);
    expect(endInset(corners, 200 - y)).toBeCloseTo(inset, 9);
  }
  // A half round: 100 − √(100² − 60²) = 20 at 40 from the edge.
  const round = { ...plain, endRadius: 100 };
  for (const [y, inset] of [[0, 100], [40, 20], [100, 0], [160, 20]] as const) expect(endInset(round, y)).toBeCloseTo(inset, 9);
  expect([edgeStart(plain), edgeStart(corners), edgeStart(round)]).toEqual([0, 20, 100]);
  // A flatter arc, 125 over 200 wide: its sagitta is 125 − √(125² − 100²) = 50.
  expect(edgeStart({ ...plain, endRadius: 125 })).toBeCloseTo(50, 9);
});

test('a point’s distance from the nearer end runs square to its outline: straight, a corner’s arc, a rounded end', () => {
  const corners = { ...plain, cornerRadius: 20 };
  // In a corner, from the middle of its arc: 8 in and 5 up stand hypot(12, 15) from it.
  for (const [x, y, apart] of [[8, 5, 20 - Math.hypot(12, 15)], [8, 100, 8], [30, 2, 30], [50, 100, 50]] as const) {
    for (const [px, py] of [[x, y], [800 - x, y], [x, 200 - y], [800 - x, 200 - y]] as const) expect(endDistance(corners, { x: px, y: py })).toBeCloseTo(apart, 9);
  }
  const round = { ...plain, endRadius: 100 };
  expect(endDistance(round, { x: 40, y: 180 })).toBeCloseTo(100 - Math.hypot(60, 80), 9);
  expect(endDistance(round, { x: 760, y: 100 })).toBeCloseTo(40, 9);
  expect(endDistance(round, { x: 130, y: 5 })).toBe(130);
  expect([edgeDistance(plain, { x: 9, y: 30 }), edgeDistance(plain, { x: 9, y: 190 })]).toEqual([30, 10]);
});

test('a cutter for which a bushing is made is not changed by a cure', () => {
  const slots = { count: 1, item: 24, depth: 60, mouth: { ease: 0 } };
  const tight = (cutter: Record<string, number>) => findingsOf({ slots, cutter }).find(({ code }) => code === 'seat-tight-for-cutter')!.would;
  expect(tight({ diameter: 25.1 }).map(({ field }) => field)).toEqual(['cutter.diameter']);
  expect(tight({ diameter: 25.1, bushing: 30 })).toEqual([]);
});
