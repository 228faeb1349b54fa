import { moveItems } from '../../../src/drawing/items.js';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { pathBounds } from '../../../src/geometry/bounds.js';
import { cubicPoint } from '../../../src/geometry/bounds.js';
import { eachSegment, type Path } from '../../../src/geometry/path.js';
import type { Point } from '../../../src/geometry/point.js';
import { saddleCope } from '../../../src/jigs/saddle-cope/index.js';
import type { SaddleCopeFields } from '../../../src/jigs/saddle-cope/schema.js';
import type { SaddleCopeSolution } from '../../../src/jigs/saddle-cope/solve.js';
import type { Context } from '../../../src/jigs/jig.js';
import { writePdf } from '../../../src/writers/pdf/write-pdf.js';
import { writeSvg } from '../../../src/writers/svg/write-svg.js';
import { testFont } from '../../support/font.js';
import { readPdf } from '../../support/read-pdf.js';
import { partShapes, readSvg } from '../../support/read-svg.js';

export const context: Context = {
  name: 'brace saddle', units: 'mm', rounds: {}, shop: {}, drawingArea: { width: 183, height: 254 }, jig: () => undefined,
  mistaken: (field, { message }) => { throw new Error(`${field} ${message}`); },
};

/** Fields of a cope with the defaults filled in. */
export const fields = (given: Partial<SaddleCopeFields> & { readonly branchDiameter?: number; readonly mainDiameter?: number }): SaddleCopeFields => ({
  branch: { name: 'brace', diameter: given.branchDiameter ?? 25 },
  main: { name: 'post', diameter: given.mainDiameter ?? 50 },
  angle: Math.PI / 2, offset: 0, paperThickness: 0.1, abrasive: 0.5, wingAllowance: 1, ordinates: false, pin: {}, ...given,
});

export const solved = (given: SaddleCopeFields, within: Context = context): SaddleCopeSolution => {
  const outcome = saddleCope.solve(given, within);
  if ('refused' in outcome) throw new Error(outcome.refused[0]!.message);
  return outcome.solution;
};

/** The edges of a strip as written: mm on the strip, x from its left wrap edge, y down. */
export interface WrittenStrip {
  readonly width: number;
  readonly edges: readonly Path[];
}

const shifted = (path: Path, x: number): Path => ({
  ...path, start: { x: path.start.x - x, y: path.start.y },
  segments: path.segments.map((s) => s.kind === 'cubic'
    ? { ...s, c1: { x: s.c1.x - x, y: s.c1.y }, c2: { x: s.c2.x - x, y: s.c2.y }, to: { x: s.to.x - x, y: s.to.y } }
    : s),
});

/** The wrap strip written as SVG and as PDF and read back by the independent readers: near edge first, then the far one. */
export const writeAndRead = async (solution: SaddleCopeSolution): Promise<{ svg: WrittenStrip; pdf: WrittenStrip }> => {
  const strip = saddleCope.draw(solution, context, testFont).patterns[0]!;
  const box = itemsBounds(strip.items, testFont);
  const sheet = {
    code: 'A1', title: strip.title, width: box.x1 - box.x0 + 20, height: box.y1 - box.y0 + 20,
    items: moveItems(strip.items, 10 - box.x0, 10 - box.y0),
  };
  const svg = readSvg(writeSvg(sheet, testFont));
  const [left, right] = partShapes(svg, 'wrap-edge').map((s) => s.subpaths[0]!.start.x);
  const parts = solution.far === undefined ? ['saddle-line'] : ['saddle-line', 'far-saddle-line'];
  const svgEdges = parts.map((part) => shifted(partShapes(svg, part)[0]!.subpaths[0]!, left!));

  const [page] = (await readPdf(await writePdf([sheet], { title: 'strip' }, testFont))).pages;
  const solid = page!.paths.filter((p) => p.paint === 'stroke' && p.dash.length === 0 && Math.abs(p.width - 0.35) < 1e-3)
    .flatMap((p) => p.subpaths);
  const across = solid.filter((p) => Math.abs(pathBounds(p).x1 - pathBounds(p).x0 - (right! - left!)) < 0.01);
  const pdfEdges = [...across].sort((a, b) => b.start.y - a.start.y).map((p) => shifted(p, left!));
  return { svg: { width: right! - left!, edges: svgEdges }, pdf: { width: right! - left!, edges: pdfEdges } };
};

/** Points along the cubics of a path, `count` to each. */
export const sampled = (path: Path, count: number): readonly Point[] => {
  const points: Point[] = [path.start];
  eachSegment(path, (segment, from) => {
    if (segment.kind !== 'cubic') throw new Error('a saddle is made of cubics');
    for (let i = 1; i <= count; i += 1) points.push(cubicPoint(from, segment, i / count));
  });
  return points;
};
