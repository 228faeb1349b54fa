import { describe, expect, it } from 'vitest';
import type { Item, Lettering, Shape } from '../../src/drawing/drawing.js';
import { letter, shape } from '../../src/drawing/items.js';
import { boxesMeet } from '../../src/geometry/box.js';
import { endOf } from '../../src/geometry/path.js';
import { distance, point } from '../../src/geometry/point.js';
import { line, rectangle } from '../../src/geometry/shapes.js';
import { choosePlan } from '../../src/sheets/choose-plan.js';
import { letteringBox } from '../../src/sheets/ink-index.js';
import type { TilePlan } from '../../src/sheets/plan-tiles.js';
import { seamsOf, tilesByPlace } from '../../src/sheets/seam-lines.js';
import { datumMark, seamItems } from '../../src/sheets/tile-marks.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor } from './fixtures.js';

const planOf = (items: readonly Item[], datum = point(0, 0)): TilePlan => {
  const drawing = plainDrawing('board', [rectangle(0, 0, 400, 500)], { datum });
  const jig = jigOf('board', [{ ...drawing, items: [...drawing.items, ...items] }]);
  return choosePlan(jig.patterns[0]!, jig, requestFor([jig]), testFont);
};
const codeOf = ({ row, column }: { row: number; column: number }): string => `${row}${column}`;

describe('seamItems', () => {
  /** Lettering across every seam, whichever way it runs: rows and columns of words. */
  const words = Array.from({ length: 12 }, (_, i) => i).flatMap((i) => [
    letter(point(20 + (i % 2) * 9, 30 + i * 38), 'a long line of words across the board that any seam up and down must cut, wherever it runs', { height: 3 }),
    letter(point(30 + i * 32, 480), 'the same upwards, for a seam from side to side, as long as the board is high', { height: 3, turn: -Math.PI / 2 }),
  ]);

  for (const [name, items] of [['a bare board', []], ['one full of lettering', words]] as const) {
    it(`draws each seam from end to end of what both sheets see but for its marks and lettering: ${name}`, () => {
      const plan = planOf(items);
      const tiles = tilesByPlace(plan);
      let seen = 0;
      let hints = 0;
      for (const tile of plan.tiles) {
        for (const seam of seamsOf(plan, tiles, tile)) {
          const drawn = seamItems([seam], tile, plan, { codeOf, called: 'sheet', font: testFont });
          const strokes = drawn.filter((item): item is Shape => item.kind === 'shape' && item.part === 'seam')
            .map(({ path }) => [path.start, endOf(path.segments[0]!)] as const);
          const across = (p: { x: number; y: number }): number => (seam.along === 'x' ? p.x : p.y);
          const along = (p: { x: number; y: number }): number => (seam.along === 'x' ? p.y : p.x);
          for (const p of strokes.flat()) expect(across(p)).toBe(seam.at);
          // A mark is open for 4 mm either way; lettering, where the tile shows it, for half a millimetre round its box.
          const isGap = (at: number): boolean => seam.marks.some((m) => Math.abs(along(m) - at) < 4)
            || tile.ink.some(([number, segment]) => {
              const ink = plan.cut.index.inks[number]!;
              if (segment >= 0 || ink.kind !== 'block' || ink.item.kind !== 'lettering') return false;
              const { x0, x1, y0, y1 } = ink.box;
              const [a0, a1, b0, b1] = seam.along === 'x' ? [x0, x1, y0, y1] : [y0, y1, x0, x1];
              return a0 - 0.5 <= seam.at && a1 + 0.5 >= seam.at && b0 - 0.5 < at && at < b1 + 0.5;
            });
          for (let at = seam.from + 0.05; at < seam.to; at += 0.25) {
            const inked = strokes.some(([p, q]) => along(p) <= at && at <= along(q));
            // A stroke of half a millimetre or less is left out.
            const isCrumb = [...Array(21).keys()].some((k) => isGap(at + (k - 10) * 0.05));
            if (isGap(at)) expect(inked, `${at}`).toBe(false);
            else if (!isCrumb) expect(inked, `${at}`).toBe(true);
          }
          for (const [p, q] of strokes) expect(distance(p, q)).toBeGreaterThan(0.5);
          const hint = drawn.find((item): item is Lettering => item.kind === 'lettering' && item.part === 'seam-hint');
          if (hint !== undefined) {
            hints++;
            const box = letteringBox(hint, testFont);
            const side = seam.along === 'x' ? [box.x0, box.x1] : [box.y0, box.y1];
            // Words of the sheet that is trimmed stand beyond the seam, on what is cut off; those of the other before it.
            expect(seam.first === tile ? side[0]! - seam.at : seam.at - side[1]!).toBeGreaterThan(0.4);
            expect(hint.text).toContain(`sheet ${codeOf(seam.first === tile ? seam.second : seam.first)}`);
            for (const m of seam.marks) expect(boxesMeet(box, { x0: m.x - 4, y0: m.y - 4, x1: m.x + 4, y1: m.y + 4 })).toBe(false);
            expect(box.x0 >= tile.window.x0 && box.x1 <= tile.window.x1 && box.y0 >= tile.window.y0 && box.y1 <= tile.window.y1).toBe(true);
          }
          seen++;
        }
      }
      expect(seen).toBeGreaterThanOrEqual(4);
      if (items.length === 0) expect(hints).toBe(seen);
    });
  }
});

describe('datumMark', () => {
  const marked = (datum: { x: number; y: number }, items: readonly Item[] = []): readonly (readonly Item[])[] => {
    const plan = planOf(items, datum);
    return plan.tiles.map((tile) => datumMark(plan, tile, testFont)).filter((found) => found.length > 0);
  };

  it('is four arms about the datum from 1 to 3 mm, its word on no ink, on each sheet that shows the whole of it', () => {
    const datum = point(63, 71);
    const found = marked(datum);
    expect(found.length).toBeGreaterThan(0);
    for (const items of found) {
      const arms = items.filter((item): item is Shape => item.kind === 'shape').map(({ path }) => [path.start, endOf(path.segments[0]!)]
        .map((p) => [p.x - datum.x, p.y - datum.y]).sort((a, b) => Math.hypot(...a) - Math.hypot(...b)).flat().map((v) => v + 0));
      expect(arms.sort()).toEqual([[-1, 0, -3, 0], [1, 0, 3, 0], [0, -1, 0, -3], [0, 1, 0, 3]].sort());
      const word = items.find((item): item is Lettering => item.kind === 'lettering')!;
      expect(word.text).toBe('datum');
      expect(letteringBox(word, testFont).x1).toBeLessThan(datum.x - 3);
      expect(letteringBox(word, testFont).y1).toBeLessThan(datum.y);
    }
  });

  it('has its word below where ink is above, and none where ink is on both sides', () => {
    const datum = point(63, 71);
    const bar = (dy: number): Item => shape('edge', line(point(datum.x - 20, datum.y + dy), point(datum.x - 4, datum.y + dy)), 'bar');
    const words = (items: readonly Item[]): number[] => marked(datum, items).flatMap((found) => found.filter((item): item is Lettering => item.kind === 'lettering').map(({ at }) => at.y - datum.y));
    for (const y of words([bar(-2)])) expect(y).toBeCloseTo(3, 9);
    expect(words([bar(-2)]).length).toBeGreaterThan(0);
    expect(words([bar(-2), bar(2.5)])).toEqual([]);
  });
});
