import { angleLabel, lengthLabel, riseOverRun } from '../../units/format.js';
import type { Units } from '../../units/units.js';

/** Lengths and angles in words for this piece's units. */
export interface Words {
  readonly length: (mm: number) => string;
  /** Degrees. */
  readonly angle: (rad: number) => string;
  /** Degrees and the rise over the run to set it by. */
  readonly slope: (rad: number) => string;
}

export const wordsFor = (units: Units): Words => ({
  length: (mm) => lengthLabel(mm, units),
  angle: angleLabel,
  slope: (rad) => `${angleLabel(rad)}: ${riseOverRun(rad, units)}`,
});
