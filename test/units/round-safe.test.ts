import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthLabel } from '../../src/units/format.js';
import { parseLength } from '../../src/units/parse-length.js';
import { angleRoundedDown, angleRoundedUp, roundedDown, roundedUp } from '../../src/units/round-safe.js';
import type { Units } from '../../src/units/units.js';

/** Both figures that a label prints, read back as a maker would write them. */
const printed = (mm: number, units: Units): number[] => {
  const [own, other] = lengthLabel(mm, units).split(' (') as [string, string];
  return [own, other.slice(0, -1)].map((text) => {
    const read = parseLength(text.replace('\u2044', '/'), units);
    if ('refusal' in read) throw new Error(text);
    return read.value;
  });
};

test('a least figure, written down as printed in either unit, is never less, and within 0.5 mm', () => {
  fc.assert(fc.property(fc.double({ min: 0.01, max: 3000, noNaN: true }), fc.constantFrom('inch' as const, 'mm' as const), (mm, units) => {
    const up = roundedUp(mm, units);
    for (const read of printed(up, units)) expect(read).toBeGreaterThanOrEqual(mm - 1e-6);
    expect(up - mm).toBeLessThan(units === 'inch' ? 1.2 : 0.5);
  }), { numRuns: 2000 });
});

test('a most figure, written down as printed in either unit, is never more', () => {
  fc.assert(fc.property(fc.double({ min: 2, max: 3000, noNaN: true }), fc.constantFrom('inch' as const, 'mm' as const), (mm, units) => {
    const down = roundedDown(mm, units);
    for (const read of printed(down, units)) expect(read).toBeLessThanOrEqual(mm + 1e-6);
    expect(mm - down).toBeLessThan(units === 'inch' ? 1.2 : 0.5);
  }), { numRuns: 2000 });
});

test('a figure on a step of its own unit stays there', () => {
  expect(roundedUp(25.4, 'inch')).toBeCloseTo(25.4, 9);
  expect(roundedDown(25.4, 'inch')).toBeCloseTo(25.4, 9);
  // 12.7 mm is 1/2 in: on a step of both units.
  expect(roundedUp(12.7, 'mm')).toBeCloseTo(12.7, 9);
  expect(roundedUp(12.71, 'mm')).toBeGreaterThan(12.71);
});

test('angles go to the next tenth of a degree on the safe side', () => {
  const degrees = (rad: number): number => (rad * 180) / Math.PI;
  const radians = (deg: number): number => (deg * Math.PI) / 180;
  expect(degrees(angleRoundedUp(radians(26.01)))).toBeCloseTo(26.1, 9);
  expect(degrees(angleRoundedDown(radians(26.09)))).toBeCloseTo(26, 9);
  expect(degrees(angleRoundedUp(radians(26)))).toBeCloseTo(26, 9);
  expect(degrees(angleRoundedDown(radians(26)))).toBeCloseTo(26, 9);
});
