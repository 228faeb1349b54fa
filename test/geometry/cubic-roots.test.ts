import { describe, expect, it } from 'vitest';
import { cubicRoots, cubicTurns } from '../../src/geometry/cubic-roots.js';

type Four = readonly [number, number, number, number];

/** Bézier ordinates of k·(t − a)(t − b)(t − c): its polar form at 000, 001, 011 and 111 (Ramshaw, Blossoming, 1987). */
const fromRoots = (k: number, [a, b, c]: readonly [number, number, number]): Four => {
  const polar = (x: number, y: number, z: number): number => (k / 6) * [[x, y, z], [x, z, y], [y, x, z], [y, z, x], [z, x, y], [z, y, x]]
    .reduce((sum, [u, v, w]) => sum + (u! - a) * (v! - b) * (w! - c), 0);
  return [polar(0, 0, 0), polar(0, 0, 1), polar(0, 1, 1), polar(1, 1, 1)];
};

/** Bézier ordinates of a cubic from `start` with the derivative a·t² + b·t + c, all times 3. */
const fromSlope = (start: number, a: number, b: number, c: number): Four => {
  const p1 = start + c;
  const p2 = p1 + c + b / 2;
  return [start, p1, p2, p2 + a + b + c];
};

describe('cubicTurns', () => {
  it.each([-2e4, -1, -0.003, 0.003, 1, 2e4])('are the roots of the slope within 0…1, rising (times %d)', (k) => {
    for (const [m, n] of [[0.2, 0.7], [0.7, 0.2], [0.45, 3], [-2, 0.6], [0.1, 0.9]] as const) {
      // k(t − m)(t − n)
      const found = cubicTurns(...fromSlope(5, k, -k * (m + n), k * m * n));
      const inside = [m, n].filter((t) => t > 0 && t < 1).sort((p, q) => p - q);
      expect(found).toHaveLength(inside.length);
      inside.forEach((t, i) => expect(found[i]).toBeCloseTo(t, 10));
    }
    expect(cubicTurns(...fromSlope(5, k, -k * 5, k * 6))).toEqual([]);
    // Never level: k(t² − t + 1).
    expect(cubicTurns(...fromSlope(5, k, -k, k))).toEqual([]);
  });

  it('of a parabola is one, to the last place however little of a cubic is in it', () => {
    expect(cubicTurns(...fromSlope(0, 0, 0.5, -0.2))).toEqual([expect.closeTo(0.4, 14)]);
    for (const a of [1e-7, 1e-9, -1e-9, 1e-10]) {
      for (const [b, c] of [[0.5, -0.2], [-0.5, 0.2], [0.5e-3, -0.2e-3], [-40, 16]] as const) {
        const [t] = cubicTurns(...fromSlope(0, a * Math.abs(b), b, c)) as [number];
        // The root in the form without cancellation.
        expect(t).toBeCloseTo((-2 * c) / (b + Math.sign(b) * Math.sqrt(b * b - 4 * a * Math.abs(b) * c)), 13);
      }
    }
  });

  it('of a straight run are none, nor of one that stands', () => {
    expect([cubicTurns(1, 2, 3, 4), cubicTurns(4, 3, 2, 1), cubicTurns(5, 5, 5, 5)]).toEqual([[], [], []]);
  });
});

describe('cubicRoots', () => {
  it.each([-3e4, -1, -0.02, 0.02, 1, 3e4])('are where it takes the level, to 1e-12, rising (times %d)', (k) => {
    for (const roots of [[0.15, 0.5, 0.82], [0.82, 0.5, 0.15], [0.3, 4, -7], [0.031, 0.032, 2], [0.9, 0.11, -1], [5, 6, 7]] as const) {
      for (const level of [0, 0.7 * k, -12]) {
        const [p, q, r, s] = fromRoots(k, roots);
        const found = cubicRoots([p + level, q + level, r + level, s + level], level);
        const inside = roots.filter((t) => t > 0 && t < 1).sort((a, b) => a - b);
        expect(found).toHaveLength(inside.length);
        inside.forEach((t, i) => expect(Math.abs(found[i]! - t)).toBeLessThan(level === 0 ? 1e-12 : 1e-9 * (1 + 12 / Math.abs(k))));
      }
    }
  });

  it('at its ends and turns and of a triple root', () => {
    expect(cubicRoots([0, 1, 2, 3], 0)).toEqual([0]);
    expect(cubicRoots([0, 1, 2, 3], 3)).toEqual([1]);
    expect(cubicRoots([0, 2, 2, 0], 1.5)).toEqual([0.5]);
    expect(cubicRoots([3, 3, 3, 4], 3)).toEqual([0]);
    expect(new Set(cubicRoots(fromRoots(8, [0.25, 0.25, 0.25]), 0))).toEqual(new Set([0.25]));
  });
});
