import { expect, test } from 'vitest';
import { isCorrected } from '../../src/sheets/layout-request.js';
import { atLeast, atMost } from '../../src/sheets/limit-words.js';

test.each([
  // To a tenth of a millimetre, or a 64th of an inch: 25.5 mm are 64.25 of them.
  ['mm', 12.37, '12.3 mm', '12.4 mm'], ['mm', 12.3, '12.3 mm', '12.3 mm'], ['mm', 0.3, '0.3 mm', '0.3 mm'], ['mm', 1200.02, '1200 mm', '1200.1 mm'],
  ['inch', 25.5, '1″', '1 1⁄64″'], ['inch', 25.4, '1″', '1″'], ['inch', 25.4 * 3.99, '3 63⁄64″', '4″'], ['inch', (25.4 * 7) / 64, '7⁄64″', '7⁄64″'],
] as const)('in %s a limit of %d is said as at most %s and at least %s', (units, mm, most, least) => {
  expect(atMost(mm, units).split(' (')[0]).toBe(most);
  expect(atLeast(mm, units).split(' (')[0]).toBe(least);
});

test('a correction of either factor is one', () => {
  expect([isCorrected({ x: 1, y: 1 }), isCorrected({ x: 1.01, y: 1 }), isCorrected({ x: 1, y: 0.99 }), isCorrected({ x: 1.01, y: 0.99 })]).toEqual([false, true, true, true]);
});
