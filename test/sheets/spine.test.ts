import { describe, expect, it } from 'vitest';
import type { Lettering, Shape } from '../../src/drawing/drawing.js';
import { letter } from '../../src/drawing/items.js';
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

  it('leaves a drawing that asks for none as it is', () => {
    expect(withSpine({ ...board, spine: false }, 'mm', testFont)).toBe(board.items);
  });
});
