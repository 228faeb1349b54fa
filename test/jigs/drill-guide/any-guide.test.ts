import { assert, constantFrom, double, oneof, option, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import { radians } from '../../../src/units/units.js';
import { testFont } from '../../support/font.js';
import { labelCrossings, labelOverlaps } from '../../support/label-crossings.js';
import { context, fields, round } from './guide.js';

const size = (min: number, max: number) => double({ min, max, noNaN: true });
const maybe = (min: number, max: number) => option(size(min, max), { nil: undefined });

/** Any guide that the fields let through, sensible or not. */
const anyGuide = record({
  drill: size(1, 80), depth: maybe(1, 600), thickness: size(1, 300), diameter: size(3, 300),
  angle: oneof(size(5, 90).map(radians), constantFrom(Math.PI / 2, Math.PI / 4), record({ rake: size(-60, 60).map(radians), splay: size(-60, 60).map(radians) })),
  flat: constantFrom(true, false), offset: oneof(size(-150, 150), constantFrom(0, 0, 4)), sole: constantFrom('flat' as const, 'v' as const, 'cove' as const, undefined),
  groove: record({ includedAngle: size(60, 150).map(radians), depth: maybe(0.5, 200) }),
  block: record({ length: maybe(20, 400), width: maybe(20, 400), height: maybe(20, 800) }), point: maybe(0, 40),
});

describe('any guide that the fields let through', () => {
  it('is refused with figures, or has only finite numbers and patterns whose lettering can be read', () => {
    let drawn = 0;
    assert(property(anyGuide, ({ diameter, flat, thickness, offset, sole, point, ...rest }) => {
      const given = fields({
        ...rest, bit: { point }, onto: flat ? 'flat' : round(diameter), sole: flat ? 'flat' : sole,
        thickness: flat ? thickness : undefined, offset: flat ? undefined : offset,
      });
      const outcome = drillGuide.solve(given, context);
      const findings = 'refused' in outcome ? outcome.refused : drillGuide.check(outcome.solution, context);
      expect(findings.every((f) => Number.isFinite(f.measured) && Number.isFinite(f.limit) && !/NaN|Infinity|undefined/.test(f.message + f.remedy))).toBe(true);
      if ('refused' in outcome) return;
      drawn += 1;
      for (const value of Object.values(drillGuide.values(outcome.solution))) expect(Number.isFinite(value)).toBe(true);
      for (const { items } of drillGuide.draw(outcome.solution, context, testFont).patterns) {
        expect(Object.values(itemsBounds(items, testFont)).every(Number.isFinite)).toBe(true);
        expect({ crossed: labelCrossings(items, testFont), overlapping: labelOverlaps(items, testFont) }).toEqual({ crossed: [], overlapping: [] });
      }
    }), { numRuns: 250 });
    expect(drawn).toBeGreaterThan(20);
  });
});
