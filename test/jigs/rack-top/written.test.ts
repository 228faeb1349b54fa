import { inflatePathsD, EndType, JoinType } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { flattenPath } from '../../../src/geometry/flatten-path.js';
import type { Path } from '../../../src/geometry/path.js';
import { distance, type Point } from '../../../src/geometry/point.js';
import { radians } from '../../../src/units/units.js';
import { boardPieces } from '../../../src/jigs/rack-top/outline.js';
import { testFont } from '../../support/font.js';
import { letteringCorners } from '../../../src/drawing/item-bounds.js';
import { explicitSegments } from '../../../src/geometry/explicit-segments.js';
import { segmentPoint } from '../../../src/geometry/segment-point.js';
import { partShapes } from '../../support/read-svg.js';
import { cylinderSolid, sagitta, solids, vertices } from '../../support/solids.js';
import { nearestPath, off } from './nearest-path.js';
import { board, patternsOf, slots, solved, writeAndRead } from './rack.js';

const holes = [[0, 14], [70, 9], [200, 20], [305, 30]].map(([toward, lean], i) => ({ round: 30 + i, at: [120 + 180 * i, 100 - 8 * i], lean, toward }));

describe('canted holes, written and read back', () => {
  const facets = 256;
  const thickness = 27;
  // The mesh: x along, y across from the front edge, z up, top face at z = 0; the leg goes up towards the compass turn.
  const mesh = holes.map((h) => {
    const [lean, toward] = [radians(h.lean!), radians(h.toward!)];
    const axis = [Math.sin(lean) * Math.cos(toward), Math.sin(lean) * Math.sin(toward), Math.cos(lean)] as const;
    const leg = cylinderSolid({ at: [h.at[0]!, h.at[1]!, 0], axis, from: -120, to: 120, radius: h.round / 2, facets });
    const slab = solids.cube([800, 200, thickness]).translate([0, 0, -thickness]);
    return vertices(slab.subtract(leg));
  });

  it.each([['svg'], ['pdf']] as const)('as %s lie on the edges that a cylinder cuts in the mesh of a board, top and underside', async (format) => {
    const { svg, pdf, shift } = await writeAndRead(patternsOf({ holes }).get('top')!);
    holes.forEach((h, i) => {
      for (const face of ['top', 'under'] as const) {
        const drawn = partShapes(svg, `hole-${i + 1}-${face}`)[0]!.subpaths[0]!;
        const path = format === 'svg' ? drawn : nearestPath(pdf.flatMap((p) => (p.paint === 'stroke' ? p.subpaths : [])), drawn);
        const line = flattenPath(path, 0.0005).map((p) => ({ x: p.x - shift.x, y: 200 - (p.y - shift.y) }));
        const z = face === 'top' ? 0 : -thickness;
        const rim = mesh[i]!.filter((v) => Math.abs(v[2] - z) < 1e-4 && v[0] > 1 && v[0] < 799 && v[1] > 1 && v[1] < 199);
        expect(rim.length).toBeGreaterThan(facets / 2);
        for (const [x, y] of rim) expect(off({ x, y }, line)).toBeLessThan(sagitta(h.round / 2, facets) / Math.cos(radians(h.lean!)) + 0.002);
      }
    });
  });
});

describe('slots, written and read back', () => {
  it('have their width, seat and station', async () => {
    const { svg, shift } = await writeAndRead(patternsOf({ slots }).get('top')!);
    const stations = [175, 325, 475, 625];
    stations.forEach((at, i) => {
      const box = pathBounds(partShapes(svg, `slot-${i + 1}`)[0]!.subpaths[0]!);
      expect((box.x0 + box.x1) / 2 - shift.x).toBeCloseTo(at, 5);
      // Mouth eased by 6 mm on both sides of 26 mm; bottom at depth + radius from the front edge.
      expect(box.x1 - box.x0).toBeCloseTo(26 + 12, 5);
      expect(box.y1 - box.y0).toBeCloseTo(60 + 13, 5);
      expect(box.y1 - shift.y).toBeCloseTo(200, 5);
    });
  });

  it('show the template (bushing − cutter)/2 off, as an independent polygon library moves the finished edge', () => {
    const cutter = { diameter: 12, bushing: 20 };
    const top = solved({ board: { ...board, cornerRadius: 30 }, slots: { ...slots, edge: 'alternate', mouth: { ease: 8, flare: 6, run: 25 } }, cutter });
    expect(top.cutter.offset).toBe(4);
    const joined = (inset: number): Point[] => {
      const pieces = boardPieces(top.board, top.slots, inset).map(({ path }) => flattenPath(path, 0.0005));
      const chain = [...pieces.shift()!];
      while (pieces.length > 0) {
        const next = pieces.findIndex((p) => distance(p[0]!, chain.at(-1)!) < 1e-6);
        expect(next).toBeGreaterThanOrEqual(0);
        chain.push(...pieces.splice(next, 1)[0]!.slice(1));
      }
      return chain;
    };
    const [moved] = inflatePathsD([joined(0).map(({ x, y }) => ({ x, y }))], -4, JoinType.Round, EndType.Polygon, 2, 5, 0.001);
    const ours = joined(4);
    for (const p of moved!) expect(off(p, ours)).toBeLessThan(0.005);
    for (const p of ours.filter((_, i) => i % 7 === 0)) expect(off(p, moved!)).toBeLessThan(0.005);
  });
});

describe('recesses, written and read back', () => {
  const recess = { path: 'M0 0 H80 V30 A10 10 0 0 1 70 40 H0 Z', size: 120, at: [400, 110], depth: 8 };

  it('from path data have the size asked for and their middle where it was asked', async () => {
    const { svg, shift } = await writeAndRead(patternsOf({ recesses: [recess] }).get('top')!);
    const box = pathBounds(partShapes(svg, 'recess-1')[0]!.subpaths[0]!);
    expect(box.x1 - box.x0).toBeCloseTo(120, 5);
    expect(box.y1 - box.y0).toBeCloseTo(60, 5);
    expect((box.x0 + box.x1) / 2 - shift.x).toBeCloseTo(400, 5);
    expect(200 - ((box.y0 + box.y1) / 2 - shift.y)).toBeCloseTo(110, 5);
  });

  it('show what the cutter leaves in corners that it cannot reach', () => {
    const top = solved({ recesses: [recess] });
    const [r] = top.recesses;
    expect(r!.insideRadius).toBe(0);
    // A corner of 90° keeps r (√2 − 1) of wood on its slant.
    const corner = { x: 400 - 60, y: 90 - 30 };
    expect(off(corner, flattenPath(r!.reached!, 0.001))).toBeCloseTo(6 * (Math.SQRT2 - 1), 2);
  });
});

describe('the patterns', () => {
  it('carry pin holes for each slot on the pitch stick, as far apart as on the template', async () => {
    const patterns = patternsOf({ slots });
    const centre = (path: Path): Point => { const b = pathBounds(path); return { x: (b.x0 + b.x1) / 2, y: (b.y0 + b.y1) / 2 }; };
    const template = await writeAndRead(patterns.get('slot-template-1')!);
    const [a, b] = [1, 2].map((i) => centre(partShapes(template.svg, `template-pin-${i}`)[0]!.subpaths[0]!));
    const stick = await writeAndRead(patterns.get('pitch-stick-front')!);
    [175, 325, 475, 625].forEach((at, i) => {
      const [c, d] = [2 * i + 1, 2 * i + 2].map((n) => centre(partShapes(stick.svg, `stick-front-pin-${n}`)[0]!.subpaths[0]!));
      expect(d!.x - c!.x).toBeCloseTo(b!.x - a!.x, 5);
      expect((c!.x + d!.x) / 2 - stick.shift.x).toBeCloseTo(at, 5);
    });
  });

  it('letter nothing across a line of the board', () => {
    const given = { board: { ...board, length: 480, width: 150 }, slots: { ...slots, pitch: 85, depth: 45 }, holes: [{ round: 32, at: [50, 110], lean: 8, toward: 120 }] };
    for (const name of ['top', 'pitch-stick-front']) {
      const { items } = patternsOf(given).get(name)!;
      const points = items.flatMap((i) => (i.kind === 'shape' ? explicitSegments(i.path).flatMap(({ segment, from }) => Array.from({ length: 101 }, (_, k) => segmentPoint(segment, from, k / 100))) : []));
      for (const item of items) {
        if (item.kind === 'shape') continue;
        const corners = letteringCorners(item, testFont);
        const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)];
        const box = { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
        expect(points.filter((p) => p.x > box.x0 && p.x < box.x1 && p.y > box.y0 && p.y < box.y1), `${name}: ${item.text}`).toEqual([]);
      }
    }
  });

  it('keep seams out of seats and holes and give them lands', () => {
    const top = patternsOf({ slots, holes: [holes[0]] }).get('top')!;
    expect(top.keepClear.filter((z) => /^seat of slot \d$/.test(z.why))).toHaveLength(4);
    expect(top.keepClear.some((z) => z.why === 'hole 1')).toBe(true);
    expect(top.lands).toHaveLength(5);
    expect(top.datum).toEqual({ x: 0, y: 100 });
  });

  it('letter a hole so that a seam in the land beside it clears hole, arrow and lettering together', () => {
    const top = patternsOf({ slots, holes: [{ round: 35, at: [95, 100], lean: 14, toward: 0 }] }).get('top')!;
    const hole = top.keepClear.find((z) => z.why === 'hole 1')!.box;
    const whole = top.keepClear.find((z) => z.why === 'hole 1 with its lettering')!.box;
    const words = top.items.filter((i) => i.kind === 'lettering' && /^(HOLE 1|bit Ø|leans|along|across|from left end)/.test(i.text));
    expect(words).toHaveLength(6);
    for (const item of words) {
      const xs = item.kind === 'lettering' ? letteringCorners(item, testFont).map((p) => p.x) : [];
      expect(Math.min(...xs)).toBeGreaterThan(whole.x0);
      expect(Math.max(...xs)).toBeLessThan(whole.x1);
    }
    // The arrow's tip: half the opening and 16 mm beyond it.
    expect(hole.x1).toBeCloseTo(95 + 17.5 / Math.cos(radians(14)) + 16 + 2, 9);
    expect(whole.x1 - whole.x0).toBeLessThan(hole.x1 - hole.x0 + 1);
    // The mouth of slot 1 starts at 175 − 19.
    expect(whole.x1).toBeLessThan(175 - 19);
  });
});
