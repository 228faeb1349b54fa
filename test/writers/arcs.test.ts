import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shape } from '../../src/drawing/items.js';
import { arcPoint, type Arc, type Path } from '../../src/geometry/path.js';
import { explicitSegments } from '../../src/geometry/explicit-segments.js';
import { cross, distance, polar, subtract, type Point } from '../../src/geometry/point.js';
import { segmentPoint } from '../../src/geometry/segment-point.js';
import { arcPath, circle } from '../../src/geometry/shapes.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { writePdf } from '../../src/writers/pdf/write-pdf.js';
import { writeSvg } from '../../src/writers/svg/write-svg.js';
import { testFont as font } from '../support/font.js';
import { readPdf } from '../support/read-pdf.js';
import { partShapes, readSvg, samplePathData } from '../support/read-svg.js';

const micrometre = 1e-3;
const size = 3000;
const sheetOf = (arcs: readonly Arc[]): Sheet => ({
  code: '1', title: 'arcs', width: size, height: size, items: arcs.map((arc, i) => shape('edge', arcPath(arc), `arc-${i}`)),
});

/** Arcs of circles and turned ellipses of 0.5 to 1200 mm, any span and sense up to a whole turn. */
const arcs: fc.Arbitrary<Arc> = fc.record({
  x: fc.double({ min: 1200, max: 1800, noNaN: true }), y: fc.double({ min: 1200, max: 1800, noNaN: true }),
  rx: fc.double({ min: 0.5, max: 1200, noNaN: true }), ratio: fc.constantFrom(1, 1, 0.99, 0.5, 0.1),
  turn: fc.double({ min: -3, max: 3, noNaN: true }), skew: fc.constantFrom(0, 0.4, -1.1), mirrored: fc.boolean(),
  t0: fc.double({ min: -7, max: 7, noNaN: true }), span: fc.double({ min: 0.01, max: 2 * Math.PI, noNaN: true }), sense: fc.constantFrom(1, -1),
}).map(({ x, y, rx, ratio, turn, skew, mirrored, t0, span, sense }) => ({
  kind: 'arc', centre: { x, y }, u: polar(turn, rx), v: polar(turn + (mirrored ? -1 : 1) * (Math.PI / 2 - skew), rx * ratio), t0, t1: t0 + sense * span,
}));

/** How far a point is from the arc's ellipse: the implicit function |M⁻¹(p − centre)| − 1 over its gradient, true to first order. */
const missOf = ({ centre, u, v }: Arc, p: Point): number => {
  const d = subtract(p, centre);
  const area = cross(u, v);
  const q = { x: cross(d, v) / area, y: cross(u, d) / area };
  const r = Math.hypot(q.x, q.y);
  return (Math.abs(r - 1) * r * Math.abs(area)) / Math.hypot(v.y * q.x - u.y * q.y, u.x * q.y - v.x * q.x);
};

const worst = (arc: Arc, path: Path): number => Math.max(
  distance(path.start, arcPoint(arc, arc.t0)),
  ...explicitSegments(path).flatMap(({ segment, from }) =>
    Array.from({ length: 25 }, (_, i) => missOf(arc, segmentPoint(segment, from, i / 24)))),
);

const endMiss = (arc: Arc, path: Path): number => {
  const last = explicitSegments(path).at(-1)!;
  return distance(segmentPoint(last.segment, last.from, 1), arcPoint(arc, arc.t1));
};

describe('arcs read back', () => {
  it('from SVG lie within 1 µm of the true ones, whole way and both ends', () => {
    fc.assert(fc.property(fc.array(arcs, { minLength: 20, maxLength: 20 }), (list) => {
      const file = readSvg(writeSvg(sheetOf(list), font));
      list.forEach((arc, i) => {
        const [path] = partShapes(file, `arc-${i}`)[0]!.subpaths;
        expect(worst(arc, path!)).toBeLessThan(micrometre);
        expect(endMiss(arc, path!)).toBeLessThan(micrometre);
      });
    }), { numRuns: 20 });
  });

  it('from PDF lie within 1 µm of the true ones, whole way and both ends', async () => {
    const list = fc.sample(arcs, { numRuns: 300, seed: 128 });
    const { pages } = await readPdf(await writePdf([sheetOf(list)], { title: 'arcs' }, font));
    const paths = pages[0]!.paths.flatMap((p) => p.subpaths);
    expect(paths).toHaveLength(list.length);
    list.forEach((arc, i) => {
      expect(worst(arc, paths[i]!)).toBeLessThan(micrometre);
      expect(endMiss(arc, paths[i]!)).toBeLessThan(micrometre);
    });
  });

  it('stay arcs in SVG and turn the same way there for another reader', () => {
    const file = readSvg(writeSvg({ ...sheetOf([]), items: [shape('edge', circle({ x: 400, y: 400 }, 300), 'board')] }, font));
    const [board] = partShapes(file, 'board');
    expect(board!.d).toMatch(/^M700 400(A300 300 0 0 1 [\d.]+ [\d.]+){4}Z$/);
    for (const p of samplePathData(board!.d, 400)) expect(Math.abs(Math.hypot(p.x - 400, p.y - 400) - 300)).toBeLessThan(micrometre);
  });
});
