import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calibrationSquare } from '../../src/drawing/calibration-square.js';
import { cleanText } from '../../src/drawing/clean-text.js';
import type { Item } from '../../src/drawing/drawing.js';
import { filled, letter, shape } from '../../src/drawing/items.js';
import { lineStyles } from '../../src/drawing/line-types.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { uniteBoxes } from '../../src/geometry/box.js';
import { endOf } from '../../src/geometry/path.js';
import { distance } from '../../src/geometry/point.js';
import { after, rotation, transformPath, translation } from '../../src/geometry/transform.js';
import { line, polyline, rectangle } from '../../src/geometry/shapes.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { writeSvg } from '../../src/writers/svg/write-svg.js';
import { testFont as font } from '../support/font.js';
import { darkness, rasterSvg } from '../support/raster-svg.js';
import { partShapes, readSvg } from '../support/read-svg.js';

const sheetOf = (items: readonly Item[], title = 'sheet'): Sheet => ({ code: '1', title, width: 215.9, height: 279.4, items });
const svg = (items: readonly Item[], title?: string) => writeSvg(sheetOf(items, title), font);
const p = (x: number, y: number) => ({ x, y });

describe('writeSvg', () => {
  it('keeps the 100 mm of the calibration square within 1 µm', () => {
    const [square] = partShapes(readSvg(svg(calibrationSquare(p(17.123456, 33.98765), 'mm'))), 'calibration-square');
    const { x0, y0, x1, y1 } = pathBounds(square!.subpaths[0]!);
    expect(Math.abs(x1 - x0 - 100)).toBeLessThan(1e-3);
    expect(Math.abs(y1 - y0 - 100)).toBeLessThan(1e-3);
    expect(Math.abs(x0 - 17.123456)).toBeLessThan(1e-4);
  });

  it('writes the pen width and dashes of the line type, and where in its dashes a cut line starts', () => {
    const hidden = { ...shape('hidden', line(p(10, 10), p(50, 10)), 'far'), phase: 1.25 };
    const [found] = partShapes(readSvg(svg([hidden])), 'far');
    expect(found!.line).toBe('hidden');
    expect(Number(found!.attributes['stroke-width'])).toBe(lineStyles.hidden.width);
    expect(found!.attributes['stroke-dasharray']!.split(' ').map(Number)).toEqual(lineStyles.hidden.dash);
    expect(found!.attributes['stroke-dashoffset']).toBe('1.25');
  });

  it('shares an element between unnamed neighbours of one unbroken look only', () => {
    const tick = (x: number) => shape('waste', line(p(x, 0), p(x, 2)));
    const centre = (x: number) => shape('centre', line(p(x, 0), p(x, 40)));
    const named = shape('waste', line(p(9, 0), p(9, 2)), 'gauge');
    const { shapes } = readSvg(svg([tick(1), tick(2), named, tick(3), centre(4), centre(5)]));
    expect(shapes.map((s) => [s.line, s.part, s.subpaths.length])).toEqual([
      ['waste', undefined, 2], ['waste', 'gauge', 1], ['waste', undefined, 1], ['centre', undefined, 1], ['centre', undefined, 1],
    ]);
  });

  it('fills what is filled and strokes the rest', () => {
    const head = polyline([p(0, 0), p(3, 1), p(3, -1)], true);
    const { shapes } = readSvg(svg([filled('dimension', head), shape('dimension', head)]));
    expect(shapes.map((s) => [s.attributes['fill'], s.attributes['stroke']])).toEqual([['#000', 'none'], [undefined, undefined]]);
  });

  it('sets lettering where it belongs: anchor, turn and height', () => {
    const ends = (['start', 'middle', 'end'] as const).map((anchor) => letter(p(100, 50), 'HH', { height: 5, anchor }));
    const boxes = readSvg(svg(ends)).shapes.map((s) => uniteBoxes(s.subpaths.map(pathBounds)));
    const width = font.width('HH', 5);
    expect(boxes[1]!.x0 - boxes[0]!.x0).toBeCloseTo(-width / 2, 2);
    expect(boxes[2]!.x0 - boxes[0]!.x0).toBeCloseTo(-width, 2);
    for (const b of boxes) expect([b.y0, b.y1]).toEqual([45, 50]);
    const up = readSvg(svg([letter(p(100, 50), 'HH', { height: 5, turn: -Math.PI / 2 })])).shapes[0]!;
    const box = uniteBoxes(up.subpaths.map(pathBounds));
    expect([box.x0, box.x1]).toEqual([95, 100]);
    expect(box.y1).toBeLessThan(50);
  });

  it('outlines lettering within 15 µm of the font, at any height and turn', () => {
    for (const [height, turn] of [[1.8, 0], [2.5, -Math.PI / 2], [10, 0.7], [60, 2]] as const) {
      const item = letter(p(120, 90), 'Aé 3⁄8 (Ø)', { height, turn });
      const map = after(rotation(turn), translation(120, 90));
      const truth = font.outlines(item.text, height).map((path) => transformPath(map, path));
      const { subpaths } = readSvg(svg([item])).shapes[0]!;
      expect(subpaths).toHaveLength(truth.length);
      subpaths.forEach((path, i) => {
        expect(path.segments.length).toBe(truth[i]!.segments.length);
        for (const [k, segment] of path.segments.entries()) expect(distance(endOf(segment), endOf(truth[i]!.segments[k]!))).toBeLessThan(15e-3);
      });
    }
  });

  it('clips lettering that a tile cuts through', () => {
    const text = letter(p(20, 50), 'MMMMMMMM', { height: 10 });
    // A row of 4 mm beyond the clip's right side, across a letter's strokes.
    const darkest = (item: Item): number => {
      const image = rasterSvg(svg([item]), 127);
      return Math.max(...Array.from({ length: 20 }, (_, i) => darkness(image, 300 + i, 225)));
    };
    expect(darkest({ ...text, clip: { x0: 20, y0: 30, x1: 58, y1: 60 } })).toBe(0);
    expect(darkest(text)).toBeGreaterThan(0.5);
  });

  it('is well-formed and keeps its words whatever they are', () => {
    const hostile = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.constantFrom('</svg>', ']]>', '<!--', '&amp;lt;', '"\'>', '\u202Eabc', '\u0000', '\uD800', '\uFFFF', '<script>alert(1)</script>', '😀中'),
    );
    fc.assert(fc.property(hostile, (text) => {
      const file = readSvg(svg([letter(p(10, 10), text), shape('edge', rectangle(1, 1, 2, 2), text)], text));
      expect(file.title).toBe(cleanText(text));
      expect(file.shapes[0]!.label).toBe(cleanText(text));
      expect(file.shapes[1]!.part).toBe(cleanText(text));
    }));
  });

  it('writes ten thousand letters', () => {
    expect(readSvg(svg([letter(p(10, 10), 'w'.repeat(10000))])).shapes[0]!.label).toHaveLength(10000);
  });

  it('refuses a coordinate that is not a number', () => {
    for (const bad of [NaN, Infinity, 1e300]) expect(() => svg([shape('edge', line(p(0, 0), p(bad, 0)))])).toThrow(/coordinate/);
    expect(() => svg([letter(p(NaN, 0), 'x')])).toThrow(/coordinate/);
  });

  it('writes the same text for the same sheet', () => {
    const items = [...calibrationSquare(p(20, 20), 'inch'), letter(p(20, 200), '1 3⁄8″')];
    expect(svg(items)).toBe(svg(items));
  });
});
