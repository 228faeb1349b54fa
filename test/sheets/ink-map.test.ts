import { describe, expect, it } from 'vitest';
import type { Item } from '../../src/drawing/drawing.js';
import { filled, letter, shape } from '../../src/drawing/items.js';
import type { Path } from '../../src/geometry/path.js';
import { point } from '../../src/geometry/point.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { circle, ellipse, line, polyline, rectangle } from '../../src/geometry/shapes.js';
import { indexInk } from '../../src/sheets/ink-index.js';
import { inkIn, inkMap, isClear, type InkMap } from '../../src/sheets/ink-map.js';
import { testFont } from '../support/font.js';

const snake: Path = { start: point(210, 140), closed: false, segments: [{ kind: 'cubic', c1: point(320, 40), c2: point(130, 60), to: point(260, 180) }] };
/** A cubic whose handles reach no farther than its first third: much of its length lies behind them. */
const late: Path = { start: point(30, 160), closed: false, segments: [{ kind: 'cubic', c1: point(31, 160), c2: point(32, 161), to: point(190, 178) }] };

const items: readonly Item[] = [
  shape('edge', circle(point(70, 60), 33)), shape('edge', ellipse(point(180, 70), 60, 9, 0.5)), shape('edge', line(point(12, 31), point(290, 200))),
  shape('edge', rectangle(20, 20, 40, 30)), shape('edge', snake), shape('edge', late), shape('edge', circle(point(150, 20), 0.4)),
];

/** Whether the cell of a place holds ink. */
const isInked = (map: InkMap, x: number, y: number): boolean => {
  const [c, r] = [Math.min(map.columns - 1, Math.floor((x - map.origin.x) / map.cell.x)), Math.min(map.rows - 1, Math.floor((y - map.origin.y) / map.cell.y))];
  return inkIn(map, c, c + 1, r, r + 1) === 1;
};

describe('inkMap', () => {
  const index = indexInk(items, testFont);

  for (const cell of [point(2, 2), point(5, 3), point(3, 7)]) {
    it(`holds ink where the lines run and nowhere else: cells of ${cell.x} by ${cell.y}`, () => {
      const map = inkMap(index, cell);
      const along = index.inks.flatMap((ink) => (ink.kind === 'stroke' ? ink.segments : []))
        .flatMap(({ segment, from }) => Array.from({ length: 2001 }, (_, i) => segmentPoint(segment, from, i / 2000)));
      // Samples half a cell apart miss a cell whose corner a line but nicks; the cell on one side of the place or the other is never missed.
      for (const { x, y } of along) {
        const beside = [-0.5, 0, 0.5].flatMap((a) => [-0.5, 0, 0.5].map((b) => [Math.min(Math.max(x + a * cell.x, map.origin.x), map.origin.x + map.extent.x), Math.min(Math.max(y + b * cell.y, map.origin.y), map.origin.y + map.extent.y)] as const));
        expect(beside.some(([p, q]) => isInked(map, p, q))).toBe(true);
      }
      for (let r = 0; r < map.rows; r++) {
        for (let c = 0; c < map.columns; c++) {
          if (inkIn(map, c, c + 1, r, r + 1) === 0) continue;
          const [x0, y0] = [map.origin.x + c * cell.x, map.origin.y + r * cell.y];
          expect(along.some(({ x, y }) => x >= x0 - 0.1 && x <= x0 + cell.x + 0.1 && y >= y0 - 0.1 && y <= y0 + cell.y + 0.1), `${x0} ${y0}`).toBe(true);
        }
      }
    });
  }

  it('counts any box of cells as the sum of its cells', () => {
    const map = inkMap(index, point(9, 11));
    for (const [a, b, c, d] of [[0, map.columns, 0, map.rows], [3, 7, 2, 9], [5, 6, 5, 6], [10, 30, 0, 4]] as const) {
      let sum = 0;
      for (let x = a; x < Math.min(b, map.columns); x++) for (let y = c; y < d; y++) sum += inkIn(map, x, x + 1, y, y + 1);
      expect(inkIn(map, a, Math.min(b, map.columns), c, d)).toBe(sum);
    }
  });

  it('has as many cells as cover the drawing, one at the least, and no more for a rounding', () => {
    const of = (width: number, height: number) => { const { columns, rows, extent } = inkMap(indexInk([shape('edge', rectangle(7, 9, width, height))], testFont), point(10, 10)); return [columns, rows, extent.x, extent.y]; };
    expect([of(50, 30), of(50.001, 29.9), of(3, 2)]).toEqual([[5, 3, 50, 30], [6, 3, expect.closeTo(50.001, 9), expect.closeTo(29.9, 9)], [1, 1, 3, 2]]);
    expect(of(0.1 * 3 * 100, 30)).toEqual([3, 3, expect.closeTo(30, 9), 30]);
  });

  it('takes lettering and filled shapes by their boxes, upright and level lines whole', () => {
    const block = filled('dimension', polyline([point(100, 100), point(140, 100), point(140, 130)], true));
    const map = inkMap(indexInk([shape('edge', rectangle(0, 0, 200, 200)), block, letter(point(20, 60), 'HHHHHH', { height: 10 })], testFont), point(4, 4));
    // The empty corner of the triangle, and between the bars of an H.
    expect([isInked(map, 102, 128), isInked(map, 22, 53), isInked(map, 150, 150)]).toEqual([true, true, false]);
    for (let at = 1; at < 200; at += 4) expect([isInked(map, at, 0), isInked(map, at, 199), isInked(map, 0, at), isInked(map, 199, at)]).toEqual([true, true, true, true]);
  });
});

describe('isClear', () => {
  const map = inkMap(indexInk([shape('edge', rectangle(100, 50, 300, 200))], testFont), point(10, 10));
  it('is told by the cells that a box lies in, and is so of all that lies outside', () => {
    expect(isClear(map, { x0: 115, y0: 65, x1: 385, y1: 235 })).toBe(true);
    for (const box of [{ x0: 105, y0: 65, x1: 115, y1: 75 }, { x0: 385, y0: 65, x1: 395, y1: 75 }, { x0: 115, y0: 45, x1: 125, y1: 55 }, { x0: 115, y0: 235, x1: 125, y1: 245 }]) expect(isClear(map, box)).toBe(false);
    for (const box of [{ x0: 20, y0: 60, x1: 99, y1: 70 }, { x0: 120, y0: 10, x1: 130, y1: 49 }]) expect(isClear(map, box)).toBe(true);
  });
});
