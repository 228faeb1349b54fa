import { angleLabel, lengthLabel, riseOverRun } from '../../units/format.js';
import type { Round } from '../../spec/spec.js';
import type { Units } from '../../units/units.js';

/** Lengths and angles for the lettering of patterns, in this piece's units. */
export interface Say {
  readonly length: (mm: number) => string;
  /** A round's name and measured diameter; one without a name is called by its diameter alone. */
  readonly round: (round: Round) => string;
  /** Degrees. */
  readonly angle: (rad: number) => string;
  /** Degrees and the rise over the run to set it by. */
  readonly slope: (rad: number) => string;
}

/** The kind's lettering in the units of a piece. */
export const sayIn = (units: Units): Say => ({
  round: ({ name, diameter, unnamed }) => `${unnamed === true ? '' : `${name} `}Ø ${lengthLabel(diameter, units)}`,
  length: (mm) => lengthLabel(mm, units),
  angle: angleLabel,
  slope: (rad) => `${angleLabel(rad)}: ${riseOverRun(rad, units)}`,
});
