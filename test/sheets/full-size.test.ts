import { describe, expect, it } from 'vitest';
import type { Lettering, Shape } from '../../src/drawing/drawing.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import { boxContains } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { pathLength } from '../../src/geometry/length.js';
import { circle, rectangle } from '../../src/geometry/shapes.js';
import { point } from '../../src/geometry/point.js';
import { fullSize } from '../../src/sheets/full-size.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { testFont } from '../support/font.js';
import { letter, shape } from '../../src/drawing/items.js';
import { jigOf, plainDrawing, requestFor, slottedBoard } from './fixtures.js';

const shapesOf = (sheet: Sheet, part: string): Shape[] => sheet.items.filter((i): i is Shape => i.kind === 'shape' && i.part === part);
const words = (sheet: Sheet): string => sheet.items.filter((i): i is Lettering => i.kind === 'lettering').map((l) => l.text).join(' ');
const margin = (sheet: Sheet) => ({ x0: 9.5, y0: 9.5, x1: sheet.width - 9.5, y1: sheet.height - 9.5 });

describe('fullSize', () => {
  it('puts all patterns of a jig on one canvas in true size, uncorrected, inside its margins', () => {
    const jig = jigOf('top', [slottedBoard(), plainDrawing('disc', [circle(point(0, 0), 30)])]);
    const pages = fullSize(jig, requestFor([jig], { correction: { x: 0.98, y: 1.02 } }), testFont);
    expect(pages).toHaveLength(1);
    const [page] = pages;
    const board = pathBounds(shapesOf(page!, 'board')[0]!.path);
    const disc = pathBounds(shapesOf(page!, 'disc')[0]!.path);
    expect([board.x1 - board.x0, board.y1 - board.y0, disc.x1 - disc.x0].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([1500, 200, 60]);
    expect(disc.y0).toBeGreaterThan(board.y1);
    for (const item of page!.items) expect(boxContains(margin(page!), itemBounds(item, testFont)) ? 'inside' : [item, itemBounds(item, testFont), margin(page!)]).toBe('inside');
  });

  it('carries both bars, the reading mark, what is assumed, the line rule and the cautions', () => {
    const jig = jigOf('disc', [plainDrawing('disc', [circle(point(0, 0), 10)])]);
    const [page] = fullSize(jig, requestFor([jig]), testFont);
    for (const part of ['x-bar', 'y-bar', 'reading-mark']) expect(shapesOf(page!, part).length).toBeGreaterThan(0);
    for (const [part, axis] of [['x-bar', 'x'], ['y-bar', 'y']] as const) {
      const b = pathBounds(shapesOf(page!, part)[0]!.path);
      expect(axis === 'x' ? b.x1 - b.x0 : b.y1 - b.y0).toBeGreaterThanOrEqual(150 - 1e-9);
    }
    expect(words(page!)).toContain('Assumed, as measured: post 34.9 mm');
    expect(words(page!)).toContain('true edge is the centre of the line');
    expect(words(page!)).toContain('Stop the bit before lifting');
  });

  it('parts a pattern longer than a page of 5 080 mm and says so; its pieces hold the whole line', () => {
    const jig = jigOf('boom', [plainDrawing('boom', [rectangle(0, 0, 9000, 100)])]);
    const pages = fullSize(jig, requestFor([jig]), testFont);
    expect(pages.length).toBeGreaterThanOrEqual(1);
    for (const page of pages) {
      expect(page.width).toBeLessThanOrEqual(5080);
      expect(page.height).toBeLessThanOrEqual(5080);
    }
    const drawn = pages.flatMap((p) => shapesOf(p, 'boom')).reduce((sum, s) => sum + pathLength(s.path), 0);
    // Two long sides and two ends, and the overlap of 12 mm twice.
    expect(drawn).toBeCloseTo(2 * 9000 + 2 * 100 + 2 * 12, 6);
    expect(pages.map(words).join(' ')).toContain('longer than a page can be');
    const marks = pages.flatMap((p) => p.items.filter((i) => i.part?.startsWith('registration-') === true));
    expect(marks).toHaveLength(4);
  });

  it('counts the gaps of many small patterns too', () => {
    const jig = jigOf('many', Array.from({ length: 400 }, (_, i) => plainDrawing(`chip-${i}`, [rectangle(0, 0, 30, 5)])));
    const pages = fullSize(jig, requestFor([jig]), testFont);
    // 5 high, 8 of title over it, 12 to the next: 25 each.
    expect(pages).toHaveLength(Math.ceil((400 * 25) / (5080 - 200)));
    expect(pages.every((p) => p.height <= 5080)).toBe(true);
    expect(pages.flatMap((p) => p.items.filter((i) => i.part?.startsWith('chip-') === true))).toHaveLength(400);
  });

  it('goes on a second page where the patterns together are longer than one', () => {
    const jig = jigOf('many', Array.from({ length: 4 }, (_, i) => plainDrawing(`board-${i}`, [rectangle(0, 0, 300, 2000)])));
    const pages = fullSize(jig, requestFor([jig]), testFont);
    expect(pages).toHaveLength(2);
    expect(words(pages[0]!)).toContain('page 1 of 2');
    expect(pages.every((p) => p.height <= 5080)).toBe(true);
  });

  it('cuts lettering with a pattern that it parts, so that nothing of a part hangs out of its page', () => {
    const words = [letter(point(3000, 40), 'a long line of words '.repeat(25), { height: 9 }), letter(point(30, 60), 'short', { height: 9 }), letter(point(8700, 60), 'short', { height: 9 })];
    const jig = jigOf('boom', [plainDrawing('boom', [rectangle(0, 0, 9000, 100)], { items: [shape('edge', rectangle(0, 0, 9000, 100), 'boom'), ...words] })]);
    const pages = fullSize(jig, requestFor([jig]), testFont);
    const canvases = pages.map((page) => ({ page, edges: shapesOf(page, 'boom').map(({ path }) => pathBounds(path)) }));
    for (const { page, edges } of canvases) {
      expect(page.width).toBeLessThanOrEqual(5080);
      // The page is as wide as its widest part and its margins: what is cut off of the words makes it no wider.
      const widest = Math.max(...edges.map((box) => box.x1)) - Math.min(...edges.map((box) => box.x0));
      expect(page.width).toBeLessThan(widest + 80);
      for (const item of page.items) {
        const whole = itemBounds(item, testFont);
        const clip = item.kind === 'lettering' && item.clip !== undefined ? item.clip : whole;
        const box = { x0: Math.max(whole.x0, clip.x0), y0: Math.max(whole.y0, clip.y0), x1: Math.min(whole.x1, clip.x1), y1: Math.min(whole.y1, clip.y1) };
        expect(box.x0 >= 9 && box.x1 <= page.width - 9 && box.y0 >= 9 && box.y1 <= page.height - 9, item.kind === 'lettering' ? item.text : item.part).toBe(true);
      }
    }
  });

  it('parts at the room that a page leaves beside the y-bar and its margins, no sooner', () => {
    const pagesOf = (length: number): number => { const jig = jigOf('boom', [plainDrawing('boom', [rectangle(0, 0, length, 100)])]); return fullSize(jig, requestFor([jig]), testFont).flatMap((page) => shapesOf(page, 'boom')).length; };
    const jig = jigOf('boom', [plainDrawing('boom', [rectangle(0, 0, 4900, 100)])]);
    const [page] = fullSize(jig, requestFor([jig]), testFont);
    // What stands beside the pattern on its page: as much less of 5080 is there for it.
    const beside = page!.width - 4900;
    expect([pagesOf(5080 - beside - 1), pagesOf(5080 - beside + 1)]).toEqual([1, 2]);
  });

  it('has bars of round length, a foot or 300 mm at most, as long as the canvas lets them be', () => {
    for (const [units, step, most] of [['mm', 10, 300], ['inch', 25.4, 304.8]] as const) {
      for (const [w, h] of [[40, 30], [211, 187], [283, 262], [900, 700]] as const) {
        const jig = jigOf('plate', [plainDrawing('plate', [rectangle(0, 0, w, h)])]);
        const [page] = fullSize(jig, requestFor([jig], { units }), testFont);
        const [x, y] = [pathBounds(shapesOf(page!, 'x-bar')[0]!.path), pathBounds(shapesOf(page!, 'y-bar')[0]!.path)];
        for (const [bar, room] of [[x.x1 - x.x0, page!.width], [y.y1 - y.y0, page!.height]] as const) {
          expect(Math.abs(bar / step - Math.round(bar / step))).toBeLessThan(1e-6);
          expect(bar).toBeGreaterThanOrEqual((units === 'inch' ? 152.4 : 150) - 1e-6);
          expect(bar).toBeLessThanOrEqual(most + 1e-6);
          if (room < most) expect(bar).toBeGreaterThan(Math.min(most, room - 90) - step);
        }
        expect([x.x0 >= 9.9, x.x1 <= page!.width - 9.9, y.y0 >= 9.9, y.y1 <= page!.height - 9.9]).toEqual([true, true, true, true]);
      }
    }
  });
});
