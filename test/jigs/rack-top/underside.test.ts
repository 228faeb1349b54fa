import { describe, expect, it } from 'vitest';
import { letteringCorners } from '../../../src/drawing/item-bounds.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { boxHeight, boxWidth, type Box } from '../../../src/geometry/box.js';
import { explicitSegments } from '../../../src/geometry/explicit-segments.js';
import { flattenPath } from '../../../src/geometry/flatten-path.js';
import type { Path } from '../../../src/geometry/path.js';
import { segmentPoint } from '../../../src/geometry/segment-point.js';
import { radians } from '../../../src/units/units.js';
import { testFont } from '../../support/font.js';
import { partShapes } from '../../support/read-svg.js';
import { cylinderSolid, sagitta, solids, vertices } from '../../support/solids.js';
import { nearestPath, off } from './nearest-path.js';
import { board, patternsOf, slots, writeAndRead, type Given } from './rack.js';

const undersides = (given: Given) => [...patternsOf(given).values()].filter((p) => p.name.startsWith('underside'));
const leg = (along: number, across: number, more: Given = {}) => ({ round: 30, at: [along, across], lean: 12, toward: 70, ...more });
const middle = ({ x0, y0, x1, y1 }: Box) => ({ x: (x0 + x1) / 2, y: (y0 + y1) / 2 });
const first = (of: ReturnType<typeof partShapes>): Path => of[0]!.subpaths[0]!;

describe('the underside', () => {
  it('is drawn only where it differs', () => {
    expect(undersides({ slots, holes: [{ round: 30, at: [100, 120] }], recesses: [{ circle: 40, at: [400, 130], depth: 5 }] })).toEqual([]);
    expect(undersides({ slots, holes: [leg(100, 120), { round: 30, at: [550, 120] }] }).map((p) => p.name)).toEqual(['underside-1']);
    expect(undersides({ slots, recesses: [{ circle: 40, at: [400, 130], depth: 5, face: 'under' }] })).toHaveLength(1);
  });

  it('is a small patch a hole, whole, and one for neighbours whose patches overlap', () => {
    const [a, b] = undersides({ holes: [leg(100, 120), leg(600, 100)] });
    for (const patch of [a!, b!]) {
      const { x0, y0, x1, y1 } = pathBounds(patch.items.flatMap((i) => (i.kind === 'shape' && i.part?.startsWith('underside-patch') ? [i.path] : []))[0]!);
      expect(patch.whole).toBe(true);
      expect(x1 - x0).toBeLessThan(130);
      expect(y1 - y0).toBeLessThan(160);
    }
    expect(undersides({ holes: [leg(100, 120), leg(167, 120)] })).toHaveLength(1);
    expect(undersides({ holes: [leg(100, 120), leg(170, 120)] })).toHaveLength(2);
    // The third reaches both of the others, which do not reach each other.
    expect(undersides({ holes: [leg(100, 120), leg(220, 120), leg(160, 110)] })).toHaveLength(1);
  });

  it('shows the edges of the board that are near, and the spine, in its own millimetres', () => {
    const near = undersides({ holes: [leg(60, 60)] })[0]!;
    const parts = near.items.flatMap((i) => (i.kind === 'shape' && (i.part === 'underside-board' || i.part === 'underside-spine') ? [[i.part, pathBounds(i.path)] as const] : []));
    const edges = parts.filter(([part]) => part === 'underside-board').map(([, box]) => box);
    expect(Math.min(...edges.map((box) => box.x0))).toBe(0);
    expect(Math.min(...edges.map((box) => box.y0))).toBe(0);
    const far = undersides({ holes: [leg(400, 100)] })[0]!;
    expect(far.items.some((i) => i.kind === 'shape' && i.part === 'underside-board')).toBe(false);
    const spine = far.items.find((i) => i.kind === 'shape' && i.part === 'underside-spine');
    expect(spine?.kind === 'shape' && pathBounds(spine.path)).toMatchObject({ y0: board.width / 2, y1: board.width / 2 });
  });

  it('says from where its marks are set out, in both units, as where the leg comes out', () => {
    const words = undersides({ holes: [leg(200, 110, { lean: 20, toward: 0 })] })[0]!.items.flatMap((i) => (i.kind === 'lettering' ? [i.text] : [])).join(' ');
    // 200 − 27 tan 20° = 190.17 mm = 7 31/64 in; 110 mm = 4 21/64 in.
    expect(words).toContain('190.2 mm (7 31⁄64″) from the LEFT END 110 mm (4 21⁄64″) from the FRONT EDGE');
    expect(words).toContain('UNDERSIDE, seen from below');
  });

  it('letters nothing across a line', () => {
    for (const patch of undersides({ slots, holes: [leg(60, 60), leg(110, 150), leg(400, 140)], recesses: [{ circle: 40, at: [560, 140], depth: 5, face: 'under' }] })) {
      const points = patch.items.flatMap((i) => (i.kind === 'shape' ? explicitSegments(i.path).flatMap(({ segment, from }) => Array.from({ length: 101 }, (_, k) => segmentPoint(segment, from, k / 100))) : []));
      for (const item of patch.items) {
        if (item.kind === 'shape') continue;
        const corners = letteringCorners(item, testFont);
        const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)];
        const box = { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
        expect(points.filter((p) => p.x > box.x0 && p.x < box.x1 && p.y > box.y0 && p.y < box.y1), `${patch.name}: ${item.text}`).toEqual([]);
      }
    }
  });
});

describe('patches, written and read back', () => {
  const holes = [[0, 14], [70, 9], [200, 20], [305, 30]].map(([toward, lean], i) => ({ round: 30 + i, at: [120 + 180 * i, 100 - 8 * i], lean, toward }));
  const facets = 256;
  const thickness = board.thickness;
  /** x along, y across from the front edge, z up. Seen from below, rolled over the front edge, y is what paper counts downwards from that edge. */
  const rims = holes.map((h) => {
    const [lean, toward] = [radians(h.lean!), radians(h.toward!)];
    const axis = [Math.sin(lean) * Math.cos(toward), Math.sin(lean) * Math.sin(toward), Math.cos(lean)] as const;
    const bore = cylinderSolid({ at: [h.at[0]!, h.at[1]!, 0], axis, from: -120, to: 120, radius: h.round / 2, facets });
    return vertices(solids.cube([800, 200, thickness]).translate([0, 0, -thickness]).subtract(bore))
      .filter(([x, y]) => x > 1 && x < 799 && y > 1 && y < 199);
  });

  it.each(['svg', 'pdf'] as const)('as %s show the bore’s edges in the mesh of a board turned over', async (format) => {
    const patches = undersides({ holes });
    expect(patches).toHaveLength(4);
    for (const [i, h] of holes.entries()) {
      const { svg, pdf, shift } = await writeAndRead(patches[i]!);
      for (const [face, z] of [['under', -thickness], ['top', 0]] as const) {
        const drawn = first(partShapes(svg, `underside-hole-${i + 1}-${face}`));
        const path = format === 'svg' ? drawn : nearestPath(pdf.flatMap((p) => (p.paint === 'stroke' ? p.subpaths : [])), drawn);
        const line = flattenPath(path, 0.0005).map((p) => ({ x: p.x - shift.x, y: p.y - shift.y }));
        const rim = rims[i]!.filter((v) => Math.abs(v[2] - z) < 1e-4);
        expect(rim.length).toBeGreaterThan(facets / 2);
        for (const [x, y] of rim) expect(off({ x, y }, line)).toBeLessThan(sagitta(h.round / 2, facets) / Math.cos(radians(h.lean!)) + 0.002);
      }
      // The arrow flies the way the leg comes down: from the top opening’s middle to the other’s and on.
      const [under, top, arrow] = [`${i + 1}-under`, `${i + 1}-top`, `${i + 1}-downhill`].map((part) => middle(pathBounds(first(partShapes(svg, `underside-hole-${part}`)))));
      const [down, on] = [{ x: under!.x - top!.x, y: under!.y - top!.y }, { x: arrow!.x - under!.x, y: arrow!.y - under!.y }];
      expect(down.x * on.x + down.y * on.y).toBeCloseTo(Math.hypot(down.x, down.y) * Math.hypot(on.x, on.y), 3);
    }
  });

  it('mirror a recess from below that is not its own mirror image', async () => {
    const recess = { path: 'M0 0 H80 L40 40 H0 Z', size: 80, at: [300, 120], depth: 6, face: 'under' };
    const above = await writeAndRead(patternsOf({ recesses: [recess] }).get('top')!);
    const below = await writeAndRead(undersides({ recesses: [recess] })[0]!);
    const fromAbove = flattenPath(first(partShapes(above.svg, 'recess-1')), 0.001).map((p) => ({ x: p.x - above.shift.x, y: board.width - (p.y - above.shift.y) }));
    const fromBelow = flattenPath(first(partShapes(below.svg, 'underside-recess-1')), 0.001).map((p) => ({ x: p.x - below.shift.x, y: p.y - below.shift.y }));
    for (const p of fromAbove) expect(off(p, fromBelow)).toBeLessThan(0.002);
    const box = pathBounds(first(partShapes(below.svg, 'underside-recess-1')));
    expect(middle(box).x - below.shift.x).toBeCloseTo(300, 4);
    expect(middle(box).y - below.shift.y).toBeCloseTo(120, 4);
    expect(boxWidth(box)).not.toBeCloseTo(boxHeight(box), 0);
  });
});
