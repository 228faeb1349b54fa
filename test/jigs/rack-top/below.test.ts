import { expect, it } from 'vitest';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { testFont } from '../../support/font.js';
import { labelCrossings, labelOverlaps } from '../../support/label-crossings.js';
import { patternsOf } from './rack.js';

it('lettering that finds no room on a board full of holes stands below it, in rows that run no further than the board', () => {
  const board = { length: 190, width: 46, thickness: 18 };
  const holes = [20, 50, 80, 110, 140, 170].map((along) => ({ round: 17, at: [along, 23] }));
  const whole = patternsOf({ board, holes }).get('top')!;
  const words = whole.items.filter((item) => item.kind === 'lettering');
  const under = words.filter((item) => item.at.y > board.width);
  // Each hole has its name said.
  for (const number of [1, 2, 3, 4, 5, 6]) expect(words.some(({ text }) => text.startsWith(`HOLE ${number}`))).toBe(true);
  expect(under.length).toBeGreaterThan(0);
  const box = itemsBounds(under, testFont);
  expect(box.y0).toBeGreaterThan(board.width);
  expect(box.x0).toBeGreaterThanOrEqual(0);
  expect(box.x1).toBeLessThanOrEqual(board.length);
  expect({ crossed: labelCrossings(whole.items, testFont), overlapping: labelOverlaps(whole.items, testFont) }).toEqual({ crossed: [], overlapping: [] });
});
