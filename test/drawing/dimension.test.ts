import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleDimension } from '../../src/drawing/angle-dimension.js';
import { dimension } from '../../src/drawing/dimension.js';
import type { Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { leader } from '../../src/drawing/leader.js';
import { diameterDimension, radiusDimension } from '../../src/drawing/radius-dimension.js';
import { pathEnd } from '../../src/geometry/path.js';
import { circle } from '../../src/geometry/shapes.js';
import { shape } from '../../src/drawing/items.js';
import { testFont as font } from '../support/font.js';
import { labelCrossings } from '../support/label-crossings.js';

const lettering = (items: readonly Item[]): Lettering[] => items.filter((i) => i.kind === 'lettering');
const shapes = (items: readonly Item[]): Shape[] => items.filter((i) => i.kind === 'shape');
const heads = (items: readonly Item[]): Shape[] => shapes(items).filter((s) => s.filled === true);
const labels = fc.constantFrom('5', '30 mm', '1 3⁄8″ (34.9 mm)', '23⁄64″ (9.1 mm)', 'throat-to-throat 18 13⁄64″ (462 mm)');
const place = fc.record({ x: fc.double({ min: -300, max: 300, noNaN: true }), y: fc.double({ min: -300, max: 300, noNaN: true }) });
const turn = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
const height = fc.constantFrom(1.8, 2.5, 3.5);

describe('dimension', () => {
  it('touches its own label with no line, at any length, turn and offset', () => {
    fc.assert(fc.property(
      place, turn, fc.double({ min: 1, max: 200, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }), labels, height,
      (from, angle, length, offset, label, h) => {
        const to = { x: from.x + length * Math.cos(angle), y: from.y + length * Math.sin(angle) };
        expect(labelCrossings(dimension({ from, to, offset, label, height: h }, font), font)).toEqual([]);
      },
    ));
  });

  it('points its arrows at the two points measured, shifted square to the way by the offset', () => {
    fc.assert(fc.property(place, place, fc.double({ min: -30, max: 30, noNaN: true }), (from, to, offset) => {
      fc.pre(Math.hypot(to.x - from.x, to.y - from.y) > 1);
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const left = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
      const tips = heads(dimension({ from, to, offset, label: 'x' }, font)).map((s) => s.path.start);
      for (const p of [from, to]) {
        const miss = Math.min(...tips.map((t) => Math.hypot(t.x - p.x - left.x * offset, t.y - p.y - left.y * offset)));
        expect(miss).toBeLessThan(1e-9);
      }
    }));
  });

  it('is read from the bottom or the right of the page (ISO 129-1)', () => {
    fc.assert(fc.property(turn, (angle) => {
      const to = { x: 50 * Math.cos(angle), y: 50 * Math.sin(angle) };
      const [label] = lettering(dimension({ from: { x: 0, y: 0 }, to, offset: 8, label: '50 mm' }, font));
      expect(label!.turn).toBeGreaterThanOrEqual(-Math.PI / 2 - 1e-8);
      expect(label!.turn).toBeLessThan(Math.PI / 2);
    }));
  });

  it('reads upwards along an upright line, whichever end comes first', () => {
    for (const y of [40, -40]) {
      const [label] = lettering(dimension({ from: { x: 0, y: 0 }, to: { x: 0, y }, offset: 8, label: '40 mm' }, font));
      expect(label!.turn).toBeCloseTo(-Math.PI / 2, 12);
    }
  });

  it('measures only the level distance along 0', () => {
    const items = dimension({ from: { x: 0, y: 0 }, to: { x: 40, y: 25 }, offset: -40, along: 0, label: '40 mm' }, font);
    expect(heads(items).map((s) => s.path.start)).toEqual([{ x: 0, y: 40 }, { x: 40, y: 40 }]);
  });

  it('leaves a gap between a point and its extension line, and none where the line already touches it', () => {
    const far = dimension({ from: { x: 0, y: 0 }, to: { x: 40, y: 0 }, offset: 10, label: '40' }, font);
    expect(shapes(far)[0]!.path.start.x).toBeCloseTo(0, 12);
    expect(shapes(far)[0]!.path.start.y).toBeCloseTo(-1, 12);
    expect(pathEnd(shapes(far)[0]!.path).y).toBeCloseTo(-11.5, 12);
    expect(shapes(dimension({ from: { x: 0, y: 0 }, to: { x: 40, y: 0 }, offset: 0, label: '40' }, font))).toHaveLength(3);
  });

  it('turns its arrows outside in where they do not fit', () => {
    const items = dimension({ from: { x: 0, y: 0 }, to: { x: 4, y: 0 }, offset: 8, label: '4' }, font);
    const backs = heads(items).map((s) => s.path.segments[0]!).map((s) => (s.kind === 'line' ? s.to.x : NaN));
    expect(backs[0]).toBeLessThan(0);
    expect(backs[1]).toBeGreaterThan(4);
  });
});

describe('angleDimension', () => {
  it('touches its own label with no line, at any angle', () => {
    fc.assert(fc.property(place, turn, fc.double({ min: 0.03, max: 3.1, noNaN: true }), fc.double({ min: 6, max: 80, noNaN: true }), (centre, from, span, radius) => {
      const items = angleDimension({ centre, radius, from, to: from + span, label: '24.5°', drawn: [radius / 2, radius / 2] }, font);
      expect(labelCrossings(items, font)).toEqual([]);
    }));
  });

  it('has its arrow points on the arc at both directions', () => {
    const items = angleDimension({ centre: { x: 0, y: 0 }, radius: 20, from: 0, to: 1, label: '57.3°' }, font);
    const tips = heads(items).map((s) => Math.atan2(s.path.start.y, s.path.start.x));
    expect(tips[0]).toBeCloseTo(0, 12);
    expect(tips[1]).toBeCloseTo(1, 12);
  });
});

describe('radiusDimension and diameterDimension', () => {
  it('keep their label clear of their own line and of the circle, inside or outside', () => {
    fc.assert(fc.property(place, turn, fc.double({ min: 1, max: 80, noNaN: true }), labels, (centre, angle, radius, label) => {
      const round = shape('edge', circle(centre, radius));
      for (const draw of [radiusDimension, diameterDimension]) {
        expect(labelCrossings([round, ...draw({ centre, radius, angle, label }, font)], font)).toEqual([]);
      }
    }));
  });

  it('put the arrow on the circle', () => {
    for (const radius of [3, 60]) {
      const [head] = heads(diameterDimension({ centre: { x: 5, y: 5 }, radius, angle: 0.7, label: 'Ø' }, font));
      expect(Math.hypot(head!.path.start.x - 5, head!.path.start.y - 5)).toBeCloseTo(radius, 12);
    }
  });
});

describe('leader', () => {
  it('keeps all its lines of lettering clear of its line, on both sides', () => {
    fc.assert(fc.property(place, place, fc.array(labels, { minLength: 1, maxLength: 3 }), (at, elbow, label) => {
      expect(labelCrossings(leader({ at, elbow, label }), font)).toEqual([]);
    }));
  });

  it('starts at what it is about and ends on a level shelf', () => {
    const [run] = shapes(leader({ at: { x: 0, y: 0 }, elbow: { x: 10, y: -6 }, label: 'throat', end: 'none' }));
    expect(run!.path.start).toEqual({ x: 0, y: 0 });
    expect(pathEnd(run!.path)).toEqual({ x: 12, y: -6 });
  });
});
