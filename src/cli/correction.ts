import { quote } from '../errors/quote.js';
import type { Correction } from '../sheets/layout-request.js';
import { nominalBars, printScale, type MeasuredPrint } from '../sheets/print-scale.js';
import type { Spec } from '../spec/spec.js';
import type { Units } from '../units/units.js';
import { lengthFrom, lengthOption, textOption } from './arguments.js';
import type { Arguments } from './command.js';
import type { Io } from './io.js';
import { readProfile } from './printer-profile.js';
import { usageError } from './usage-error.js';

/** What of a layout request the printer decides. */
export interface PrinterCorrection {
  readonly correction: Correction;
  readonly printer?: string;
  /** What to know before its correction is used. */
  readonly warnings: readonly string[];
}

/** The two diagonals of `--diagonals`, from the square's top left and from its top right; mm. */
const diagonalsFrom = (given: Arguments, units: Units): readonly [number, number] | undefined => {
  const text = textOption(given, 'diagonals');
  if (text === undefined) return undefined;
  const [first, second, ...more] = text.split(',').map((part) => part.trim());
  if (first === undefined || second === undefined || more.length > 0) throw usageError('--diagonals needs two lengths', { allowed: '--diagonals "141.4 mm, 141.2 mm"' });
  return [lengthFrom(first, '--diagonals', units), lengthFrom(second, '--diagonals', units)];
};

/** What the command line says was measured; undefined where it says nothing. Refuses one bar without the other. */
export const measuredFrom = (given: Arguments, units: Units): MeasuredPrint | undefined => {
  const xBar = lengthOption(given, 'x-bar', units);
  const yBar = lengthOption(given, 'y-bar', units);
  const diagonals = diagonalsFrom(given, units);
  if (xBar === undefined && yBar === undefined && diagonals === undefined) return undefined;
  if (xBar === undefined || yBar === undefined) {
    throw usageError(`--${xBar === undefined ? 'x' : 'y'}-bar is missing`, { allowed: 'both bars as they measure on your print: --x-bar … --y-bar …' });
  }
  return { xBar, yBar, ...(diagonals === undefined ? {} : { diagonals }) };
};

/** Another tray pulls the paper otherwise: what was measured on one paper is a guess for another. */
const otherPaper = (printer: string, measuredOn: string, paper: string): string =>
  `${quote(printer)} was measured on ${measuredOn}, and this is ${paper}: see that both bars are true, or measure it on ${paper}: roundwright print-test --paper ${paper}`;

/**
 * The correction asked for: `--printer` takes a kept one, `--x-bar` and `--y-bar` take the bars as measured on the spec's own
 * first sheet; none otherwise. Refuses both together, and measures that no printer makes (print-scale says which setting does).
 */
export const correctionFrom = (given: Arguments, { paper, units, sheets }: Pick<Spec, 'paper' | 'units' | 'sheets'>, io: Io): PrinterCorrection => {
  const name = textOption(given, 'printer');
  const measured = measuredFrom(given, units);
  if (name !== undefined && measured !== undefined) throw usageError('--printer and measured bars are both given', { allowed: 'one of the two' });
  if (name !== undefined) {
    const { x, y, name: printer, paper: measuredOn } = readProfile(name, io);
    return { correction: { x, y }, printer, warnings: measuredOn === paper.name ? [] : [otherPaper(printer, measuredOn, paper.name)] };
  }
  if (measured === undefined) return { correction: { x: 1, y: 1 }, warnings: [] };
  return { correction: printScale(measured, { nominal: nominalBars(paper, units, sheets), units, landscape: sheets.turn === 'landscape' }).correction, warnings: [] };
};
