import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleLabel, fixed, fractionInches, lengthLabel, lengthMain, millimetres, riseOverRun } from '../../src/units/format.js';
import { radians } from '../../src/units/units.js';

describe('fractionInches gives the nearest 64th, reduced', () => {
  it.each([
    [34.925, '1 3⁄8″'], [25.4, '1″'], [0, '0″'], [9.525, '3⁄8″'], [1422.4, '56″'], [-34.925, '−1 3⁄8″'], [0.05, '0″'], [-0.05, '0″'],
    // round(64 mm / 25.4), worked by hand.
    [25, '63⁄64″'], [10, '25⁄64″'], [12, '15⁄32″'], [20, '25⁄32″'], [30, '1 3⁄16″'], [35, '1 3⁄8″'],
  ])('%f mm is %s', (mm, label) => {
    expect(fractionInches(mm)).toBe(label);
  });

  it('a tie goes away from zero: 1/128 in is 1/64, 3/128 in is 1/32', () => {
    expect(fractionInches(25.4 / 128)).toBe('1⁄64″');
    expect(fractionInches((3 * 25.4) / 128)).toBe('1⁄32″');
    expect(fractionInches(-25.4 / 128)).toBe('−1⁄64″');
  });

  it('is never more than 1/128 in = 0.1984375 mm off, and always reduced', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3000, noNaN: true }), (mm) => {
        const [, whole = '0', top = '0', bottom = '1'] = /^(?:(\d+)(?= |″))?(?: ?(\d+)⁄(\d+))?″$/.exec(fractionInches(mm)) ?? [];
        expect(Math.abs((Number(whole) + Number(top) / Number(bottom)) * 25.4 - mm)).toBeLessThanOrEqual(0.1984375 + 1e-9);
        expect(Number(top) === 0 || Number(top) % 2).toBe(Number(top) === 0 ? true : 1);
      }),
    );
  });
});

describe('fixed rounds half away from zero on what a reader sees', () => {
  // 1/32 in = 0.79375 mm; public charts print both 0.7937 and 0.7938.
  it.each([
    [0.79375, 4, '0.7938'], [0.7937499999999999, 4, '0.7938'], [-0.79375, 4, '−0.7938'], [1.5875, 3, '1.588'], [0.396875, 3, '0.397'], [1.005, 2, '1.01'], [2.5, 0, '3'], [-2.5, 0, '−3'],
    [-0.04, 1, '0.0'], [0, 1, '0.0'], [1e21, 0, '1000000000000000000000'], [1e-9, 2, '0.00'],
  ])('%f to %i places is %s', (value, decimals, text) => {
    expect(fixed(value, decimals)).toBe(text);
  });
});

describe('labels', () => {
  it('put the units of the spec first', () => {
    expect(lengthLabel(34.925, 'inch')).toBe('1 3⁄8″ (34.9 mm)');
    expect(lengthLabel(34.925, 'mm')).toBe('34.9 mm (1 3⁄8″)');
    expect(lengthMain(38, 'inch')).toBe('1 1⁄2″');
    expect(lengthMain(38, 'mm')).toBe('38 mm');
  });

  it('leave .0 off whole figures, and off what arithmetic left beside them', () => {
    expect(millimetres(38)).toBe('38 mm');
    expect(millimetres(0.1 + 0.2 + 37.7)).toBe('38 mm');
    expect(millimetres(38.04)).toBe('38.0 mm');
    expect(millimetres(-0.04)).toBe('0.0 mm');
    expect(angleLabel(radians(24))).toBe('24°');
    expect(angleLabel(radians(24.5))).toBe('24.5°');
    expect(angleLabel(radians(-7.96))).toBe('−8.0°');
  });

  it('say a rise over a run that can be set with a rule', () => {
    expect(riseOverRun(Math.atan(1 / 6), 'inch')).toBe('2″ in 12″');
    expect(riseOverRun(Math.PI / 4, 'mm')).toBe('100 mm in 100 mm');
    expect(riseOverRun(radians(24), 'mm')).toBe('44.5 mm in 100 mm');
    expect(riseOverRun(Math.PI / 2, 'mm')).toBe('upright');
    expect(riseOverRun(0, 'mm')).toBe('0 mm in 100 mm');
  });

  it.each([NaN, Infinity, -Infinity])('throw on %f: it has no place on paper', (value) => {
    for (const label of [fractionInches, millimetres, angleLabel]) expect(() => label(value)).toThrow(RangeError);
  });

  it('throw on a rise of NaN', () => {
    expect(() => riseOverRun(NaN, 'mm')).toThrow(RangeError);
  });
});
