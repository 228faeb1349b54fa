import { describe, expect, it } from 'vitest';
import type { Item } from '../../src/drawing/drawing.js';
import { filled, letter, shape } from '../../src/drawing/items.js';
import { point } from '../../src/geometry/point.js';
import { line, polyline, rectangle } from '../../src/geometry/shapes.js';
import { indexInk } from '../../src/sheets/ink-index.js';
import { hasInk, type GridTile } from '../../src/sheets/tile-grid.js';
import { cutter } from '../../src/sheets/tile-ink.js';
import type { Box } from '../../src/geometry/box.js';
import { testFont } from '../support/font.js';

/** Whether a box holds ink of some items, all of which reach the sheet. */
const inked = (items: readonly Item[], box: Box): boolean => {
  const cut = cutter(indexInk(items, testFont));
  const ink = cut.index.inks.flatMap((each, i): [number, number][] => (each.kind === 'block' ? [[i, -1]] : each.segments.map((_, k) => [i, k])));
  const tile: GridTile = { row: 0, column: 0, core: box, window: box, ink };
  return hasInk(cut, tile, box, testFont);
};
const box = { x0: 100, y0: 50, x1: 300, y1: 250 };
const long = shape('edge', rectangle(0, 0, 400, 300));

describe('hasInk', () => {
  it('sees a line that lies in the box, crosses it or begins in it, and no line beside it', () => {
    for (const path of [line(point(120, 60), point(130, 70)), line(point(0, 200), point(400, 201)), line(point(299, 249), point(400, 400)), line(point(0, 0), point(101, 51)), rectangle(90, 40, 20, 20)]) {
      expect(inked([long, shape('edge', path)], box)).toBe(true);
    }
    for (const path of [line(point(0, 49), point(400, 49)), line(point(99, 0), point(99, 400)), line(point(301, 100), point(320, 100)), line(point(150, 251), point(160, 260)), line(point(40, 150), point(105, 40))]) {
      expect(inked([long, shape('edge', path)], box)).toBe(false);
    }
    expect(inked([long], box)).toBe(false);
  });

  it('sees lettering by its glyphs, not by the room kept for accents and descenders', () => {
    // Capitals 20 mm high on a line 10 mm above the box: only what hangs below the line could reach down to it, and nothing does.
    const above = letter(point(150, 48), 'HHH', { height: 20 });
    expect(inked([above], box)).toBe(false);
    expect(inked([letter(point(150, 48), 'gjg', { height: 20 })], box)).toBe(true);
    expect(inked([letter(point(150, 60), 'HHH', { height: 20 })], box)).toBe(true);
    expect(inked([letter(point(150, 150), 'HHH', { height: 20 })], box)).toBe(true);
    // From its middle or its end, upright: the same glyphs elsewhere.
    for (const anchor of ['start', 'middle', 'end'] as const) {
      const width = testFont.width('HHH', 20);
      const left = 100 - width * { start: 0, middle: 0.5, end: 1 }[anchor];
      expect([anchor, inked([letter(point(98 - width + (100 - left), 150), 'HHH', { height: 20, anchor })], box)]).toEqual([anchor, false]);
      expect([anchor, inked([letter(point(106 - width + (100 - left), 150), 'HHH', { height: 20, anchor })], box)]).toEqual([anchor, true]);
    }
    expect(inked([letter(point(98, 200), 'HHH', { height: 20, turn: -Math.PI / 2 })], box)).toBe(false);
    expect(inked([letter(point(110, 200), 'HHH', { height: 20, turn: -Math.PI / 2 })], box)).toBe(true);
  });

  it('sees a filled shape that reaches in', () => {
    const triangle = (x: number, y: number): Item => filled('dimension', polyline([point(x, y), point(x + 30, y), point(x + 30, y + 30)], true));
    expect([inked([triangle(290, 240)], box), inked([triangle(150, 150)], box), inked([triangle(301, 150)], box)]).toEqual([true, true, false]);
    // The corner of its box that it leaves empty.
    expect(inked([triangle(290, 230)], { ...box, x1: 295, y0: 245 })).toBe(false);
  });

  it('sees nothing in a box of no size', () => {
    const [x, y] = [150, 150];
    const across = shape('edge', line(point(0, 150), point(400, 150)));
    expect([inked([across], { x0: x, y0: 100, x1: x, y1: 200 }), inked([across], { x0: 100, y0: y, x1: 200, y1: y }), inked([across], { x0: 200, y0: 100, x1: 100, y1: 200 })]).toEqual([false, false, false]);
  });
});
