import { describe, expect, it } from 'vitest';
import { boxesMeet, growBox } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { clipPath } from '../../src/geometry/clip-path.js';
import { rectangle } from '../../src/geometry/shapes.js';
import type { Drawing, Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { itemBounds, itemsBounds } from '../../src/drawing/item-bounds.js';
import { assemblyMap } from '../../src/sheets/assembly-map.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { papers } from '../../src/units/paper.js';
import { ownPaper } from '../../src/units/parse-paper.js';
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
    ['a column', plainDrawing('post', [rectangle(0, 0, 60, 1200)], { whole: true }), 'portrait'], ['a long row', slottedBoard(5700), 'portrait'],
  ] as const)('sets every code clear of all lines and of the other codes: %s', (_, drawing, turn) => {
    const { items, codes, wanted } = mapOf(drawing, turn);
    expect(codes.map((c) => c.text)).toEqual(wanted);
    const boxes = codes.map((c) => itemBounds(c, testFont));
    for (const [i, box] of boxes.entries()) {
      expect({ code: codes[i]!.text, crossed: strokes(items).some((s) => clipPath(s.path, box).length > 0) }).toEqual({ code: codes[i]!.text, crossed: false });
      expect(boxes.slice(i + 1).some((other) => boxesMeet(other, box))).toBe(false);
    }
  });

  it.each([
    ['a narrow tall board', 30, 9000], ['a tall board that just takes two columns', 200, 3000], ['a sliver', 2, 20_000],
    ['a long batten', 12_000, 30], ['a batten of several hundred sheets', 60_000, 30], ['a plate', 1200, 2400], ['a vast field', 7000, 7000], ['a plate as wide as one long sheet', 1100, 300],
  ] as const)('keeps all of the map of %s within its room, whatever the paper', (_, width, height) => {
    for (const paper of [papers['letter']!, papers['a4']!, papers['a2']!, ownPaper(210, 1200)]) for (const turn of ['portrait', 'landscape'] as const) for (const room of [{ width: 130, height: 50 }, { width: 180, height: 70 }, { width: 560, height: 70 }]) {
      const request = requestFor([jigOf('top', [plainDrawing('board', [rectangle(0, 0, width, height)], { whole: true })])], { paper, wishes: { ...requestFor([]).wishes, turn } });
      const { items } = assemblyMap(layOut(request, testFont).tiled[0]!, room, testFont);
      const box = itemsBounds(items, testFont);
      expect({ paper: paper.name, turn, room, x0: box.x0 >= -1e-9 ? 0 : box.x0, x1: box.x1 <= room.width + 1e-9 ? 0 : box.x1 }).toEqual({ paper: paper.name, turn, room, x0: 0, x1: 0 });
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
