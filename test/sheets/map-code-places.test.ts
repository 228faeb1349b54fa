import { describe, expect, it } from 'vitest';
import type { Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { boxContains, boxesMeet, growBox, type Box } from '../../src/geometry/box.js';
import { endOf } from '../../src/geometry/path.js';
import { point, type Point } from '../../src/geometry/point.js';
import { letteringBox } from '../../src/sheets/ink-index.js';
import { codeInside, codesAbove, codesBeside, type MapCell } from '../../src/sheets/map-codes.js';
import { testFont } from '../support/font.js';

const cell = (code: string, box: Box, outlines: readonly Point[] = []): MapCell => ({ code, box, outlines: () => outlines });
const wordsOf = (items: readonly Item[]): Lettering[] => items.filter((item): item is Lettering => item.kind === 'lettering');
const ticksOf = (items: readonly Item[]): Shape[] => items.filter((item): item is Shape => item.kind === 'shape');
const row = (width: number, codes: readonly string[]): MapCell[] => codes.map((code, i) => cell(code, { x0: 30 + i * width, y0: 40, x1: 30 + (i + 1) * width, y1: 60 }));
const boxOfCode = (item: Lettering): Box => letteringBox(item, testFont);

describe('codesAbove', () => {
  const codes = ['A1', 'B2', 'C13', 'D4', 'E5', 'F6'];
  const widest = (height: number): number => Math.max(...codes.map((code) => testFont.width(code, height)));

  it.each([
    // Cells just as wide as the widest code with a millimetre beside it at 3.5, 2.5; then more levels of 2.5, of 1.8.
    [widest(3.5) + 1.01, 3.5, 1], [widest(3.5) + 0.99, 2.5, 1], [widest(2.5) + 0.99, 2.5, 2], [(widest(2.5) + 1) / 3.99, 2.5, 4], [(widest(2.5) + 1) / 4.01, 1.8, 4], [(widest(1.8) + 1) / 3.99, 1.8, 4],
  ])('over cells of %d mm stand %d mm high on %d levels', (width, height, levels) => {
    const items = codesAbove(row(width, codes), testFont);
    const words = wordsOf(items);
    expect(words.map((w) => w.text)).toEqual(codes);
    expect(new Set(words.map((w) => w.height))).toEqual(new Set([height]));
    expect(new Set(words.map((w) => w.at.y.toFixed(6))).size).toBe(levels);
    words.forEach((w, i) => {
      expect(w.at.x).toBeCloseTo(30 + (i + 0.5) * width, 9);
      expect(boxOfCode(w).y1).toBeLessThan(40);
      // The lowest level right over the cells, each other one a line higher.
      expect(w.at.y).toBeCloseTo(40 - 0.35 * height - (i % levels) * 1.5 * height, 9);
      for (const other of words.slice(i + 1)) expect(boxesMeet(boxOfCode(w), boxOfCode(other))).toBe(false);
    });
    const ticks = ticksOf(items);
    // A tick down to its own cell from each code that stands higher.
    const high = words.filter((_, i) => i % levels !== 0);
    expect(ticks.map(({ path }) => [path.start.x, endOf(path.segments[0]!).x, endOf(path.segments[0]!).y])).toEqual(high.map((w) => [expect.closeTo(w.at.x, 9), expect.closeTo(w.at.x, 9), 40]));
    ticks.forEach(({ path }, i) => { expect(path.start.y).toBeGreaterThan(high[i]!.at.y); expect(path.start.y).toBeLessThan(40); });
  });

  it('are none where four levels do not do', () => expect(codesAbove(row((widest(1.8) + 1) / 4.01, codes), testFont)).toEqual([]));
});

describe('codesBeside', () => {
  it('stand right of their cells, level with the middle, as high as fits', () => {
    for (const [height, tall] of [[3.5, 20], [3.5, 3.5], [2.5, 3.4], [2.5, 2.5], [1.8, 2.4], [1.8, 1.8]] as const) {
      const [item, ...more] = wordsOf(codesBeside([cell('B7', { x0: 12, y0: 0, x1: 31, y1: tall })]));
      expect([item!.height, item!.text, item!.at, more]).toEqual([height, 'B7', point(32.5, (tall + height) / 2), []]);
    }
    expect(codesBeside([cell('B7', { x0: 12, y0: 0, x1: 31, y1: 1.7 })])).toEqual([]);
  });
});

describe('codeInside', () => {
  const box = { x0: 100, y0: 200, x1: 130, y1: 224 };
  const dots = (from: Point, to: Point): Point[] => Array.from({ length: 201 }, (_, i) => point(from.x + ((to.x - from.x) * i) / 200, from.y + ((to.y - from.y) * i) / 200));
  const only = (of: MapCell): Lettering => { const [item, ...more] = wordsOf(codeInside(of, testFont)); expect(more).toEqual([]); return item!; };

  it('stands in the middle, large, where nothing is in the way', () => {
    const item = only(cell('A1', box));
    expect([item.height, item.turn ?? 0, item.at]).toEqual([3.5, 0, point(115, 212 + 1.75)]);
    // As small as it must be, upright where it is too wide.
    expect(only(cell('A1', { x0: 100, y0: 200, x1: 130, y1: 200 + 3.9 })).height).toBeLessThan(3.5);
    const narrow = testFont.width('A123', 1.8) + 0.7;
    const upright = only(cell('A123', { x0: 100, y0: 200, x1: 100 + narrow, y1: 240 }));
    expect(upright.turn).toBe(-Math.PI / 2);
    expect(upright.at.x - upright.height / 2).toBeCloseTo(100 + narrow / 2, 9);
    expect(upright.at.y).toBe(220);
    expect(boxContains({ x0: 100.4, y0: 200.4, x1: 99.6 + narrow, y1: 239.6 }, boxOfCode(upright))).toBe(true);
    expect(codeInside(cell('A1', { x0: 100, y0: 200, x1: 101, y1: 201 }), testFont)).toEqual([]);
  });

  it('gives way to outlines, wherever they run, and stays within its cell', () => {
    for (const outline of [
      dots(point(115, 200), point(115, 224)), dots(point(100, 212), point(130, 212)), dots(point(100, 200), point(130, 224)),
      [...dots(point(115, 200), point(115, 224)), ...dots(point(100, 212), point(130, 212))],
    ]) {
      const item = only(cell('A1', box, outline));
      const clear = growBox(boxOfCode(item), 0.5);
      expect(outline.some((p) => p.x > clear.x0 && p.x < clear.x1 && p.y > clear.y0 && p.y < clear.y1)).toBe(false);
      expect(boxContains(growBox(box, -0.4), boxOfCode(item))).toBe(true);
      expect(item.height).toBe(3.5);
    }
    // Off a line down the middle to the nearer free place, left first; off a level one by as little.
    expect(only(cell('A1', box, dots(point(115, 200), point(115, 224)))).at).toEqual(point(115 - 30 / 8, 213.75));
    const off = only(cell('A1', box, dots(point(100, 212), point(130, 212)))).at;
    expect([off.x, Math.abs(off.y - 213.75)]).toEqual([115, 24 / 8]);
  });

  it('crosses as little as may be where nothing is clear', () => {
    const dense = Array.from({ length: 60 }, (_, i) => i).flatMap((i) => Array.from({ length: 48 }, (_, k) => point(100.2 + i * 0.5, 200.2 + k * 0.5)));
    // Thinner towards the lower right corner.
    const thin = dense.filter((p, i) => p.x < 118 || p.y < 214 || i % 7 === 0);
    const at = only(cell('A1', box, thin)).at;
    expect([at.x > 115, at.y > 213.75]).toEqual([true, true]);
  });
});
