import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addRatios, negateRatio, ratio, ratioFromDecimal, ratioFromNumber, roundRatio, toNumber } from '../../src/units/ratio.js';

describe('ratios', () => {
  it('come from a number and go back to the same number', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (value) => {
        const back = toNumber(ratioFromNumber(value));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(Math.abs(value) * 2 ** -52 + 1e-300);
      }),
    );
  });

  it('come exactly from decimals', () => {
    expect(ratioFromDecimal('34.9')).toEqual(ratio(349n, 10n));
    expect(ratioFromDecimal('1e3')).toEqual(ratio(1000n));
    expect(ratioFromDecimal('2.5e-1')).toEqual(ratio(25n, 100n));
    for (const text of ['', '.', '-', '1e', '1e999', 'abc', '1,5']) expect(ratioFromDecimal(text)).toBeUndefined();
  });

  it('refuse what is not finite', () => {
    expect(() => ratioFromNumber(NaN)).toThrow(RangeError);
    expect(() => ratioFromNumber(Infinity)).toThrow(RangeError);
  });

  it('round half away from zero', () => {
    const halves = [1n, 3n, 5n].map((n) => roundRatio(ratio(n, 2n)));
    expect(halves).toEqual([1n, 2n, 3n]);
    expect(roundRatio(negateRatio(ratio(5n, 2n)))).toBe(-3n);
  });

  it('keep thirds exact: 1/3 + 1/3 + 1/3 = 1', () => {
    const third = ratio(1n, 3n);
    expect(toNumber(addRatios(addRatios(third, third), third))).toBe(1);
  });
});
