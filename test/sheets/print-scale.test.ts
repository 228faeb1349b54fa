import { describe, expect, it } from 'vitest';
import { UserError, type Mistake } from '../../src/errors/user-error.js';
import { nominalBars, printScale } from '../../src/sheets/print-scale.js';
import { papers } from '../../src/units/paper.js';

const nominal = { x: 190, y: 230 };

const mistakesOf = (make: () => unknown): readonly Mistake[] => {
  try { make(); } catch (error) { if (error instanceof UserError) return error.mistakes; throw error; }
  throw new Error('nothing was refused');
};

describe('printScale', () => {
  it('is measured over nominal, each way by itself', () => {
    const { correction } = printScale({ xBar: 190.76, yBar: 229.77 }, { nominal, units: 'mm' });
    expect(correction.x).toBeCloseTo(1.004, 9);
    expect(correction.y).toBeCloseTo(0.999, 9);
  });

  it('turns the factors round for bars on a sheet whose long edge runs across: the paper is fed upright', () => {
    const { correction } = printScale({ xBar: 252.5, yBar: 170 }, { nominal: { x: 250, y: 170 }, units: 'mm', landscape: true });
    expect(correction).toEqual({ x: 1, y: 1.01 });
  });

  it.each([
    [0.941, 'makes Letter pages smaller'], [0.9, 'A4 page fitted onto Letter'], [0.93, 'Letter page fitted onto A4'],
    [0.9375, '96 dots to the inch'], [1.063, 'pages larger'], [0.7, 'several pages'], [1 / 25.4, 'inches'],
  ])('refuses a factor of %d and names what likely made it: %s', (factor, cause) => {
    const [x, y] = mistakesOf(() => printScale({ xBar: nominal.x * factor, yBar: nominal.y * factor }, { nominal, units: 'mm' }));
    expect(x).toMatchObject({ code: 'print-scale', path: '--x-bar' });
    expect(x!.message).toContain(cause);
    expect(y!.path).toBe('--y-bar');
  });

  it.each([0.97, 1.03])('takes a factor of %d', (factor) => {
    expect(printScale({ xBar: nominal.x * factor, yBar: nominal.y }, { nominal, units: 'mm' }).correction.x).toBeCloseTo(factor, 12);
  });

  it.each([0.9699, 1.0301, 0, -1, NaN, Infinity])('refuses a factor of %d', (factor) => {
    expect(mistakesOf(() => printScale({ xBar: nominal.x * factor, yBar: nominal.y }, { nominal, units: 'mm' }))).toHaveLength(1);
  });

  it('finds the skew of a sheared square from its diagonals: atan of the shear to first order', () => {
    const shear = 0.004;
    // Square 100 mm whose upright sides lean: corners (0, 0), (100, 0), (100·shear, 100), (100 + 100·shear, 100).
    const diagonals = [Math.hypot(100 + 100 * shear, 100), Math.hypot(100 - 100 * shear, 100)] as const;
    const { skewDeg, warnings } = printScale({ xBar: 190, yBar: 230, diagonals }, { nominal, units: 'mm' });
    expect(skewDeg).toBeCloseTo((Math.atan(shear) * 180) / Math.PI, 3);
    expect(warnings[0]).toContain('out of square');
  });

  it('says nothing of diagonals that no rule tells apart', () => {
    expect(printScale({ xBar: 190, yBar: 230, diagonals: [141.4, 141.5] }, { nominal, units: 'mm' }).warnings).toEqual([]);
  });

  it('refuses diagonals that do not go with the bars', () => {
    expect(mistakesOf(() => printScale({ xBar: 190, yBar: 230, diagonals: [141.4, 200] }, { nominal, units: 'mm' }))).toMatchObject([{ code: 'print-diagonal' }]);
  });
});

describe('nominalBars', () => {
  it.each([['letter', 'inch', 7 * 25.4, 9 * 25.4], ['letter', 'mm', 190, 230], ['a4', 'mm', 180, 240]] as const)('of %s in %s are %d and %d mm', (name, units, x, y) => {
    const bars = nominalBars(papers[name]!, units);
    expect(bars.x).toBeCloseTo(x, 9);
    expect(bars.y).toBeCloseTo(y, 9);
  });
});
