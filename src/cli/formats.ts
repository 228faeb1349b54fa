import { quote } from '../errors/quote.js';
import { listOption, nearestOf } from './arguments.js';
import type { Arguments } from './command.js';
import { usageError } from './usage-error.js';

/** Which files a draw writes. */
export interface Formats {
  /** `sheets-<paper>.pdf` and `<jig>-full.pdf`. */
  readonly pdf: boolean;
  /** `<jig>.svg`. */
  readonly jigSvg: boolean;
  /** `sheets-<paper>/NN.svg`: only when asked for, since most people print the PDF. */
  readonly sheetSvg: boolean;
}

const names = ['svg', 'pdf'];

/** Reads `--format`: `svg`, `pdf` or both with a comma; without it PDFs, and each jig as SVG. */
export const formatsFrom = (given: Arguments): Formats => {
  const asked = listOption(given, 'format')?.map((name) => name.toLowerCase());
  if (asked === undefined) return { pdf: true, jigSvg: true, sheetSvg: false };
  const unknown = asked.find((name) => !names.includes(name));
  if (unknown !== undefined) throw usageError(`--format: there is no ${quote(unknown)}`, { allowed: 'svg, pdf or svg,pdf', ...nearestOf(unknown, names) });
  const svg = asked.includes('svg');
  return { pdf: asked.includes('pdf'), jigSvg: svg, sheetSvg: svg };
};
