import type { Cure, Finding, Severity } from '../../errors/finding.js';
import { lengthLabel } from '../../units/format.js';
import type { TwoLimits as Limits } from '../../shop/walls.js';
import type { Context } from '../jig.js';
import { findingsFrom, remediesIn } from '../kit/report.js';

/** A part of the board: `joint` is all joints. */
export type Part = `slot-${number}` | `hole-${number}` | `recess-${number}` | 'joint';

/** The operations of a rack top, in the order of work. */
export type Operation = 'cut-slots' | 'drill-holes' | 'rout-recess' | 'join';

/** Something found in a rack top, and the parts of the board that it is about, by which it finds its machines' pages. */
export interface TopFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly measured: number;
  readonly limit: number;
  readonly message: string;
  readonly remedy: string;
  readonly about?: readonly Part[];
  readonly would?: readonly Cure[];
}

/** The same, said to be about these parts as well. */
export const reportsAbout = (about: readonly Part[], reports: readonly TopFinding[]): TopFinding[] =>
  reports.map((report) => ({ ...report, about: [...(report.about ?? []), ...about] }));

const sorts = [['recess', 'rout-recess'], ['hole', 'drill-holes'], ['joint', 'join'], ['slot', 'cut-slots']] as const;

/** Of what is cut last among the parts: there it can still be avoided. What is about no part is about the whole board, and told first. */
const operationOf = (parts: readonly Part[]): Operation =>
  sorts.find(([sort]) => parts.some((part) => part.split('-')[0] === sort))?.[1] ?? 'cut-slots';

/** Findings of this jig, each with its operation. */
export const findingsOfTop = (found: readonly TopFinding[], context: Context): readonly Finding[] => findingsFrom(found.map(({ about = [], message, remedy, ...report }) => ({
  ...report, message: [message], remedy: [remedy], about: { operation: operationOf(about), ...(about.length === 0 ? {} : { parts: [...new Set(about)] }) },
})), context);

/** Prints a length in both units, the spec's own first; `least` and `most` round it first towards the side that clears a finding. */
export interface Say {
  (mm: number): string;
  readonly least: (mm: number) => string;
  readonly most: (mm: number) => string;
  /** The same as figures, mm. */
  readonly up: (mm: number) => number;
  readonly down: (mm: number) => number;
}

/** Says lengths in a piece's units. */
export const sayIn = ({ units }: Pick<Context, 'units'>): Say => {
  const { atLeast: up, atMost: down } = remediesIn(units);
  const say = (mm: number): string => lengthLabel(mm, units);
  return Object.assign(say, { up, down, least: (mm: number) => say(up(mm)), most: (mm: number) => say(down(mm)) });
};

/** A figure against two limits: what is sound, and what is least. */
export interface TwoLimits extends Limits {
  readonly measured: number;
}

/** A warning where a figure lies below either limit; it names the lower one that it misses. */
export const below = (
  { measured, sound, least }: TwoLimits, words: (limit: number) => Pick<TopFinding, 'code' | 'message' | 'remedy' | 'would'>,
): TopFinding[] => {
  // Whoever asks for the limit itself has kept it.
  if (measured >= sound - 1e-9) return [];
  const limit = measured < least - 1e-9 ? least : sound;
  return [{ severity: 'warn', measured, limit, ...words(limit) }];
};
