import { describe, expect, it } from 'vitest';
import type { Item, Shape } from '../../../src/drawing/drawing.js';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { shape } from '../../../src/drawing/items.js';
import { boxesMeet } from '../../../src/geometry/box.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { rectangle } from '../../../src/geometry/shapes.js';
import { edgeLeaders } from '../../../src/jigs/rack-top/edge-leaders.js';
import { testFont } from '../../support/font.js';
import { solved, type Given } from './rack.js';

/** A bushing of 20 on a cutter of 12: the template's edge 4 inside the finished one. The ends are round, so the front edge runs straight from 100 to 700. */
const topOf = (board: Given = {}, cutter: Given = { diameter: 12, bushing: 20 }) =>
  solved({ board: { length: 800, width: 200, thickness: 27, endRadius: 100, ...board }, cutter });
const block = (from: number, to: number, y: number, height: number): Shape => shape('edge', rectangle(from, y, to - from, height), 'block');
const bounds = (items: readonly Item[]) => itemsBounds(items, testFont);

describe('edgeLeaders', () => {
  it('stand on the straight front edge, in its half of the board, on bare paper with 5 mm beside them', () => {
    const top = topOf();
    for (const taken of [[], [block(0, 300, 150, 40)], [block(0, 300, 150, 40), block(380, 600, 150, 40)], [block(0, 350, 185, 8), block(350, 560, 185, 8)]]) {
      const items = edgeLeaders(top, taken, testFont);
      const { x0, x1, y0, y1 } = bounds(items);
      expect([x0 >= 100, x1 <= 700, y0 > 102, y1 <= 200.3]).toEqual([true, true, true, true]);
      // As far left as there is room.
      expect(x0).toBeLessThan(taken.length === 0 ? 110 : 690);
      for (const other of taken) expect(boxesMeet({ x0: x0 - 4.9, x1: x1 + 4.9, y0: y0 - 1.9, y1: 195 }, pathBounds(other.path))).toBe(false);
    }
  });

  it('are none where all the straight edge is taken, though there is room over its round ends', () => {
    expect(edgeLeaders(topOf(), [block(0, 300, 150, 40), block(300, 550, 150, 40), block(550, 660, 150, 40)], testFont)).toEqual([]);
    expect(edgeLeaders(topOf(), [block(110, 400, 150, 40), block(400, 690, 150, 40)], testFont)).toEqual([]);
  });

  it('keep to their half of the board, two millimetres off its middle, or are none', () => {
    const kept = Array.from({ length: 81 }, (_, i) => 24 + 0.5 * i).map((width) => ({ width, items: edgeLeaders(topOf({ width, endRadius: width / 2 }), [], testFont) }));
    const some = kept.filter(({ items }) => items.length > 0);
    expect([some.length > 0, some.length < kept.length]).toEqual([true, true]);
    for (const { width, items } of some) expect(bounds(items).y0).toBeGreaterThan(width / 2 + 2);
    // The narrowest that has them is the first that is wide enough.
    const { width, items } = some[0]!;
    expect(width - bounds(items).y0).toBeGreaterThan((width - 0.5) / 2 - 2 - 0.5);
  });

  it('are none with a flush-trim bit, whose template is the finished edge', () => expect(edgeLeaders(topOf({}, { diameter: 12 }), [], testFont)).toEqual([]));
});
