import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleLabel } from '../../src/units/format.js';
import { parseAngle } from '../../src/units/parse-angle.js';
import { degrees } from '../../src/units/units.js';

const inDegrees = (text: string | number): number => {
  const reading = parseAngle(text);
  if ('refusal' in reading) throw new Error(reading.refusal.message);
  return degrees(reading.value);
};

describe('parseAngle', () => {
  it.each([
    [24, 24], ['24', 24], ['24 deg', 24], ['24deg.', 24], ['24°', 24], ['24 º', 24], ['24.5 degrees', 24.5], ['22-1/2°', 22.5], ['22½', 22.5],
    ['-15°', -15], ['−15', -15], [-15, -15], [0, 0],
  ])('%s is %f°', (text, value) => {
    expect(inDegrees(text)).toBeCloseTo(value, 12);
  });

  it('reads a slope as its rise over its run', () => {
    expect(parseAngle('1:6')).toEqual({ value: Math.atan(1 / 6) });
    expect(parseAngle('1 : 1')).toEqual({ value: Math.PI / 4 });
    expect(parseAngle('-1:6')).toEqual({ value: -Math.atan(1 / 6) });
    expect(parseAngle('1/2:6')).toEqual({ value: Math.atan(1 / 12) });
  });

  it.each([
    ['1:0', 'a slope over a run of nothing'], ['1/0', 'the fraction 1/0 divides by zero'], ['', 'is empty'], ['--3', 'is not an angle'],
    ['24 mm', 'is not an angle'], ['1:2:3', 'is not an angle'], ['NaN', 'is not an angle'], [NaN, 'is not a finite number'], [Infinity, 'is not a finite number'],
  ])('%s is refused: %s', (text, message) => {
    const reading = parseAngle(text);
    expect('refusal' in reading && reading.refusal.message).toBe(message);
  });

  it('of any text gives a finite number or a reason, never throws', () => {
    const pieces = fc.constantFrom('1', '24', ':', '°', 'deg', '-', ' ', '/', '.', '½', '0');
    const texts = fc.oneof(fc.string({ unit: 'binary' }), fc.array(pieces, { maxLength: 10 }).map((parts) => parts.join('')));
    fc.assert(
      fc.property(texts, (text) => {
        const reading = parseAngle(text);
        return 'value' in reading ? Number.isFinite(reading.value) : reading.refusal.message !== '';
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back what format prints, to 0.05°', () => {
    fc.assert(
      fc.property(fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), (angle) => {
        expect(Math.abs(inDegrees(angleLabel(angle)) - degrees(angle))).toBeLessThanOrEqual(0.05 + 1e-9);
      }),
    );
  });
});
