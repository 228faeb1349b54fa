import { expect, test } from 'vitest';
import type { Item, Lettering, Shape } from '../../../src/drawing/drawing.js';
import { endOf } from '../../../src/geometry/path.js';
import { point } from '../../../src/geometry/point.js';
import { levelDimension } from '../../../src/jigs/v-cradle/level-dimension.js';

/** Straight lines as x, y of both ends; arrows are filled and left out. */
const linesOf = (items: readonly Item[]): number[][] => items.filter((item): item is Shape => item.kind === 'shape' && item.filled !== true)
  .map(({ path }) => [path.start.x, path.start.y, endOf(path.segments[0]!).x, endOf(path.segments[0]!).y]);
const tipsOf = (items: readonly Item[]): number[][] => items.filter((item): item is Shape => item.kind === 'shape' && item.filled === true).map(({ path }) => [path.start.x, path.start.y]);
const wordsOf = (items: readonly Item[]): Lettering[] => items.filter((item): item is Lettering => item.kind === 'lettering');

test('a height is drawn between its points, from each a line out to it, unless it stands there', () => {
  const items = levelDimension({ high: point(100, 20), low: point(90, 50), x: 130, side: 'right', label: '30 mm' });
  // A millimetre off each point, and 1.5 past the dimension’s own line.
  expect(linesOf(items).slice(0, 2)).toEqual([[101, 20, 131.5, 20], [91, 50, 131.5, 50]]);
  expect(linesOf(items)).toHaveLength(3);
  const [left] = [levelDimension({ high: point(100, 20), low: point(100, 50), x: 60, side: 'left', label: '30 mm' })];
  expect(linesOf(left!).slice(0, 2)).toEqual([[99, 20, 58.5, 20], [99, 50, 58.5, 50]]);
  expect(linesOf(levelDimension({ high: point(100, 20), low: point(100.9, 50), x: 100, side: 'right', label: '30 mm' }))).toHaveLength(1);
  expect(linesOf(levelDimension({ high: point(100, 20), low: point(101.1, 50), x: 100, side: 'right', label: '30 mm' }))).toHaveLength(2);
});

test('arrows point at both ends from inside, or from outside where it is short', () => {
  const long = levelDimension({ high: point(0, 20), low: point(0, 60), x: 10, side: 'right', label: '40 mm' });
  const short = levelDimension({ high: point(0, 20), low: point(0, 24), x: 10, side: 'right', label: '4 mm' });
  for (const [items, low, inside] of [[long, 60, true], [short, 24, false]] as const) {
    expect(tipsOf(items)).toEqual([[10, 20], [10, low]]);
    const [, from, , to] = linesOf(items).at(-1)!;
    expect([from! > 20, to! < low]).toEqual([inside, inside]);
  }
});

test('its label stands level beside the middle, on the side asked for, lines one under the other', () => {
  const [one] = wordsOf(levelDimension({ high: point(0, 20), low: point(0, 60), x: 10, side: 'right', label: '40 mm' }));
  expect([one!.at, one!.anchor, one!.turn]).toEqual([point(12, 41.25), 'start', 0]);
  const two = wordsOf(levelDimension({ high: point(0, 20), low: point(0, 60), x: 10, side: 'left', label: ['depth', '40 mm'] }));
  expect(two.map(({ at, anchor, text }) => [at.x, at.y, anchor, text])).toEqual([[8, 41.25 - 1.875, 'end', 'depth'], [8, 41.25 + 1.875, 'end', '40 mm']]);
});
