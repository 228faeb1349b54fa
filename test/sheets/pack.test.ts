import { array, assert, double, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rectangle } from '../../src/geometry/shapes.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { pack, type Piece, type Placed } from '../../src/sheets/pack.js';
import { papers } from '../../src/units/paper.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor } from './fixtures.js';

const area: Piece = { width: 190, height: 240 };

const boxOf = (pieces: readonly Piece[], p: Placed): { x0: number; y0: number; x1: number; y1: number } => {
  const { width, height } = pieces[p.piece]!;
  return { x0: p.x, y0: p.y, x1: p.x + (p.turned ? height : width), y1: p.y + (p.turned ? width : height) };
};

const count = (placed: readonly Placed[]): number => Math.max(...placed.map((p) => p.sheet)) + 1;

describe('pack', () => {
  it('places every piece once, inside the area, none over another', () => {
    const piece = record({ width: double({ min: 5, max: 190, noNaN: true }), height: double({ min: 5, max: 190, noNaN: true }) });
    assert(property(array(piece, { minLength: 1, maxLength: 14 }), (pieces) => {
      const placed = pack(pieces, area);
      expect(placed.map((p) => p.piece).sort((a, b) => a - b)).toEqual(pieces.map((_, i) => i));
      placed.forEach((p, i) => {
        const a = boxOf(pieces, p);
        expect(a.x0 >= 0 && a.y0 >= 0 && a.x1 <= area.width + 1e-6 && a.y1 <= area.height + 1e-6).toBe(true);
        for (const q of placed.slice(i + 1)) {
          const b = boxOf(pieces, q);
          expect(p.sheet !== q.sheet || a.x1 <= b.x0 + 1e-6 || b.x1 <= a.x0 + 1e-6 || a.y1 <= b.y0 + 1e-6 || b.y1 <= a.y0 + 1e-6).toBe(true);
        }
      });
    }), { numRuns: 60, seed: 7 });
  });

  it('fills a sheet to its edge with pieces that tile it', () => {
    const quarters = Array.from({ length: 4 }, () => ({ width: 95, height: 120 }));
    expect(count(pack(quarters, area))).toBe(1);
    expect(count(pack([...quarters, { width: 10, height: 10 }], area))).toBe(2);
  });

  it('turns a piece by a quarter where it fits no other way', () => {
    const [placed] = pack([{ width: 230, height: 50 }], area);
    expect(placed).toMatchObject({ sheet: 0, turned: true });
  });

  it('refuses a piece that is larger than the sheet', () => {
    expect(() => pack([{ width: 250, height: 250 }], area)).toThrow(RangeError);
  });
});

it('puts what fits either turn of the paper with what fits one only', () => {
  // 255 mm lie on A4 lengthwise only when it is turned; a small square goes on either, so one sheet holds both.
  const jig = jigOf('bits', [plainDrawing('long', [rectangle(0, 0, 255, 30)]), plainDrawing('square', [rectangle(0, 0, 80, 80)])]);
  const sheets = [...layOut(requestFor([jig], { paper: papers['a4']! }), testFont).sheets()].filter(({ title }) => !title.includes('Scale check'));
  expect(sheets.map(({ title, width, height }) => [title.includes('Pattern long') && title.includes('Pattern square'), width > height])).toEqual([[true, true]]);
});
