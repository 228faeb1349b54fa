import type { Drawing } from '../../../src/drawing/drawing.js';
import { itemsBounds } from '../../../src/drawing/item-bounds.js';
import { moveItems } from '../../../src/drawing/items.js';
import type { Finding } from '../../../src/errors/finding.js';
import type { Point } from '../../../src/geometry/point.js';
import type { Context } from '../../../src/jigs/jig.js';
import { rackTop } from '../../../src/jigs/rack-top/index.js';
import type { RackTop } from '../../../src/jigs/rack-top/rack-top.js';
import { makeFieldReader } from '../../../src/spec/fields.js';
import { writePdf } from '../../../src/writers/pdf/write-pdf.js';
import { writeSvg } from '../../../src/writers/svg/write-svg.js';
import { testFont } from '../../support/font.js';
import { readPdf, type PdfPath } from '../../support/read-pdf.js';
import { readSvg, type SvgFile } from '../../support/read-svg.js';

export type Given = Readonly<Record<string, unknown>>;

export const context: Context = {
  name: 'rack', units: 'mm', rounds: {}, shop: {}, drawingArea: { width: 183, height: 254 }, jig: () => undefined,
  mistaken: (field, { code, message }) => { throw new Error(`${code}: ${field} ${message}`); },
};

export const board = { length: 800, width: 200, thickness: 27 } as const;
/** Four slots for rounds of 24 mm, axes at 175, 325, 475, 625. */
export const slots = { count: 4, pitch: 150, item: 24, depth: 60 } as const;

/** A rack as written in a spec in millimetres; the board above unless given. */
export const outcomeOf = (given: Given, within: Context = context) =>
  rackTop.solve(rackTop.schema(makeFieldReader('mm', {})).parse({ board, ...given }), within);

export const solved = (given: Given, within: Context = context): RackTop => {
  const outcome = outcomeOf(given, within);
  if ('refused' in outcome) throw new Error(outcome.refused.map((f) => f.message).join(' '));
  return outcome.solution;
};

export const valuesOf = (given: Given) => rackTop.values(solved(given));

/** What is refused, or found where nothing is. */
export const findingsOf = (given: Given, within: Context = context): readonly Finding[] => {
  const outcome = outcomeOf(given, within);
  return 'refused' in outcome ? outcome.refused : rackTop.check(outcome.solution, within);
};

export const codesOf = (given: Given, within: Context = context): readonly string[] => [...new Set(findingsOf(given, within).map((f) => f.code))];

/** The patterns drawn, by name. */
export const patternsOf = (given: Given): ReadonlyMap<string, Drawing> =>
  new Map(rackTop.draw(solved(given), context, testFont).patterns.map((p) => [p.name, p]));

/** A pattern as written to SVG and PDF and read back; `shift` is where its own origin stands on the sheet, mm. */
export const writeAndRead = async (drawing: Drawing): Promise<{ readonly svg: SvgFile; readonly pdf: readonly PdfPath[]; readonly shift: Point }> => {
  const box = itemsBounds(drawing.items, testFont);
  const shift = { x: 10 - box.x0, y: 10 - box.y0 };
  const sheet = {
    code: '1', title: drawing.title, width: Math.ceil(box.x1 - box.x0 + 20), height: Math.ceil(box.y1 - box.y0 + 20), items: moveItems(drawing.items, shift.x, shift.y),
  };
  const [page] = (await readPdf(await writePdf([sheet], { title: 'rack' }, testFont))).pages;
  return { svg: readSvg(writeSvg(sheet, testFont)), pdf: page!.paths, shift };
};
