import { describe, expect, it } from 'vitest';
import type { Lettering, Shape } from '../../src/drawing/drawing.js';
import { letter, shape } from '../../src/drawing/items.js';
import { line } from '../../src/geometry/shapes.js';
import { labelCrossings } from '../support/label-crossings.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { point } from '../../src/geometry/point.js';
import { boxesMeet } from '../../src/geometry/box.js';
import { letteringBox } from '../../src/sheets/ink-index.js';
import { withSpine } from '../../src/sheets/spine.js';
import { testFont } from '../support/font.js';
import { slottedBoard } from './fixtures.js';

const board = slottedBoard();
const shapes = (items: readonly (Shape | Lettering)[], part: string): Shape[] => items.filter((i): i is Shape => i.kind === 'shape' && i.part === part);

describe('withSpine', () => {
  it('draws one line from end to end at the height of the datum', () => {
    const [spine] = shapes(withSpine(board, 'mm', testFont), 'spine');
    expect(pathBounds(spine!.path)).toEqual({ x0: 0, y0: 100, x1: 1500, y1: 100 });
  });

  it.each([['mm', 100, 16], ['inch', 101.6, 15]] as const)('ticks stations in %s every %d mm, %d of them', (units, step, count) => {
    const ticks = shapes(withSpine(board, units, testFont), 'station-tick').map((t) => t.path.start.x);
    expect(ticks).toHaveLength(count);
    ticks.forEach((x, k) => { expect(x).toBeCloseTo(k * step, 9); });
  });

  it('sets no figure over lettering of the drawing', () => {
    const words = letter(point(290, 99), 'words on the line', { height: 3.5 });
    const items = withSpine({ ...board, items: [...board.items, words] }, 'mm', testFont);
    const figures = items.filter((i): i is Lettering => i.kind === 'lettering' && i.part === 'station');
    expect(figures.length).toBeGreaterThan(5);
    for (const f of figures) expect(boxesMeet(letteringBox(f, testFont), letteringBox(words, testFont))).toBe(false);
  });

  it('sets no figure over a level or an upright line of the drawing, on whichever side of the spine', () => {
    const lines = [shape('edge', line(point(150, 97.5), point(420, 97.5)), 'level'), shape('edge', line(point(700, 103), point(930, 103)), 'level'), shape('edge', line(point(1004, 80), point(1004, 99.5)), 'upright'), shape('edge', line(point(1204, 100.5), point(1204, 130)), 'upright')];
    const items = withSpine({ ...board, items: [...board.items, ...lines] }, 'mm', testFont);
    const figures = items.filter((i): i is Lettering => i.kind === 'lettering' && i.part === 'station');
    expect(labelCrossings([...lines, ...figures], testFont)).toEqual([]);
    // Between the two lines of a pair there is room on the other side of the spine.
    expect(figures.map(({ text }) => text)).toEqual(expect.arrayContaining(['200 mm', '300 mm', '400 mm', '800 mm', '900 mm', '1000 mm', '1200 mm']));
    for (const [station, below] of [[200, true], [300, true], [800, false]] as const) {
      const at = figures.find(({ text }) => text === `${station} mm`)!.at;
      expect([Math.abs(at.x - station), at.y > 100]).toEqual([expect.closeTo(0.8, 9), below]);
    }
  });

  it('sets no figure where a line runs on either side of the spine', () => {
    const figuresOf = (more: readonly Shape[]): string[] => withSpine({ ...board, items: [...board.items, ...more] }, 'mm', testFont).flatMap((i) => (i.kind === 'lettering' && i.part === 'station' ? [i.text] : []));
    const lines = [97.5, 103].map((y) => shape('edge', line(point(1250, y), point(1350, y)), 'level'));
    expect(figuresOf([])).toContain('1300 mm');
    expect(figuresOf(lines)).not.toContain('1300 mm');
  });

  it('sets a figure over a slanting line that leaves room beside it', () => {
    const slant = shape('edge', line(point(480, 60), point(560, 140)), 'slant');
    const figures = withSpine({ ...board, items: [...board.items, slant] }, 'mm', testFont).filter((i): i is Lettering => i.kind === 'lettering' && i.part === 'station');
    expect(figures.map(({ text }) => text)).toContain('500 mm');
  });

  it('leaves a drawing that asks for none as it is', () => {
    expect(withSpine({ ...board, spine: false }, 'mm', testFont)).toBe(board.items);
  });
});
