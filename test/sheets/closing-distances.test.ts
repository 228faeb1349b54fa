import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../src/geometry/bounds.js';
import { distance, point, type Point } from '../../src/geometry/point.js';
import type { Shape } from '../../src/drawing/drawing.js';
import { closingDistances } from '../../src/sheets/closing-distances.js';
import { layOut } from '../../src/sheets/lay-out.js';
import { testFont } from '../support/font.js';
import { jigOf, requestFor, slottedBoard } from './fixtures.js';

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
    const [longest] = closingDistances(set.tiled[0]!);
    expect(longest!.from).toBe('upper mark of seam A1/A2');
    const last = /(A\d+)\/(A\d+)/.exec(longest!.to)!;
    const taped = distance(markAt(set, 'registration-A1-A2-1', correction), markAt(set, `registration-${last[1]!}-${last[2]!}-2`, correction));
    expect(longest!.length).toBeCloseTo(taped, 9);
    expect(longest!.length).toBeGreaterThan(1100);
  });
});
