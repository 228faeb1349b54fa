import { pageCorrection, isCorrected, type LayoutRequest } from './layout-request.js';
import type { PageFrame } from './page-frame.js';
import type { Statement } from './strip-text.js';

/** The rule that every drawing goes by. */
export const lineRule = 'The true edge is the centre of the line: cut on the waste side, sand until half the line is gone.';

const factor = (f: number): string => (1 / f).toFixed(4);

/** How to print the sheet and what has been corrected in it. Factors are those by which the drawing is printed larger. */
export const scaleWords = (request: LayoutRequest, frame: PageFrame): string => {
  if (!isCorrected(request.correction)) return 'Print at 100 %, one-sided. The bars must measure true by a steel rule.';
  const { x, y } = pageCorrection(request.correction, frame.landscape);
  const printer = request.printer === undefined ? 'Corrected' : `Corrected for printer ${request.printer}`;
  return `${printer}: x × ${factor(x)}, y × ${factor(y)}. Print at 100 %, one-sided; the bars must measure true.`;
};

/** What piece, which state of it, on what paper, which sheet of how many. */
export const pieceWords = (request: LayoutRequest, place: { page: number; count: number }): string => {
  const revision = request.revision === '' ? '' : ` · rev. ${request.revision}`;
  return `Sheet ${place.page} of ${place.count} · ${request.digest} · ${request.paper.name}, ${request.units} · ${request.title}${revision}`;
};

/** Distinct texts in the order in which they first come. */
export const distinct = (texts: readonly string[]): string[] => [...new Set(texts)];

/** The statements that pattern sheets end with: what is assumed, the line rule, the print scale, the jigs' cautions. */
export const closingStatements = (request: LayoutRequest, frame: PageFrame, of: { assumed: readonly string[]; cautions: readonly string[] }): Statement[] => [
  { text: of.assumed.length === 0 ? '' : `Assumed, as measured: ${distinct(of.assumed).join('; ')}`, lines: 2, part: 'assumed' },
  { text: scaleWords(request, frame), lines: 2, part: 'print-scale' },
  { text: lineRule, lines: 2, part: 'line-rule' },
  ...distinct(of.cautions).map((text) => ({ text: `– ${text}`, lines: 2, part: 'caution' })),
];
