import type { Drawing, JigDrawing } from '../../../src/drawing/drawing.js';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { moveItems } from '../../../src/drawing/items.js';
import type { Path } from '../../../src/geometry/path.js';
import { endOf } from '../../../src/geometry/path.js';
import { distance, type Point } from '../../../src/geometry/point.js';
import { vCradle } from '../../../src/jigs/v-cradle/index.js';
import type { Sheet } from '../../../src/sheets/sheet.js';
import { writePdf } from '../../../src/writers/pdf/write-pdf.js';
import { writeSvg } from '../../../src/writers/svg/write-svg.js';
import { testFont } from '../../support/font.js';
import { readPdf, type PdfPath } from '../../support/read-pdf.js';
import { partShapes, readSvg, type SvgFile } from '../../support/read-svg.js';
import { cradle, type CradleText } from './cradle.js';

/** A cradle's drawing, with its solution. */
export const drawn = (text: CradleText): { readonly drawing: JigDrawing } & ReturnType<typeof cradle> => {
  const made = cradle(text);
  return { ...made, drawing: vCradle.draw(made.solution, made.context, testFont) };
};

export const pattern = (drawing: JigDrawing, name: string): Drawing => {
  const found = drawing.patterns.find((p) => p.name === name);
  if (found === undefined) throw new Error(`no pattern ${name}; there are ${drawing.patterns.map((p) => p.name).join(', ')}`);
  return found;
};

/** A pattern written to SVG and PDF on a page of its own and read back, mm of that page. */
export const writeAndRead = async (p: Drawing): Promise<{ readonly svg: SvgFile; readonly pdf: readonly PdfPath[] }> => {
  const box = itemsBounds(p.items, testFont);
  const sheet: Sheet = {
    code: 'A1', title: p.title, width: Math.ceil(box.x1 - box.x0) + 10, height: Math.ceil(box.y1 - box.y0) + 10,
    items: moveItems(p.items, 5 - box.x0, 5 - box.y0),
  };
  const pdf = await readPdf(await writePdf([sheet], { title: 'cradle' }, testFont));
  return { svg: readSvg(writeSvg(sheet, testFont)), pdf: pdf.pages[0]!.paths };
};

/** Start and ends of all segments of a path. */
export const corners = (path: Path): Point[] => [path.start, ...path.segments.map(endOf)];

/** Corners of the first shape of a part in the SVG. */
export const partCorners = (svg: SvgFile, part: string): Point[] => corners(partShapes(svg, part)[0]!.subpaths[0]!);

/** The PDF's path whose corners lie within `tolerance` mm of those given; throws where there is none. */
export const pdfPathAlong = (paths: readonly PdfPath[], points: readonly Point[], tolerance: number): Path => {
  const found = paths.flatMap((p) => p.subpaths).find((path) => {
    const own = corners(path);
    return points.length === own.length && points.every((p, i) => distance(p, own[i]!) <= tolerance);
  });
  if (found === undefined) throw new Error('no such path in the PDF');
  return found;
};
