import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GeometryError } from '../../src/errors/geometry-error.js';
import type { Curve } from '../../src/geometry/curve.js';
import { fitCurve } from '../../src/geometry/fit-curve.js';
import { pathLength } from '../../src/geometry/length.js';
import { endOf, type Path } from '../../src/geometry/path.js';
import type { Point } from '../../src/geometry/point.js';
import { saddleCurve, saddlePath, wingParameters } from '../../src/geometry/saddle-curve.js';
import { curveLength } from './curve-length.js';
import { polyline } from '../../src/geometry/shapes.js';
import { deviation } from './deviation.js';
import { anyJoint, easyJoint } from './arbitrary.js';
import { degrees, near, nearPoint } from './near.js';

const TURN = 2 * Math.PI;
const rounded = ({ x, y }: Point): Point => ({ x: Math.round(x * 1e4) / 1e4, y: Math.round(y * 1e4) / 1e4 });

/** The path as a writer with four decimals leaves it. */
const written = (path: Path): Path => ({
  ...path,
  start: rounded(path.start),
  segments: path.segments.map((s) => (s.kind === 'cubic' ? { ...s, c1: rounded(s.c1), c2: rounded(s.c2), to: rounded(s.to) } : s)),
});

describe('saddlePath', () => {
  it('as written with four decimals lies within 1 µm of the true curve, in 96 cubics at most', () => {
    fc.assert(fc.property(anyJoint, (joint) => {
      const path = saddlePath(joint, { paperThickness: 0.1 });
      expect(path.segments.length).toBeLessThanOrEqual(96);
      const off = deviation(written(path), saddleCurve(joint, 0.1), { from: 0, to: TURN, curveSamples: 512, segmentSamples: 6 });
      expect(off).toBeLessThanOrEqual(0.001);
    }), { numRuns: 150 });
  });

  it('stays under 96 cubics over thousands of joints, turned ones among them', () => {
    fc.assert(fc.property(anyJoint, fc.integer({ min: -6, max: 6 }), (joint, from) => {
      expect(saddlePath(joint, { paperThickness: 0.1, from, to: from + TURN }).segments.length).toBeLessThanOrEqual(96);
    }), { numRuns: 3000 });
  });

  it('is as wide as the round’s girth at the middle of the paper, π(d + t)', () => {
    for (const t of [0, 0.1, 0.4]) near(endOf(saddlePath({ main: 25, branch: 12.5, angle: 1.1, offset: 3 }, { paperThickness: t }).segments.at(-1)!).x, Math.PI * (25 + t), 1e-9);
  });

  it('runs smoothly from piece to piece and begins and ends on the curve', () => {
    const joint = { main: 20, branch: 14, angle: degrees(30), offset: 3 };
    const path = saddlePath(joint, { paperThickness: 0.1 });
    nearPoint(endOf(path.segments.at(-1)!), saddleCurve(joint, 0.1).point(TURN), 0);
    near(path.start.y, endOf(path.segments.at(-1)!).y, 1e-12);
  });

  it('is as long as the true curve', () => {
    fc.assert(fc.property(easyJoint, (joint) => {
      const length = curveLength(saddleCurve(joint, 0.1), 0, TURN, wingParameters(0, TURN));
      near(pathLength(saddlePath(joint, { paperThickness: 0.1 })), length, 0.005);
    }), { numRuns: 50 });
  });
});

describe('fitCurve', () => {
  const parabola: Curve = { point: (t) => ({ x: t, y: t * t }), slope: (t) => ({ x: 1, y: 2 * t }) };
  it('gives a parabola as one cubic when asked whole', () => {
    const path = fitCurve(parabola, { from: -1, to: 3, tolerance: 1e-6 });
    expect(deviation(path, parabola, { from: -1, to: 3 })).toBeLessThanOrEqual(1e-9);
  });
  it('parts where told and takes the slope from each side', () => {
    const corner: Curve = { point: (t) => ({ x: t, y: Math.abs(t) }), slope: (t, side = -1) => ({ x: 1, y: Math.sign(t) || side }) };
    const path = fitCurve(corner, { from: -1, to: 1, tolerance: 1e-6, breaks: [5, 0, -7] });
    expect(path.segments.map(endOf)).toContainEqual({ x: 0, y: 0 });
    expect(deviation(path, corner, { from: -1, to: 1 })).toBeLessThanOrEqual(1e-9);
  });
  it('refuses a curve that is not finite, an empty range and no tolerance', () => {
    const broken: Curve = { point: (t) => ({ x: t, y: Math.sqrt(1 - t) }), slope: () => ({ x: 1, y: 1 }) };
    expect(() => fitCurve(broken, { from: 0, to: 2, tolerance: 1e-3 })).toThrow(GeometryError);
    expect(() => fitCurve(parabola, { from: 1, to: 1, tolerance: 1e-3 })).toThrow(GeometryError);
    expect(() => fitCurve(parabola, { from: 0, to: 1, tolerance: 0 })).toThrow(GeometryError);
  });
});

describe('deviation', () => {
  const wave: Curve = { point: (t) => ({ x: t, y: Math.sin(t) }), slope: (t) => ({ x: 1, y: Math.cos(t) }) };
  it('finds a chord’s sag', () => {
    const circle: Curve = { point: (t) => ({ x: 10 * Math.cos(t), y: 10 * Math.sin(t) }), slope: (t) => ({ x: -10 * Math.sin(t), y: 10 * Math.cos(t) }) };
    near(deviation(polyline([circle.point(0), circle.point(1)]), circle, { from: 0, to: 1 }), 10 * (1 - Math.cos(0.5)), 1e-9);
  });
  it('sees a path that stops short, and one that goes too far', () => {
    const path = fitCurve(wave, { from: 0, to: 3, tolerance: 1e-6 });
    near(deviation(path, wave, { from: 0, to: 4 }), Math.hypot(1, Math.sin(4) - Math.sin(3)), 1e-3);
    near(deviation(path, wave, { from: 0, to: 2 }), Math.hypot(1, Math.sin(3) - Math.sin(2)), 1e-3);
  });
  it('sees a shift of a micrometre', () => {
    const shifted: Curve = { ...wave, point: (t) => ({ x: t, y: Math.sin(t) + 0.001 }) };
    near(deviation(fitCurve(wave, { from: 0, to: 6, tolerance: 1e-7 }), shifted, { from: 0, to: 6 }), 0.001, 1e-6);
  });
});

describe('wingParameters', () => {
  it('are the odd quarter turns strictly between two turns, whatever they are', () => {
    const quarters = (from: number, to: number): number[] => wingParameters((from * Math.PI) / 2, (to * Math.PI) / 2).map((phi) => Number((phi / (Math.PI / 2)).toFixed(9)));
    expect(quarters(0, 4)).toEqual([1, 3]);
    expect(quarters(-2, 2)).toEqual([-1, 1]);
    expect(quarters(1, 3)).toEqual([]);
    expect(quarters(0.9, 3.1)).toEqual([1, 3]);
    expect(quarters(-7.5, -2.5)).toEqual([-7, -5, -3]);
    expect(quarters(5.2, 6.8)).toEqual([]);
  });
});
