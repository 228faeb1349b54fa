import { expect, test } from 'vitest';
import { rowLetters } from '../../src/sheets/row-letters.js';

test('rows are lettered A to Z without I and O, then in twos and threes, none twice', () => {
  expect([0, 7, 8, 12, 13, 23, 24, 47, 48, 24 * 25 - 1, 24 * 25, 24 * 25 + 1].map(rowLetters)).toEqual(['A', 'H', 'J', 'N', 'P', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA', 'AAB']);
  expect(new Set(Array.from({ length: 2000 }, (_, row) => rowLetters(row))).size).toBe(2000);
});
