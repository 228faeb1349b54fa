import type { Drawing, JigDrawing } from '../drawing/drawing.js';
import { pageCorrection, isCorrected, type LayoutRequest } from './layout-request.js';
import type { PageFrame } from './page-frame.js';

/** The rule that every drawing goes by. */
export const lineRule = 'The true edge is the centre of the line: cut on the waste side, sand until half the line is gone.';

const factor = (f: number): string => (1 / f).toFixed(4);

/** How to print the sheet and what has been corrected in it. Factors are those by which the drawing is printed larger. */
export const scaleWords = (request: LayoutRequest, frame: PageFrame): string => {
  if (!isCorrected(request.correction)) return 'Print at 100 %, one-sided; the bars must measure true.';
  const { x, y } = pageCorrection(request.correction, frame.landscape);
  const printer = request.printer === undefined ? 'Corrected' : `Corrected for printer ${request.printer.slice(0, 60)}`;
  return `${printer}: x × ${factor(x)}, y × ${factor(y)}. Print at 100 %, one-sided; the bars must measure true.`;
};

/** Which state of which piece, on what paper. */
export const pieceWords = (request: LayoutRequest): string => {
  const revision = request.revision === '' ? '' : ` · rev. ${request.revision.slice(0, 40)}`;
  return `${request.digest}${revision} · ${request.paper.name}, ${request.units} · ${request.title.slice(0, 200)}`;
};

/** What a pattern is called on a sheet of its own. */
export const patternWords = (jig: JigDrawing, drawing: Drawing): string => `${jig.jig}: ${drawing.title}`;

/** Distinct texts in the order in which they first come. */
export const distinct = (texts: readonly string[]): string[] => [...new Set(texts)];

/** The measured sizes that sheets depend on. */
export const assumedWords = (assumed: readonly string[]): string =>
  (assumed.length === 0 ? '' : `Assumed, as measured: ${distinct(assumed).join('; ')}.`);

/** A statement begun with a capital. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A statement with its full stop, so that what follows it on the line does not run on. */
export const withStop = (text: string): string => (text === '' || /[.!?…]$/u.test(text) ? text : `${text}.`);

/** What sheets say besides their own place, statement by statement: the print scale, the line rule, the jigs' cautions. */
export const runningWords = (request: LayoutRequest, frame: PageFrame, cautions: readonly string[]): string[] => [
  scaleWords(request, frame), lineRule, ...distinct(cautions).map((text, i) => withStop(i === 0 ? `Cautions: ${text}` : text)),
];
