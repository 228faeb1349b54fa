import { describe, expect, it } from 'vitest';
import { letter, shape } from '../../src/drawing/items.js';
import { lineStyles, type LineType } from '../../src/drawing/line-types.js';
import { circle, ellipse, line } from '../../src/geometry/shapes.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { writePdf } from '../../src/writers/pdf/write-pdf.js';
import { writeSvg } from '../../src/writers/svg/write-svg.js';
import { testFont } from '../support/font.js';
import { rasterSvg, darkness } from '../support/raster-svg.js';
import { readPdf } from '../support/read-pdf.js';
import { partShapes, readSvg, samplePathData } from '../support/read-svg.js';

const types = Object.keys(lineStyles) as LineType[];
const sheet: Sheet = {
  code: '1', title: 'all line types', width: 215.9, height: 279.4, bookmark: 'lines',
  items: [
    ...types.map((type, i) => shape(type, line({ x: 20, y: 20 + 6 * i }, { x: 120, y: 20 + 6 * i }), `line-${type}`)),
    shape('edge', circle({ x: 100, y: 150 }, 50), 'board'),
    shape('edge', ellipse({ x: 100, y: 150 }, 40, 10, 0.5), 'opening'),
    letter({ x: 20, y: 120 }, '1 3⁄8″ (34.9 mm)', { height: 3.5 }),
    letter({ x: 30, y: 250 }, 'upwards', { turn: -Math.PI / 2, anchor: 'middle' }),
  ],
};

describe('a sheet read back', () => {
  it('from SVG: every part lies where it was drawn', () => {
    const file = readSvg(writeSvg(sheet, testFont));
    expect([file.width, file.height, file.title]).toEqual([215.9, 279.4, 'all line types']);
    const [board] = partShapes(file, 'board');
    for (const p of samplePathData(board!.d, 100)) expect(Math.abs(Math.hypot(p.x - 100, p.y - 150) - 50)).toBeLessThan(1e-3);
    expect(file.shapes.filter((s) => s.label !== undefined).map((s) => s.label)).toEqual(['1 3⁄8″ (34.9 mm)', 'upwards']);
  });

  it('from PDF: size, viewer preferences, bookmark, strokes and text', async () => {
    const { pages, viewerPreferences, outline } = await readPdf(await writePdf([sheet], { title: 'test' }, testFont));
    const [page] = pages;
    expect([page!.widthPt, page!.heightPt]).toEqual([612, 792]);
    expect(viewerPreferences).toMatchObject({ PrintScaling: 'None', Duplex: 'Simplex' });
    expect(outline).toEqual([{ title: 'lines', page: 1 }]);
    const first = page!.paths[0]!.subpaths[0]!;
    expect(first.start.x).toBeCloseTo(20, 4);
    expect(first.start.y).toBeCloseTo(20, 4);
    expect(page!.texts.map((t) => t.text)).toEqual(['1 3⁄8″ (34.9 mm)', 'upwards']);
    expect(page!.texts[0]!.at.y).toBeCloseTo(120, 4);
    expect(page!.texts[1]!.turn).toBeCloseTo(-Math.PI / 2, 9);
  });

  it('as pixels: the cut line is dark on its place and nowhere beside it', () => {
    const image = rasterSvg(writeSvg(sheet, testFont), 254);
    expect([image.width, image.height]).toEqual([2159, 2794]);
    expect(darkness(image, 500, 200)).toBeGreaterThan(0.9);
    expect(darkness(image, 500, 215)).toBe(0);
  });
});
