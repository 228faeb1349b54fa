import { angleLabel, lengthLabel, riseOverRun } from '../../units/format.js';
import type { Round } from '../../spec/spec.js';
import type { Units } from '../../units/units.js';

/** Lengths and angles in words for this piece's units. */
export interface Words {
  readonly length: (mm: number) => string;
  /** A round's name and measured diameter; one without a name is called by its diameter alone. */
  readonly round: (round: Round) => string;
  /** Degrees. */
  readonly angle: (rad: number) => string;
  /** Degrees and the rise over the run to set it by. */
  readonly slope: (rad: number) => string;
}

/** What a round that has no name of its own is called by begins so. */
const unnamed = 'Ø ';

/** The kind's words in the units of a piece. */
export const wordsFor = (units: Units): Words => ({
  round: ({ name, diameter }) => `${name.startsWith(unnamed) ? '' : `${name} `}Ø ${lengthLabel(diameter, units)}`,
  length: (mm) => lengthLabel(mm, units),
  angle: angleLabel,
  slope: (rad) => `${angleLabel(rad)}: ${riseOverRun(rad, units)}`,
});
