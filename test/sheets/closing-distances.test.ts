import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../src/geometry/bounds.js';
import { distance, point, type Point } from '../../src/geometry/point.js';
import type { Drawing, Shape } from '../../src/drawing/drawing.js';
import { circle, polyline, rectangle } from '../../src/geometry/shapes.js';
import { closingDistances } from '../../src/sheets/closing-distances.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { testFont } from '../support/font.js';
import { jigOf, plainDrawing, requestFor, slottedBoard } from './fixtures.js';

/** Place of a mark on the taped-up drawing, from the sheet that it stands on and the sheet's own place. */
const markAt = (set: ReturnType<typeof layOut>, part: string, correction: { x: number; y: number }): Point => {
  const [{ plan, codeOf }] = set.tiled as [(typeof set.tiled)[number]];
  const sheet = [...set.sheets()].find((s) => s.items.some((i) => i.part === part))!;
  const ring = sheet.items.find((i): i is Shape => i.kind === 'shape' && i.part === part)!;
  const tile = plan.tiles.find((t) => codeOf(t) === sheet.code)!;
  const b = pathBounds(ring.path);
  const page = point((b.x0 + b.x1) / 2 - plan.frame.area.x0 - 0.4 + tile.window.x0, (b.y0 + b.y1) / 2 - plan.frame.area.y0 - 0.4 + tile.window.y0);
  return point(page.x * correction.x, page.y * correction.y);
};

describe('closingDistances', () => {
  it.each([[{ x: 1, y: 1 }], [{ x: 0.985, y: 1.012 }]])('are what a tape shows between far-apart marks over the true print: correction %o', (correction) => {
    const set = layOut(requestFor([jigOf('top', [slottedBoard()])], { correction, wishes: { ...requestFor([]).wishes, turn: 'portrait' } }), testFont);
    const [whole, longest] = closingDistances(set.tiled[0]!);
    expect(whole).toEqual({ from: 'left end', to: 'right end along the spine', length: expect.closeTo(1500, 9) });
    // The scale check and the map come first, then the sheets of the board.
    expect(longest!.from).toBe('upper mark 2/3');
    const last = /(\d+)\/(\d+)$/.exec(longest!.to)!;
    const taped = distance(markAt(set, 'registration-2-3-1', correction), markAt(set, `registration-${last[1]!}-${last[2]!}-2`, correction));
    expect(longest!.length).toBeCloseTo(taped, 9);
    expect(longest!.length).toBeGreaterThan(1100);
  });

  const closingOf = (drawing: Drawing, turn: 'portrait' | 'landscape') => {
    const set = layOut(requestFor([jigOf('top', [drawing])], { wishes: { ...requestFor([]).wishes, turn } }), testFont);
    return { plan: set.tiled[0]!.plan, closing: closingDistances(set.tiled[0]!), first: set.count - set.tiled[0]!.plan.tiles.length + 1 };
  };

  it('name both diagonals and both long sides of two rows, from the marks nearest to the corners', () => {
    const { plan, closing, first } = closingOf(slottedBoard(), 'landscape');
    const [left, right] = [plan.grid.x.seams[0]!, plan.grid.x.seams.at(-1)!];
    const columns = plan.grid.x.seams.length + 1;
    // Row by row, behind the sheets that open the set.
    const [a, b] = [[first, first + 1], [first + columns - 2, first + columns - 1]].map((pair) => pair.join('/'));
    const [c, d] = [[first, first + 1], [first + columns - 2, first + columns - 1]].map((pair) => pair.map((n) => n + columns).join('/'));
    expect(plan.grid.y.seams).toHaveLength(1);
    expect(closing.map((d) => `${d.from} – ${d.to}`)).toEqual([
      'left end – right end along the spine',
      `upper mark ${a} – lower mark ${d}`, `lower mark ${c} – upper mark ${b}`,
      `upper mark ${a} – upper mark ${b}`, `lower mark ${c} – lower mark ${d}`,
    ]);
    expect(closing[3]!.length).toBeCloseTo(right - left, 9);
    expect(closing[1]!.length).toBeGreaterThan(Math.hypot(right - left, 150));
  });

  it('go from corner to corner of the outline where there is one seam', () => {
    const { closing } = closingOf(plainDrawing('plate', [rectangle(5, 7, 300, 80)], { whole: true }), 'landscape');
    expect(closing).toEqual([
      { from: 'upper left corner', to: 'lower right corner', length: expect.closeTo(Math.hypot(300, 80), 9) },
      { from: 'lower left corner', to: 'upper right corner', length: expect.closeTo(Math.hypot(300, 80), 9) },
      { from: 'upper left corner', to: 'upper right corner', length: expect.closeTo(300, 9) },
      { from: 'lower left corner', to: 'lower right corner', length: expect.closeTo(300, 9) },
    ]);
  });

  it('go between the outermost corners of an outline that lies askew', () => {
    const outline = polyline([point(0, 60), point(30, 0), point(320, 40), point(290, 100)], true);
    const { closing } = closingOf(plainDrawing('block', [outline]), 'landscape');
    expect(closing).toContainEqual({ from: 'leftmost corner', to: 'rightmost corner', length: expect.closeTo(Math.hypot(320, 20), 9) });
  });

  it('take no tangent point of a rounded end for a corner', () => {
    const { closing } = closingOf({ ...slottedBoard(340), items: slottedBoard(340).items.slice(0, 1) }, 'portrait');
    expect(closing.map((d) => d.from)).toEqual(['left end']);
  });

  it('go straight across where four sheets meet in one point', () => {
    const { closing, first } = closingOf(plainDrawing('frame', [circle(point(0, 0), 165)]), 'landscape');
    const [a, b, c, d] = [0, 1, 2, 3].map((i) => first + i);
    expect(closing.map((d) => `${d.from} – ${d.to}`)).toEqual([`left mark ${a}/${c} – right mark ${b}/${d}`, `upper mark ${a}/${b} – lower mark ${c}/${d}`]);
  });

  it('have no ends on a spine that the piece does not end on', () => {
    const off = { ...plainDrawing('arch', [polyline([point(0, 80), point(0, 60), point(500, 60), point(500, 80)], true)], { whole: true }), spine: true, datum: point(0, 10) };
    expect(closingOf(off, 'landscape').closing.map((d) => d.from)).not.toContain('left end');
  });
});
