import { describe, expect, it } from 'vitest';
import { lineStyles } from '../../src/drawing/line-types.js';
import { growBox, boxContains, type Box } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { distance, type Point } from '../../src/geometry/point.js';
import { layOut, type SheetSet } from '../../src/sheets/lay-out.js';
import type { LayoutRequest } from '../../src/sheets/layout-request.js';
import { seamsOf } from '../../src/sheets/seam-lines.js';
import { writePdf } from '../../src/writers/pdf/write-pdf.js';
import { papers } from '../../src/units/paper.js';
import { testFont } from '../support/font.js';
import { readPdf, type PdfPage } from '../support/read-pdf.js';
import { jigOf, requestFor } from './fixtures.js';
import { isNear, samplesOf, targetsOf, type Target } from './nearest.js';
import { randomDrawing, randomFrom } from './random-drawing.js';

/** Two micrometres: what the sheets may be off once they lie together. */
const within = 0.002;

/** A page as read from the PDF, and the way from its millimetres to the drawing's. */
interface LaidPage {
  readonly page: PdfPage;
  readonly area: Box;
  readonly live: Box;
  readonly toDrawing: (p: Point) => Point;
}

interface Assembled {
  readonly set: SheetSet;
  readonly pages: readonly LaidPage[];
}

const assemble = async (request: LayoutRequest): Promise<Assembled> => {
  const set = layOut(request, testFont);
  const codes = new Set(set.tiled.flatMap((t) => t.plan.tiles.map(t.codeOf)));
  const sheets = [...set.sheets()].filter((s) => codes.has(s.code));
  const { pages } = await readPdf(await writePdf(sheets, { title: 'assembled' }, testFont));
  const tiles = set.tiled.flatMap(({ plan }) => plan.tiles.map((tile) => ({ plan, tile })));
  return {
    set,
    pages: pages.map((page, i) => {
      const { plan, tile } = tiles[i]!;
      const { frame } = plan;
      const [sx, sy] = frame.landscape ? [request.correction.y, request.correction.x] : [request.correction.x, request.correction.y];
      return {
        page, area: frame.area, live: frame.live,
        // 0.4 mm: what the drawing area keeps clear at its border.
        toDrawing: (p) => ({ x: (p.x - frame.area.x0 - 0.4 + tile.window.x0) * sx, y: (p.y - frame.area.y0 - 0.4 + tile.window.y0) * sy }),
      };
    }),
  };
};

const isDrawn = (width: number): boolean => width > 0.2;

const drawnTargets = ({ page, toDrawing }: LaidPage): Target[] => page.paths.filter((p) => p.paint === 'stroke' && isDrawn(p.width))
  .flatMap((p) => p.subpaths).map((path) => ({
    ...path, start: toDrawing(path.start),
    segments: path.segments.map((s) => {
      if (s.kind === 'line') return { kind: 'line' as const, to: toDrawing(s.to) };
      if (s.kind === 'cubic') return { kind: 'cubic' as const, c1: toDrawing(s.c1), c2: toDrawing(s.c2), to: toDrawing(s.to) };
      throw new Error('a PDF has no arcs');
    }),
  })).flatMap(targetsOf);

/** Whether master and sheets are the same lines, both ways. */
const compareCurves = (request: LayoutRequest, pages: readonly LaidPage[]): { missing: number; strange: number; points: number } => {
  const master = request.jigs.flatMap((j) => j.patterns).flatMap((d) => d.items).flatMap((item) => (item.kind === 'shape' ? targetsOf(item.path) : []));
  const laid = pages.map(drawnTargets);
  const all = laid.flat();
  const points = master.flatMap((t) => samplesOf(t, 24));
  const drawn = all.flatMap((t) => samplesOf(t, 3));
  return {
    missing: points.filter((p) => !isNear(p, all, within)).length,
    strange: drawn.filter((p) => !isNear(p, master, within)).length,
    points: points.length,
  };
};

const penBox = (page: PdfPage): Box[] => page.paths.flatMap((p) => p.subpaths.map((s) => growBox(pathBounds(s), p.paint === 'stroke' ? p.width / 2 - 1e-4 : 0)));

const straddles = (outer: Box, inner: Box): boolean =>
  !boxContains(growBox(outer, 1e-4), inner) && inner.x1 > outer.x0 + 1e-4 && inner.x0 < outer.x1 - 1e-4 && inner.y1 > outer.y0 + 1e-4 && inner.y0 < outer.y1 - 1e-4;

/** Centres of the registration rings of a page: whole circles of 2 mm radius in the thinnest pen. */
const ringCentres = ({ page, toDrawing }: LaidPage): Point[] => page.paths.filter((p) => p.width < 0.2 && p.paint === 'stroke').flatMap((p) => p.subpaths)
  .filter((s) => s.closed && s.segments.length >= 8 && s.segments.every((g) => g.kind === 'cubic'))
  .map(pathBounds).filter((b) => Math.abs(b.x1 - b.x0 - 4) < 1e-3).map((b) => toDrawing({ x: (b.x0 + b.x1) / 2, y: (b.y0 + b.y1) / 2 }));

const marksPaired = ({ set, pages }: Assembled): { rings: number; alone: number; expected: number } => {
  const rings = pages.flatMap((page, i) => ringCentres(page).map((at) => ({ at, page: i })));
  const alone = rings.filter((r) => rings.filter((o) => o.page !== r.page && distance(o.at, r.at) <= within).length !== 1).length;
  const seams = set.tiled.flatMap(({ plan, tiles }) => plan.tiles.flatMap((t) => seamsOf(plan, tiles, t).filter((s) => s.first === t)));
  return { rings: rings.length, alone, expected: seams.length * 4 };
};

const names = ['letter', 'a4', 'legal'] as const;

const requestOf = (seed: number): LayoutRequest => {
  const random = randomFrom(seed + 1000);
  return requestFor([jigOf('random', [randomDrawing(seed)])], {
    paper: papers[names[seed % 3]!]!, units: seed % 2 === 0 ? 'mm' : 'inch',
    correction: { x: 0.98 + random() * 0.04, y: 0.98 + random() * 0.04 }, printer: 'office',
  });
};

/** Cases in a few tests, so that a failure names its neighbourhood and none takes long. */
const batches = Array.from({ length: 10 }, (_, i) => i);
const perBatch = 20;

describe('sheets written to PDF, read back and laid together', () => {
  it.each(batches)('give the master within 2 µm, marks in pairs, all inside the live area: batch %i of random drawings', async (batch) => {
    for (let seed = batch * perBatch; seed < (batch + 1) * perBatch; seed++) {
      const request = requestOf(seed);
      const assembled = await assemble(request);
      const curves = compareCurves(request, assembled.pages);
      expect({ seed, missing: curves.missing, strange: curves.strange }).toEqual({ seed, missing: 0, strange: 0 });
      expect(curves.points).toBeGreaterThan(200);
      const marks = marksPaired(assembled);
      expect({ seed, ...marks }).toEqual({ seed, alone: 0, rings: marks.expected, expected: marks.expected });
      for (const { page, live, area } of assembled.pages) {
        const boxes = penBox(page);
        expect({ seed, outside: boxes.filter((b) => !boxContains(growBox(live, 1e-3), b)).length }).toEqual({ seed, outside: 0 });
        expect({ seed, across: boxes.filter((b) => straddles(area, b)).length }).toEqual({ seed, across: 0 });
        expect({ seed, words: page.texts.filter((t) => t.clip === undefined && !boxContains(live, { x0: t.at.x, x1: t.at.x, y0: t.at.y, y1: t.at.y })).length }).toEqual({ seed, words: 0 });
      }
    }
  });

  it('goes on with its dashes where the neighbour stops', async () => {
    const request = requestFor([jigOf('dashes', [randomDrawing(3)])]);
    const hidden = lineStyles.hidden;
    const { pages } = await assemble(request);
    const dashed = pages.flatMap(({ page }) => page.paths.filter((p) => Math.abs(p.width - hidden.width) < 0.01 && p.dash.length > 0));
    expect(dashed.length).toBeGreaterThan(0);
    expect(dashed.some((p) => p.phase > 0)).toBe(true);
  });
});

