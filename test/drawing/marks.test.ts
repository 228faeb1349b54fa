import { describe, expect, it } from 'vitest';
import { calibrationSide, calibrationSquare } from '../../src/drawing/calibration-square.js';
import type { Item, Shape } from '../../src/drawing/drawing.js';
import { holeCross } from '../../src/drawing/hole-cross.js';
import { itemsBounds } from '../../src/drawing/item-bounds.js';
import { readingMark, readingMarkSize } from '../../src/drawing/reading-mark.js';
import { registrationMark, registrationReach } from '../../src/drawing/registration-mark.js';
import { ruleBar, ruleDepth } from '../../src/drawing/rule-bar.js';
import { wasteTicks } from '../../src/drawing/waste-ticks.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { pathLength } from '../../src/geometry/length.js';
import { pathEnd } from '../../src/geometry/path.js';
import { distance, point } from '../../src/geometry/point.js';
import { circle, line, polyline } from '../../src/geometry/shapes.js';
import { testFont as font } from '../support/font.js';
import { labelCrossings, labelOverlaps } from '../support/label-crossings.js';

const shapes = (items: readonly Item[]): Shape[] => items.filter((i) => i.kind === 'shape');
const part = (items: readonly Item[], name: string): Shape => shapes(items).find((s) => s.part === name)!;
const figures = (items: readonly Item[]): string[] => items.flatMap((i) => (i.kind === 'lettering' ? [i.text] : []));

describe('ruleBar', () => {
  const bar = ruleBar(point(20, 100), { axis: 'x', length: 152.4 });
  const ticksAt = (items: readonly Item[], y: 1 | -1): number[] => shapes(items)
    .filter((s) => s.line === 'mark' && Math.sign(pathEnd(s.path).y - 100) === y).map((s) => s.path.start.x - 20);

  it('has a base line of exactly the nominal length from its zero', () => {
    expect(part(bar, 'x-bar').path).toEqual(line(point(20, 100), point(172.4, 100)));
    const upright = part(ruleBar(point(190, 250), { axis: 'y', length: 200 }), 'y-bar').path;
    expect(upright.start).toEqual(point(190, 250));
    expect(pathEnd(upright)).toEqual(point(190, 50));
  });

  it('ticks every millimetre above and every sixteenth of an inch (25.4 mm / 16) below', () => {
    const [mm, inches] = [ticksAt(bar, -1), ticksAt(bar, 1)];
    expect(mm).toHaveLength(153);
    expect(inches).toHaveLength(97);
    mm.forEach((x, k) => expect(x).toBeCloseTo(k, 9));
    inches.forEach((x, k) => expect(x).toBeCloseTo((k * 25.4) / 16, 9));
  });

  it('numbers tens of millimetres and whole inches', () => {
    expect(figures(ruleBar(point(0, 0), { axis: 'x', length: 60, rules: 'mm' }))).toEqual(['0', '10', '20', '30', '40', '50', '60', 'mm']);
    expect(figures(ruleBar(point(0, 0), { axis: 'x', length: 60, rules: 'inch' }))).toEqual(['0', '1', '2', 'in']);
  });

  it('keeps figures off its ticks and off each other', () => {
    expect(labelCrossings(bar, font)).toEqual([]);
    expect(labelOverlaps(bar, font)).toEqual([]);
  });

  it('reaches no further from its base line than it says', () => {
    const { y0, y1 } = itemsBounds(bar, font);
    expect(100 - y0).toBeLessThan(ruleDepth + 0.3);
    expect(y1 - 100).toBeLessThan(ruleDepth + 0.6);
  });
});

describe('calibrationSquare', () => {
  it.each([['mm', 100], ['inch', 101.6]] as const)('in %s is exactly %f mm a side, with equal diagonals through its corners', (units, side) => {
    const items = calibrationSquare(point(10, 20), units);
    expect(calibrationSide(units)).toBeCloseTo(side, 12);
    const { x0, y0, x1, y1 } = pathBounds(part(items, 'calibration-square').path);
    expect([x0, y0]).toEqual([10, 20]);
    expect(x1 - x0).toBeCloseTo(side, 12);
    expect(y1 - y0).toBeCloseTo(side, 12);
    for (const name of ['calibration-diagonal-1', 'calibration-diagonal-2']) {
      expect(pathLength(part(items, name).path)).toBeCloseTo(side * Math.SQRT2, 9);
    }
    expect(labelCrossings(items, font)).toEqual([]);
    expect(labelOverlaps(items, font)).toEqual([]);
  });
});

describe('registrationMark', () => {
  const mark = registrationMark(point(30, 40), 'registration-A1-A2-1');

  it('has its ring about the place and bare paper at it', () => {
    const ring = pathBounds(part(mark, 'registration-A1-A2-1').path);
    expect([(ring.x0 + ring.x1) / 2, (ring.y0 + ring.y1) / 2]).toEqual([30, 40]);
    for (const arm of mark.slice(1)) expect(distance(arm.path.start, point(30, 40))).toBeGreaterThan(0.5);
  });

  it('stays within its reach', () => {
    for (const arm of mark) expect(distance(pathEnd(arm.path), point(30, 40))).toBeLessThanOrEqual(registrationReach + 1e-9);
  });
});

describe('readingMark', () => {
  const mark = readingMark(point(0, 0), font);

  it('is no mirror image of itself: the flag flies to the right of the pole only', () => {
    const pole = part(mark, 'reading-mark').path;
    expect(pole.start.x).toBe(pathEnd(pole).x);
    for (const s of shapes(mark)) expect(pathBounds(s.path).x0).toBeGreaterThanOrEqual(pole.start.x);
  });

  it('stays within its size, its words clear of its lines', () => {
    const { x0, y0, x1, y1 } = itemsBounds(mark, font);
    expect(x1 - Math.max(x0, 0)).toBeLessThanOrEqual(readingMarkSize.width + 0.1);
    expect(y1 - y0).toBeLessThanOrEqual(readingMarkSize.height + 0.8);
    expect(labelCrossings(mark, font)).toEqual([]);
    expect(labelOverlaps(mark, font)).toEqual([]);
  });
});

describe('holeCross', () => {
  it('leaves the centre bare and passes the edge of the hole by 2 mm', () => {
    const arms = holeCross(point(5, 5), 12, 0.3);
    expect(arms).toHaveLength(4);
    for (const { path } of arms) {
      expect(distance(path.start, point(5, 5))).toBeCloseTo(0.7, 12);
      expect(distance(pathEnd(path), point(5, 5))).toBeCloseTo(8, 12);
    }
  });
});

describe('wasteTicks', () => {
  it('stand on a circle walked clockwise and point in on the right, out on the left', () => {
    const ring = circle(point(0, 0), 20);
    for (const [side, sign] of [['right', -1], ['left', 1]] as const) {
      for (const { path } of wasteTicks(ring, { side })) {
        expect(Math.hypot(path.start.x, path.start.y)).toBeCloseTo(20, 9);
        expect(Math.sign(Math.hypot(pathEnd(path).x, pathEnd(path).y) - 20)).toBe(sign);
        expect(pathLength(path)).toBeCloseTo(2, 9);
      }
    }
  });

  it('share a long straight edge evenly, the end runs half a spacing', () => {
    const xs = wasteTicks(line(point(0, 0), point(1000, 0)), { side: 'right', spacing: 5 }).map((s) => s.path.start.x);
    expect(xs).toHaveLength(200);
    xs.forEach((x, i) => expect(x).toBeCloseTo(5 * i + 2.5, 6));
  });

  it('mark a short edge once and a corner on both its edges', () => {
    expect(wasteTicks(line(point(0, 0), point(1, 0)), { side: 'left' })).toHaveLength(1);
    const corner = wasteTicks(polyline([point(0, 0), point(20, 0), point(20, 20)]), { side: 'right' });
    expect(corner.filter((s) => s.path.start.y === 0)).toHaveLength(5);
    expect(corner.filter((s) => s.path.start.x === 20)).toHaveLength(5);
  });
});
