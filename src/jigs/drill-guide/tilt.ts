import { gimballedSecondTilt, resultantTilt, type Tilt } from '../../geometry/tilt.js';

/** Two tilts from upright, and the one tilt that does their work. Radians. */
export interface Resultant extends Tilt {
  readonly rake: number;
  readonly splay: number;
  /** What a second tilt must be set to where it rides on the first, as in a tilted vice on a tilted table: not the splay. */
  readonly secondTilt: number;
}

/** Rake and splay with what follows from them; exact. Both between −90° and 90°. */
export const resultantOf = (rake: number, splay: number): Resultant =>
  ({ rake, splay, ...resultantTilt(rake, splay), secondTilt: gimballedSecondTilt(rake, splay) });
