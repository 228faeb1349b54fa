import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionInches, lengthMain, millimetres } from '../../src/units/format.js';
import { parseLength } from '../../src/units/parse-length.js';
import type { Units } from '../../src/units/units.js';

const mm = (text: string | number, units: Units = 'inch'): number => {
  const reading = parseLength(text, units);
  if ('refusal' in reading) throw new Error(reading.refusal.message);
  return reading.value;
};

const why = (text: string | number, units: Units = 'inch') => {
  const reading = parseLength(text, units);
  return 'refusal' in reading ? reading.refusal : undefined;
};

describe('parseLength reads every form exactly', () => {
  // 1 in = 25.4 mm exactly (NBS Circular 572, addendum 22 Jan 1960).
  it.each([
    ['1-3/8', 34.925], ['1 3/8', 34.925], ['1 3/8 in', 34.925], ['1-3/8in', 34.925], ['1⅜"', 34.925], ['1 ⅜″', 34.925],
    ['1 3⁄8″', 34.925], ['1 3∕8 inches', 34.925], ['1.375', 34.925], ['.5', 12.7], ['3/8', 9.525], ['11/8', 34.925], ['⅜', 9.525], ['⅟8', 3.175], ['1⅟8', 28.575],
    ['1 - 3/8"', 34.925], ['1–3/8', 34.925], ['1\u00a03/8\u202fin', 34.925], ['1 3/8”', 34.925], ["1 3/8''", 34.925], ['1 IN', 25.4],
    [`3' 2-1/2"`, 977.9], ['3 ft 2 1/2 in', 977.9], ['3ft 2½in', 977.9], ['3′ 2 1⁄2″', 977.9], ['3’ 2½”', 977.9], [`3'-2 1/2"`, 977.9],
    [`3'2"`, 965.2], ["3'", 914.4], ['2 feet', 609.6], ['1/2 foot', 152.4], ['34.9 mm', 34.9], ['34.9mm', 34.9], ['3.5 cm', 35],
    ['2.4 m', 2400], ['-3 in', -76.2], ['−1-3/8', -34.925], ['0', 0], ['1 1/64', 25.796875],
  ])('%s is %f mm', (text, value) => {
    expect(mm(text)).toBe(value);
  });

  it('takes a bare number in the units of the spec', () => {
    expect(mm(32, 'mm')).toBe(32);
    expect(mm('32', 'mm')).toBe(32);
    expect(mm(2, 'inch')).toBe(50.8);
    expect(mm(1.375, 'inch')).toBe(34.925);
    expect(mm('1 3/8 in', 'mm')).toBe(34.925);
    expect(mm(1e-7, 'mm')).toBe(1e-7);
  });

  // n/64 in = 0.396875 n mm exactly (public-domain drill chart, circuitousroot.com).
  it.each([[3, 1.190625], [7, 2.778125], [10, 3.96875], [19, 7.540625], [37, 14.684375], [51, 20.240625], [63, 25.003125]])(
    '%i/64 is %f mm to the last digit', (n, value) => {
      expect(mm(`${n}/64`)).toBe(value);
    },
  );
});

describe('parseLength refuses', () => {
  it.each([
    ['1/0', 'the fraction 1/0 divides by zero'], ['1 3/0 in', 'the fraction 3/0 divides by zero'], ['1e999', 'is not a length'],
    ['--3', 'is not a length'], ['3 furlongs', '“furlongs” is not a unit of length'], ['', 'is empty'], ['  ', 'is empty'], ['NaN', 'is not a length'],
    ['1 9/8', 'the fraction 9/8 behind a whole number is not less than one'], ['3-3', 'is not a length'], ['1.2.3', 'is not a length'],
    ['1 3/8 in in', 'is not a length'], ['+3', 'is not a length'], ['0x10', 'is not a length'], ['34,9 mm', 'is not a length'],
    ['Infinity', 'is not a length'], ['1/2/3', 'is not a length'],
  ])('%s: %s', (text, message) => {
    const refusal = why(text);
    expect(refusal?.message.startsWith(message) || refusal?.message).toBe(true);
    expect(refusal?.allowed).toContain('1-3/8');
  });

  it('numbers that are not finite', () => {
    expect(why(NaN)?.message).toBe('is not a finite number');
    expect(why(Infinity)?.message).toBe('is not a finite number');
  });

  it('offers what a decimal comma and inches without a mark most likely mean', () => {
    expect(why('34,9 mm', 'mm')?.nearest).toBe('34.9 mm');
    expect(why("3' 2-1/2")?.nearest).toBe(`3' 2-1/2"`);
  });

  it('ten thousand letters at once', () => {
    expect(why('1'.repeat(10_000))?.message).toBe('10000 letters are too many for a length');
  });
});

describe('parseLength of any text', () => {
  const pieces = fc.constantFrom('1', '3/8', '-', ' ', "'", '"', 'in', 'mm', '⅜', '.', '0', '/', 'ft', '″', 'e', ',');
  const texts = fc.oneof(fc.string({ unit: 'binary' }), fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')));

  it('gives a finite number or a reason, never throws', () => {
    fc.assert(
      fc.property(texts, fc.constantFrom<Units>('inch', 'mm'), (text, units) => {
        const reading = parseLength(text, units);
        return 'value' in reading ? Number.isFinite(reading.value) : reading.refusal.message !== '';
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back what format prints, to 1/128 in and 0.05 mm', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (length) => {
        expect(Math.abs(mm(fractionInches(length)) - length)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
        expect(Math.abs(mm(millimetres(length)) - length)).toBeLessThanOrEqual(0.05 + 1e-9);
        expect(mm(lengthMain(length, 'mm'), 'inch')).toBe(mm(millimetres(length), 'inch'));
      }),
    );
  });

  it('reads a 64th written in any way the same', () => {
    fc.assert(
      fc.property(fc.nat(40), fc.integer({ min: 1, max: 63 }), (whole, n) => {
        expect(mm(`${whole}-${n}/64`)).toBe(((whole * 64 + n) * 396875) / 1e6);
        expect(mm(`${whole * 64 + n}/64 in`)).toBe(mm(`${whole} ${n}/64"`));
      }),
    );
  });
});
