import { calibrationSide } from '../drawing/calibration-square.js';
import { UserError, type Mistake } from '../errors/user-error.js';
import { millimetres } from '../units/format.js';
import { degrees, type Units } from '../units/units.js';
import type { Paper } from '../units/paper.js';
import { barLengths, type BarLengths } from './bars.js';
import { pageCorrection, type Correction } from './layout-request.js';
import { pageFrame } from './page-frame.js';
import type { SheetWishes } from '../spec/spec.js';

/** What was measured on a printed sheet, mm. */
export interface MeasuredPrint {
  readonly xBar: number;
  readonly yBar: number;
  /** Of the calibration square: from its top left corner down, and from its top right corner down. */
  readonly diagonals?: readonly [number, number];
}

/** What a measured print says of its printer. */
export interface PrintScale {
  /** Measured ÷ nominal, of the upright paper. */
  readonly correction: Correction;
  /** Degrees by which the square's sides are out of square; positive where the diagonal from the top left is the longer. */
  readonly skewDeg?: number;
  /** What the correction cannot mend. */
  readonly warnings: readonly string[];
}

const tenMillimetres = { top: 10, right: 10, bottom: 10, left: 10 };

/** Nominal bars of the uncorrected first sheet of a paper, and of its print test (margins of 10 mm, upright); mm, exact. */
export const nominalBars = (paper: Paper, units: Units, wishes?: Pick<SheetWishes, 'margins' | 'turn'>): BarLengths =>
  barLengths(pageFrame(paper, wishes?.margins ?? tenMillimetres, wishes?.turn === 'landscape', units), { x: 1, y: 1 }, units);

/** A printer is off by less than this; what is off by more is a setting. */
export const scaleLimits = { least: 0.97, most: 1.03 } as const;

/** Common practice: scales that print settings make of true size, and which kind of setting does it. */
const settings: readonly { readonly from: number; readonly to: number; readonly cause: string }[] = [
  { from: 0.033, to: 0.045, cause: 'a measure in inches given without its unit' },
  { from: 20, to: 30, cause: 'a measure given in the wrong unit' },
  { from: 0.45, to: 0.75, cause: 'several pages on one sheet' },
  { from: 0.895, to: 0.915, cause: 'an A4 page fitted onto Letter paper' },
  { from: 0.925, to: 0.9355, cause: 'a Letter page fitted onto A4 paper' },
  { from: 0.9355, to: 0.9392, cause: 'a program that counts 96 dots to the inch where 90 were meant' },
  { from: 0.9392, to: 0.946, cause: 'a setting that makes Letter pages smaller, to stay within the margins' },
  { from: 0.946, to: 0.97, cause: 'a setting that makes pages smaller, to stay within the margins' },
  { from: 1.03, to: 1.08, cause: 'a setting that makes pages larger, or 90 dots to the inch taken for 96' },
];

const likely = (factor: number): string =>
  settings.find((s) => factor >= s.from && factor < s.to)?.cause ?? 'a setting that changes the size of pages, or a misread rule';

const percent = (factor: number): string => `${(factor * 100).toFixed(1)} %`;

/** A measured bar that cannot be a printer's own error, with the setting that makes such a scale. */
const barMistake = (axis: 'x' | 'y', measured: number, nominal: number): Mistake[] => {
  const factor = measured / nominal;
  if (factor >= scaleLimits.least - 1e-9 && factor <= scaleLimits.most + 1e-9) return [];
  return [{
    code: 'print-scale', path: `--${axis}-bar`,
    message: Number.isFinite(factor) && factor > 0
      ? `the ${axis}-bar came out at ${percent(factor)}: likely ${likely(factor)}; print again at 100 %, true size`
      : `the ${axis}-bar’s measure is no length`,
    got: Number.isFinite(measured) ? millimetres(measured) : String(measured),
    allowed: `${millimetres(nominal * scaleLimits.least)} to ${millimetres(nominal * scaleLimits.most)} for a bar of ${millimetres(nominal)}`,
  }];
};

/** sin of the angle out of square from the diagonals of a parallelogram: d₁² − d₂² = 4·a·b·sin. */
const skewOf = ([first, second]: readonly [number, number], a: number, b: number): number => (first * first - second * second) / (4 * a * b);

/** Diagonals that differ by less than this cannot be told apart with a rule, mm. */
const readable = 0.25;

const diagonalMistakes = (diagonals: readonly [number, number], whole: number): Mistake[] => diagonals.flatMap((d, i) =>
  (d > whole * 0.97 && d < whole * 1.03 ? [] : [{
    code: 'print-diagonal', path: '--diagonals', message: `the ${i === 0 ? 'first' : 'second'} diagonal does not go with the bars: measure the square’s diagonals again`,
    got: Number.isFinite(d) ? millimetres(d) : String(d), allowed: `about ${millimetres(whole)}`,
  }]));

/**
 * The correction that makes a printer print true, from its bars as measured: sx = measured ÷ nominal, sy likewise. With the
 * diagonals also how far the print is out of square, which no correction mends. Refuses factors outside 0.97 … 1.03, naming
 * the print setting that likely made them. `landscape`: the bars stand on a sheet whose long edge runs across.
 */
export const printScale = (measured: MeasuredPrint, of: { nominal: BarLengths; units: Units; landscape?: boolean }): PrintScale => {
  const { nominal, units, landscape = false } = of;
  const mistakes = [...barMistake('x', measured.xBar, nominal.x), ...barMistake('y', measured.yBar, nominal.y)];
  if (mistakes.length > 0) throw new UserError(undefined, mistakes);
  const page = { x: measured.xBar / nominal.x, y: measured.yBar / nominal.y };
  const correction = pageCorrection(page, landscape);
  if (measured.diagonals === undefined) return { correction, warnings: [] };
  const side = calibrationSide(units);
  const [a, b] = [side * page.x, side * page.y];
  const wrong = diagonalMistakes(measured.diagonals, Math.hypot(a, b));
  if (wrong.length > 0) throw new UserError(undefined, wrong);
  const sine = skewOf(measured.diagonals, a, b);
  const apart = Math.abs(measured.diagonals[0] - measured.diagonals[1]);
  const words = `the diagonals differ by ${millimetres(apart)}: the printer draws ${degrees(Math.asin(sine)).toFixed(2)}° out of square, `
    + `${millimetres(Math.abs(sine) * 200)} over 200 mm; bars cannot mend that, so feed the paper straight or use another printer`;
  return { correction, skewDeg: degrees(Math.asin(sine)), warnings: apart > readable ? [words] : [] };
};
