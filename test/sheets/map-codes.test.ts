import { describe, expect, it } from 'vitest';
import { boxesMeet, growBox } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { clipPath } from '../../src/geometry/clip-path.js';
import { rectangle } from '../../src/geometry/shapes.js';
import type { Drawing, Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import { assemblyMap } from '../../src/sheets/assembly-map.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor, slottedBoard } from './fixtures.js';

const mapOf = (drawing: Drawing, turn: 'portrait' | 'landscape'): { items: readonly Item[]; height: number; codes: Lettering[]; wanted: readonly string[] } => {
  const set = layOut(requestFor([jigOf('top', [drawing])], { wishes: { ...requestFor([]).wishes, turn } }), testFont);
  const [tiled] = set.tiled as [(typeof set.tiled)[number]];
  const map = assemblyMap(tiled, { width: 180, height: 70 }, testFont);
  return { ...map, codes: map.items.filter((i): i is Lettering => i.kind === 'lettering'), wanted: tiled.plan.tiles.map(tiled.codeOf) };
};

const strokes = (items: readonly Item[]): Shape[] => items.filter((i): i is Shape => i.kind === 'shape');

describe('assemblyMap', () => {
  it.each([
    ['a row of nine', slottedBoard(), 'portrait'], ['two rows', slottedBoard(), 'landscape'],
    ['a column', plainDrawing('post', [rectangle(0, 0, 60, 1200)]), 'portrait'], ['a long row', slottedBoard(5700), 'portrait'],
  ] as const)('sets every code clear of all lines and of the other codes: %s', (_, drawing, turn) => {
    const { items, codes, wanted } = mapOf(drawing, turn);
    expect(codes.map((c) => c.text)).toEqual(wanted);
    const boxes = codes.map((c) => itemBounds(c, testFont));
    for (const [i, box] of boxes.entries()) {
      expect({ code: codes[i]!.text, crossed: strokes(items).some((s) => clipPath(s.path, box).length > 0) }).toEqual({ code: codes[i]!.text, crossed: false });
      expect(boxes.slice(i + 1).some((other) => boxesMeet(other, box))).toBe(false);
    }
  });

  it('sets no code smaller than 2.5 mm over the row of a board of 1.5 m, and reaches no higher than its block', () => {
    const { items, codes, height } = mapOf(slottedBoard(), 'portrait');
    for (const { height: capital } of codes) expect(capital).toBeGreaterThanOrEqual(2.5);
    const bounds = items.map((i) => itemBounds(i, testFont));
    expect(Math.min(...bounds.map((b) => b.y0))).toBeGreaterThanOrEqual(-1e-9);
    expect(Math.max(...bounds.map((b) => b.y1))).toBeLessThanOrEqual(height + 0.5);
  });

  it('stands each code over its own sheet', () => {
    const { items, codes } = mapOf(slottedBoard(), 'portrait');
    const cells = strokes(items).filter((s) => s.part === 'map-sheet').map((s) => pathBounds(s.path));
    codes.forEach((code, i) => {
      expect(code.at.x).toBeCloseTo((cells[i]!.x0 + cells[i]!.x1) / 2, 9);
      expect(boxesMeet(growBox(cells[i]!, 5), itemBounds(code, testFont))).toBe(true);
    });
  });
});
