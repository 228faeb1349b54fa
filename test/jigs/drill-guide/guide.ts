import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { moveItems } from '../../../src/drawing/items.js';
import type { Drawing } from '../../../src/drawing/drawing.js';
import type { Path } from '../../../src/geometry/path.js';
import { drillGuide } from '../../../src/jigs/drill-guide/index.js';
import type { DrillGuideFields } from '../../../src/jigs/drill-guide/schema.js';
import type { DrillGuideSolution } from '../../../src/jigs/drill-guide/solve.js';
import type { Finding } from '../../../src/errors/finding.js';
import type { Context, Values } from '../../../src/jigs/jig.js';
import type { Round } from '../../../src/spec/spec.js';
import { writePdf } from '../../../src/writers/pdf/write-pdf.js';
import { writeSvg } from '../../../src/writers/svg/write-svg.js';
import { testFont } from '../../support/font.js';
import { readPdf, type PdfPath } from '../../support/read-pdf.js';
import { readSvg, type SvgFile } from '../../support/read-svg.js';

export const context: Context = {
  name: 'guide', units: 'mm', rounds: {}, shop: {}, drawingArea: { width: 183, height: 254 }, jig: () => undefined,
  mistaken: (field, { code, message }) => { throw new Error(`${code}: ${field} ${message}`); },
};

/** A round of a diameter, mm. */
export const round = (diameter: number): Round => ({ name: 'post', diameter });

/** Fields of a guide, defaults filled in: 12 mm at 60° into flat work 30 mm thick. */
export const fields = (given: Partial<DrillGuideFields> = {}): DrillGuideFields => ({
  end: 'near', drill: 12, angle: Math.PI / 3, onto: 'flat', groove: { includedAngle: Math.PI / 2 }, block: {}, bit: {}, paperThickness: 0.1,
  ...(given.onto === undefined || given.onto === 'flat' ? { thickness: 30 } : {}), ...given,
});

export const solved = (given: Partial<DrillGuideFields> = {}, within: Context = context): DrillGuideSolution => {
  const outcome = drillGuide.solve(fields(given), within);
  if ('refused' in outcome) throw new Error(outcome.refused[0]!.message);
  return outcome.solution;
};

export const valuesOf = (given: Partial<DrillGuideFields> = {}, within: Context = context): Values => drillGuide.values(solved(given, within));

/** Codes of what is refused or found, in order. */
export const codesOf = (given: Partial<DrillGuideFields>, within: Context = context): readonly string[] => findingsOf(given, within).map((f) => f.code);

export const findingsOf = (given: Partial<DrillGuideFields>, within: Context = context): readonly Finding[] => {
  const outcome = drillGuide.solve(fields(given), within);
  return 'refused' in outcome ? outcome.refused : drillGuide.check(outcome.solution, within);
};

/** The drawing of a name among a guide's patterns. */
export const pattern = (s: DrillGuideSolution, name: string, within: Context = context): Drawing => {
  const found = drillGuide.draw(s, within, testFont).patterns.find((p) => p.name === name);
  if (found === undefined) throw new Error(`no pattern ${name}`);
  return found;
};

/** A pattern written as SVG and as PDF and read back, mm of one sheet. */
export const writeAndRead = async (drawing: Drawing): Promise<{ readonly svg: SvgFile; readonly pdf: readonly PdfPath[] }> => {
  const box = itemsBounds(drawing.items, testFont);
  const sheet = {
    code: '1', title: drawing.title, width: box.x1 - box.x0 + 20, height: box.y1 - box.y0 + 20,
    items: moveItems(drawing.items, 10 - box.x0, 10 - box.y0),
  };
  const svg = readSvg(writeSvg(sheet, testFont));
  const [page] = (await readPdf(await writePdf([sheet], { title: 'guide' }, testFont))).pages;
  return { svg, pdf: page!.paths };
};

/** The paths of a PDF stroked unbroken with a pen of `width` mm. */
export const stroked = (paths: readonly PdfPath[], width: number): readonly Path[] =>
  paths.filter((p) => p.paint === 'stroke' && p.dash.length === 0 && Math.abs(p.width - width) < 1e-3).flatMap((p) => p.subpaths);
