import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { pathBounds } from '../../src/geometry/bounds.js';
import { point, type Point } from '../../src/geometry/point.js';
import { fullSize } from '../../src/sheets/full-size.js';
import { layOut } from '../../src/sheets/lay-out.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { itemBounds } from '../../src/drawing/item-bounds.js';
import { writeSvg } from '../../src/writers/svg/write-svg.js';
import { testFont } from '../support/font.js';
import { darkness, rasterSvg, type Raster } from '../support/raster-svg.js';
import { partShapes, readSvg, type SvgFile } from '../support/read-svg.js';
import { jigOf, requestFor, slottedBoard } from './fixtures.js';

const dpi = 300;
const perMm = dpi / 25.4;

const centreOf = (file: SvgFile, part: string): Point => {
  const b = pathBounds(partShapes(file, part)[0]!.subpaths[0]!);
  return point((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2);
};

const marksIn = (file: SvgFile): string[] => file.shapes.flatMap((s) => (s.part?.startsWith('registration-') === true ? [s.part] : []));

/** Where each sheet lies beside the first, by the marks that they share: what a maker does with a pin. */
const pasteByMarks = (files: readonly SvgFile[]): Point[] => {
  const offsets: (Point | undefined)[] = files.map((_, i) => (i === 0 ? point(0, 0) : undefined));
  for (let round = 0; round < files.length; round++) {
    files.forEach((file, i) => files.forEach((other, k) => {
      const base = offsets[i];
      const shared = marksIn(file).find((m) => marksIn(other).includes(m));
      if (base === undefined || offsets[k] !== undefined || shared === undefined) return;
      const [a, b] = [centreOf(file, shared), centreOf(other, shared)];
      offsets[k] = point(base.x + a.x - b.x, base.y + a.y - b.y);
    }));
  }
  return offsets.map((o) => o!);
};

/** Darkest of a pixel and its eight neighbours. */
const darkestNear = (raster: Raster, x: number, y: number): number => {
  let most = 0;
  for (let v = Math.max(0, y - 1); v <= Math.min(raster.height - 1, y + 1); v++) {
    for (let u = Math.max(0, x - 1); u <= Math.min(raster.width - 1, x + 1); u++) most = Math.max(most, darkness(raster, u, v));
  }
  return most;
};

/** Pixels of `a` in a box, mm, that are dark and have nothing dark where they lie in `b`, shifted by (dx, dy) mm. */
const lonelyPixels = (a: Raster, b: Raster, box: Box, shift: Point): { lonely: number; dark: number } => {
  const [dx, dy] = [Math.round(shift.x * perMm), Math.round(shift.y * perMm)];
  let [lonely, dark] = [0, 0];
  for (let y = Math.ceil(box.y0 * perMm); y < box.y1 * perMm; y++) {
    for (let x = Math.ceil(box.x0 * perMm); x < box.x1 * perMm; x++) {
      if (darkness(a, x, y) < 0.75) continue;
      dark++;
      if (darkestNear(b, x + dx, y + dy) < 0.25) lonely++;
    }
  }
  return { lonely, dark };
};

/** Seams, marks and hints are on the sheets alone. */
const isOfSeams = (part: string | undefined): boolean => part !== undefined && /^(seam|datum|registration)/.test(part);

const withoutSeams = (sheet: Sheet, places: readonly Point[]): Sheet => ({
  ...sheet,
  items: sheet.items.filter((item) => {
    if (isOfSeams(item.part)) return false;
    const b = itemBounds(item, testFont);
    return !places.some((p) => b.x0 > p.x - 4.5 && b.x1 < p.x + 4.5 && b.y0 > p.y - 4.5 && b.y1 < p.y + 4.5);
  }),
});

describe('sheets rendered at 300 dpi and pasted by their marks', () => {
  it('agree with the full-size render, pixel for pixel within the antialiasing', () => {
    const board = slottedBoard(420);
    const request = requestFor([jigOf('top', [board])]);
    const set = layOut(request, testFont);
    const tiles = set.tiled[0]!.plan.tiles;
    const sheets = [...set.sheets()].filter((s) => set.tiled[0]!.plan.tiles.map(set.tiled[0]!.codeOf).includes(s.code));
    const files = sheets.map((s) => readSvg(writeSvg(s, testFont)));
    const offsets = pasteByMarks(files);
    const [full] = fullSize(request.jigs[0]!, request, testFont);
    const fullRead = readSvg(writeSvg(full!, testFont));
    const fullImage = rasterSvg(writeSvg(full!, testFont), dpi);
    const hole = centreOf(fullRead, 'hole-1-top');
    const first = files.findIndex((f) => f.shapes.some((s) => s.part === 'hole-1-top' && s.subpaths.length === 1 && s.subpaths[0]!.closed));
    expect(first).toBeGreaterThanOrEqual(0);
    const seenHole = centreOf(files[first]!, 'hole-1-top');
    const origin = point(hole.x - seenHole.x - offsets[first]!.x, hole.y - seenHole.y - offsets[first]!.y);
    expect(tiles.length).toBeGreaterThan(1);
    sheets.forEach((sheet, i) => {
      const tile = tiles[i]!;
      const { area } = set.tiled[0]!.plan.frame;
      const place = point(area.x0 + 0.4 - tile.window.x0, area.y0 + 0.4 - tile.window.y0);
      const image = rasterSvg(writeSvg(withoutSeams(sheet, marksIn(files[i]!).map((m) => centreOf(files[i]!, m))), testFont), dpi);
      const shift = point(origin.x + offsets[i]!.x, origin.y + offsets[i]!.y);
      const core = { x0: tile.core.x0 + place.x + 0.5, y0: tile.core.y0 + place.y, x1: tile.core.x1 + place.x - 0.5, y1: tile.core.y1 + place.y };
      const there = lonelyPixels(image, fullImage, core, shift);
      const back = lonelyPixels(fullImage, image, { x0: core.x0 + shift.x, y0: core.y0 + shift.y, x1: core.x1 + shift.x, y1: core.y1 + shift.y }, point(-shift.x, -shift.y));
      expect(there.dark).toBeGreaterThan(3000);
      expect({ code: sheet.code, there: there.lonely, back: back.lonely }).toEqual({ code: sheet.code, there: 0, back: 0 });
    });
  });
});
