import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { pathArea } from '../../../src/geometry/path-area.js';
import { recessShape, scaledOutline, type RecessShape } from '../../../src/jigs/rack-top/recess-shape.js';
import type { RecessFields } from '../../../src/jigs/rack-top/schema.js';
import { near } from '../../geometry/near.js';

/** A cutter of 12 mm, its bushing so much wider on each side. */
const shapeOf = (fields: Partial<RecessFields>, offset = 0, diameter = 12): RecessShape =>
  recessShape({ at: [0, 0], depth: 8, face: 'top', turn: 0, ...fields } as RecessFields, { diameter, offset } as Parameters<typeof recessShape>[1]);
const area = (path: RecessShape['template']): number => Math.abs(pathArea(path!));
/** A rectangle with round corners. */
const rounded = (width: number, height: number, radius: number): number => width * height - (4 - Math.PI) * radius * radius;

describe('recessShape', () => {
  it('of a circle: its template stands the bushing’s offset outside it', () => {
    expect(shapeOf({ circle: 40 }).template).toBeUndefined();
    near(area(shapeOf({ circle: 40 }, 3).outline), Math.PI * 400, 1e-9);
    near(area(shapeOf({ circle: 40 }, 3).template), Math.PI * 23 * 23, 1e-9);
    expect(shapeOf({ circle: 40 })).toMatchObject({ width: 40, height: 40, insideRadius: 20, reached: undefined });
  });

  it('of a box: corners as given, as the cutter leaves them, and as the template guides it', () => {
    const own = shapeOf({ box: { width: 60, height: 30, radius: 8 } }, 3);
    near(area(own.outline), rounded(60, 30, 8), 1e-9);
    near(area(own.template), rounded(66, 36, 11), 1e-9);
    expect(own).toMatchObject({ insideRadius: 8, reached: undefined });
    const tight = shapeOf({ box: { width: 60, height: 30, radius: 2 } }, 3);
    near(area(tight.outline), rounded(60, 30, 2), 1e-9);
    near(area(tight.reached), rounded(60, 30, 6), 1e-9);
    near(area(tight.template), rounded(66, 36, 9), 1e-9);
    // None given: half a millimetre more than the cutter’s; no more than half the lesser side, whichever that is.
    expect(shapeOf({ box: { width: 60, height: 30 } }).insideRadius).toBe(6.5);
    expect([shapeOf({ box: { width: 60, height: 12.4 } }).insideRadius, shapeOf({ box: { width: 12.4, height: 60 } }).insideRadius]).toEqual([6.2, 6.2]);
  });

  it('of path data with sharp corners: what the cutter leaves, and its template, as of a box', () => {
    const sharp = shapeOf({ path: 'M0 0 H6 V3 H0 Z', size: 60 }, 3);
    near(area(sharp.outline), 1800, 1e-9);
    near(area(sharp.reached), rounded(60, 30, 6), 0.01 * 180);
    near(area(sharp.template), rounded(66, 36, 9), 0.01 * 200);
    expect(sharp).toMatchObject({ width: 60, height: 30, insideRadius: 0 });
    const { x0, x1, y0, y1 } = pathBounds(sharp.template!);
    for (const [value, wanted] of [[x0, -33], [x1, 33], [y0, -18], [y1, 18]] as const) near(value, wanted, 0.01);
  });

  it('of path data that the cutter follows: exact where it is of arcs and lines, within 10 µm elsewhere', () => {
    const slot = shapeOf({ path: 'M20 0 H60 A20 20 0 0 1 60 40 H20 A20 20 0 0 1 20 0 Z', size: 80 }, 3);
    expect([slot.reached, slot.insideRadius]).toEqual([undefined, expect.closeTo(20, 9)]);
    near(area(slot.outline), 40 * 40 + Math.PI * 400, 1e-9);
    near(area(slot.template), 40 * 46 + Math.PI * 23 * 23, 1e-9);
    expect(slot.template!.segments.some(({ kind }) => kind === 'arc')).toBe(true);
    const oval = shapeOf({ path: 'M-40 0 A40 25 0 0 1 40 0 A40 25 0 0 1 -40 0 Z', size: 80 }, 3);
    // Tightest at its ends: b²/a.
    near(oval.insideRadius, 625 / 40, 1e-3);
    near(area(oval.outline), Math.PI * 1000, 1e-6);
    // Ramanujan’s second formula for the way round; Steiner’s for the parallel.
    const h = (15 / 65) ** 2;
    const round = Math.PI * 65 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
    near(area(oval.template), Math.PI * 1000 + 3 * round + 9 * Math.PI, 0.01 * round);
    // A cutter of 32 is wider than its ends.
    expect(shapeOf({ path: 'M-40 0 A40 25 0 0 1 40 0 A40 25 0 0 1 -40 0 Z', size: 80 }, 0, 32).reached).toBeDefined();
    expect(shapeOf({ path: 'M-40 0 A40 25 0 0 1 40 0 A40 25 0 0 1 -40 0 Z', size: 80 }, 0, 31).reached).toBeUndefined();
  });

  it('says where the tightest corner of path data is', () => {
    // The corner at the lower right is of radius 2, the others of 5.
    const { insideRadius, tightestAt } = shapeOf({ path: 'M5 0 H55 A5 5 0 0 1 60 5 V28 A2 2 0 0 1 58 30 H5 A5 5 0 0 1 0 25 V5 A5 5 0 0 1 5 0 Z', size: 60 });
    near(insideRadius, 2, 1e-9);
    near(Math.hypot(tightestAt!.x - 28, tightestAt!.y - 13), 2, 1e-6);
  });
});

describe('scaledOutline', () => {
  it('stands about the origin, as wide as asked, however small or far off its own units are', () => {
    for (const data of ['M0 0 H8 V5 H0 Z', 'M100 200 h0.8 v0.5 h-0.8 z', 'M-3e4 9e4 h8e4 v5e4 h-8e4 z']) {
      const { x0, x1, y0, y1 } = pathBounds(scaledOutline(data, 80));
      for (const [value, wanted] of [[x0, -40], [x1, 40], [y0, -25], [y1, 25]] as const) near(value, wanted, 1e-9);
    }
  });
  it('refuses what is not one outline that encloses something', () => {
    for (const data of ['M0 0 H8 V5 Z M9 9 h1 v1 z', 'M0 0', 'M0 0 H8 Z', 'M0 0 V8 Z']) expect(() => scaledOutline(data, 80)).toThrow(expect.objectContaining({ name: 'GeometryError' }));
  });
});

