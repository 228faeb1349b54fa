import type { Finding } from '../../errors/finding.js';
import { lengthLabel } from '../../units/format.js';
import type { Context, Report } from '../jig.js';

export type { Report } from '../jig.js';

/** A finding of this jig; its message begins with a capital, whatever name it begins with. */
export const findingOf = (context: Context, report: Report): Finding => ({
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
