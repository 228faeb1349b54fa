import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelCrossings, labelOverlaps } from '../../support/label-crossings.js';
import { testFont } from '../../support/font.js';
import { drawn } from './written.js';
import type { CradleText } from './cradle.js';

const faults = (text: CradleText): string[] => {
  const { drawing } = drawn(text);
  return [...drawing.patterns, ...drawing.setUps.map((s) => s.picture)].flatMap((p) => [
    ...labelCrossings(p.items, testFont).map((c) => `${p.name}: ${c.line} ${c.part ?? ''} across “${c.text}”`),
    ...labelOverlaps(p.items, testFont).map((c) => `${p.name}: “${c.a}” over “${c.b}”`),
  ]);
};

describe('the lettering of a V-cradle', () => {
  it.each([
    ['holds: [post, rail], stop: 12 mm, carrier: { sharpAngle: 20, twist: 30, sawReading: 10 }'],
    ['holds: [leg, 28.6 mm, 23.8 mm], stop: 12 mm'],
    ['holds: [post], includedAngle: 120, flat: 0, carrier: { sharpAngle: 35, twist: -90 }'],
    ['holds: [rail, post, 14 mm, 20 mm, 28 mm], includedAngle: 60, flat: 2 mm'],
    ['holds: [12 mm], flat: 3 mm, carrier: { sharpAngle: 12 }'],
    ['holds: [90 mm, 30 mm], carrier: { sharpAngle: 40, twist: 180 }'],
  ])('stands clear of lines and of itself: %s', (fields) => {
    for (const units of ['mm', 'inch'] as const) expect(faults({ fields, units })).toEqual([]);
  });

  it('stands clear of lines whatever is held', () => {
    const mm = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
    fc.assert(fc.property(fc.record({
      thick: mm(16, 80), part: mm(0.5, 1), angle: fc.integer({ min: 60, max: 120 }), flat: mm(0, 3),
      sharp: fc.integer({ min: 12, max: 50 }), twist: fc.integer({ min: -180, max: 180 }),
    }), ({ thick, part, angle, flat, sharp, twist }) => {
      const fields = `holds: [${thick}, ${(thick * part - 0.1).toFixed(1)}], includedAngle: ${angle}, flat: ${flat}, carrier: { sharpAngle: ${sharp}, twist: ${twist} }`;
      expect(faults({ fields })).toEqual([]);
    }), { numRuns: 40, seed: 7 });
  });
});
