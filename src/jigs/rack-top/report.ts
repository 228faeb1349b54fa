import type { Finding } from '../../errors/finding.js';
import { lengthLabel } from '../../units/format.js';
import type { Context, Report as AnyReport } from '../jig.js';

/** A part of the board: `joint` is all joints. */
export type Part = `slot-${number}` | `hole-${number}` | `recess-${number}` | 'joint';

/** A report of this jig, and the parts of the board that it is about, by which it finds its machines' pages. */
export interface Report extends AnyReport {
  readonly about?: readonly Part[];
}

/** The same reports, said to be about these parts as well. */
export const reportsAbout = (about: readonly Part[], reports: readonly Report[]): Report[] =>
  reports.map((report) => ({ ...report, about: [...(report.about ?? []), ...about] }));

/** A finding of this jig; its message begins with a capital, whatever name it begins with. */
export const findingOf = (context: Context, { about: _, ...report }: Report): Finding => ({
  jig: context.name, ...report, message: report.message.charAt(0).toUpperCase() + report.message.slice(1),
});

/** Prints a length in both units, the spec's own first. */
export type Say = (mm: number) => string;

/** Says lengths in both units, the spec's own first. */
export const sayIn = (context: Context): Say => (mm) => lengthLabel(mm, context.units);

/** A figure against two limits: what is sound, and what is least. */
export interface TwoLimits {
  readonly measured: number;
  readonly sound: number;
  readonly least: number;
}

/** A warning where a figure lies below either limit; it names the lower one that it misses. */
export const below = (
  { measured, sound, least }: TwoLimits, words: (limit: number) => Pick<Report, 'code' | 'message' | 'remedy'>,
): Report[] => {
  // Whoever asks for the limit itself has kept it.
  if (measured >= sound - 1e-9) return [];
  const limit = measured < least - 1e-9 ? least : sound;
  return [{ severity: 'warn', measured, limit, ...words(limit) }];
};
