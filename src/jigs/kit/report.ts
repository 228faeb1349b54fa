import type { About, Cure, Finding, Severity } from '../../errors/finding.js';
import type { TwoLimits } from '../../shop/walls.js';
import { roundedDown, roundedUp } from '../../units/round-safe.js';
import { sayWords, type Words } from '../../units/quantity.js';
import { degrees, type Units } from '../../units/units.js';
import type { Context } from '../jig.js';

/** What a report is about; the jig puts its name to it. */
export type Concern = Omit<About, 'jig'>;

/** A finding before it is said in the spec's units and the jig puts its name to it. */
export interface Report {
  readonly code: string;
  readonly severity: Severity;
  /** mm, degrees or a ratio. */
  readonly measured: number;
  readonly limit: number;
  readonly about: Concern;
  readonly message: Words;
  /** The figure that meets the last limit comes first, rounded towards the safe side (`atLeast`, `atMost`). */
  readonly remedy: Words;
  /** Fields of the spec which, each alone, clear the finding when set to the remedy's figure. */
  readonly would?: readonly Cure[];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Reports as findings of a jig: said in its units, its name put to them. */
export function findingsFrom(reports: readonly Report[], { name, units }: Pick<Context, 'name' | 'units'>): readonly Finding[] {
  return reports.map(({ message, remedy, about, would = [], ...report }) => ({
    jig: name, ...report, about: { jig: name, ...about },
    message: capital(sayWords(message, units)), remedy: sayWords(remedy, units), would,
  }));
}

/** A warning where a figure lies below either limit; it names the lower one that it misses. Whoever asks for the limit itself has kept it. */
export function below(measured: number, { sound, least }: TwoLimits, make: (limit: number) => Omit<Report, 'severity' | 'measured' | 'limit'>): readonly Report[] {
  if (measured >= sound - 1e-9) return [];
  const limit = measured < least - 1e-9 ? least : sound;
  return [{ severity: 'warn', measured, limit, ...make(limit) }];
}

/** Makes the figures of remedies: rounded towards the side that clears, and the same figure for the field that it belongs to. */
export interface Remedies {
  /** mm that labels print and that is no less. */
  readonly atLeast: (mm: number) => number;
  /** mm that labels print and that is no more. */
  readonly atMost: (mm: number) => number;
}

/** The remedies of a jig's units. */
export function remediesIn(units: Units): Remedies {
  return { atLeast: (mm) => roundedUp(mm, units), atMost: (mm) => roundedDown(mm, units) };
}

/** A field set to a length, mm. */
export function cureLength(field: string, mm: number): Cure {
  // Without the crumbs of binary fractions: it is written down as printed.
  return { field, value: Number(mm.toFixed(9)), unit: 'mm' };
}

/** A field set to an angle, radians. */
export function cureAngle(field: string, rad: number): Cure {
  return { field, value: Number(degrees(rad).toFixed(9)), unit: 'degrees' };
}


