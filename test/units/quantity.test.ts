import { expect, test } from 'vitest';
import { angleOf, countOf, diameterOf, figuresOf, joinWords, lengthOf, radiusOf, ratioOf, sayQuantity, sayWords, slopeOf, words } from '../../src/units/quantity.js';

test('a length is said in both units, the spec’s own first, in its own alone, in millimetres alone, or bare', () => {
  const quarter = 6.35;
  expect(sayQuantity(lengthOf(quarter), 'inch')).toBe('1⁄4″ (6.4 mm)');
  expect(sayQuantity(lengthOf(quarter), 'mm')).toBe('6.4 mm (1⁄4″)');
  expect(sayQuantity(lengthOf(quarter, 'short'), 'inch')).toBe('1⁄4″');
  expect(sayQuantity(lengthOf(quarter, 'short'), 'mm')).toBe('6.4 mm');
  expect(sayQuantity(lengthOf(quarter, 'mm'), 'inch')).toBe('6.4 mm');
  expect(sayQuantity(lengthOf(quarter, 'bare'), 'inch')).toBe('1⁄4″ (6.4)');
  expect(sayQuantity(lengthOf(quarter, 'bare'), 'mm')).toBe('6.4 (1⁄4″)');
});

test('a length too thin for a fraction of an inch is said in millimetres', () => {
  // 1/128 in is 0.1984 mm: below it the nearest 1/64 in is none.
  expect(sayQuantity(lengthOf(0.19, 'thin'), 'inch')).toBe('0.2 mm');
  expect(sayQuantity(lengthOf(0.199, 'thin'), 'inch')).toBe('1⁄64″');
  expect(sayQuantity(lengthOf(0, 'thin'), 'inch')).toBe('0″');
});

test('diameters and radii are said with their signs', () => {
  expect(sayQuantity(diameterOf(34.925, 'short'), 'inch')).toBe('Ø 1 3⁄8″');
  expect(sayQuantity(radiusOf(16), 'mm')).toBe('R 16 mm (5⁄8″)');
});

test('an angle is said in degrees, and as a slope with the rise over 100 mm or 12 in', () => {
  const rad = Math.PI / 4;
  expect(sayQuantity(angleOf(rad), 'mm')).toBe('45°');
  expect(sayQuantity(slopeOf(rad), 'mm')).toBe('45°: 100 mm in 100 mm');
  expect(sayQuantity(slopeOf(rad), 'inch')).toBe('45°: 12″ in 12″');
});

test('counts are whole, ratios have the decimals asked for, and no figure is NaN', () => {
  expect(sayQuantity(countOf(3), 'mm')).toBe('3');
  expect(sayQuantity(ratioOf(0.4242, 3), 'mm')).toBe('0.424');
  expect(() => sayQuantity(lengthOf(NaN), 'mm')).toThrow(/NaN/);
  expect(() => sayQuantity(angleOf(Infinity), 'inch')).toThrow(/Infinity/);
});

test('words lay nested words in flat, and keep every figure in its order', () => {
  const inner = words`${lengthOf(10)} deep`;
  const all = words`Cut ${inner}, ${countOf(2)} times${[]}.`;
  expect(sayWords(all, 'mm')).toBe('Cut 10 mm (25⁄64″) deep, 2 times.');
  expect(figuresOf(all)).toEqual([lengthOf(10), countOf(2)]);
  expect(sayWords(joinWords([['a'], ['b'], inner], '; '), 'inch')).toBe('a; b; 25⁄64″ (10 mm) deep');
});
