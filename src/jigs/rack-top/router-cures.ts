import type { Cure } from '../../errors/finding.js';
import { leastCutter, radiusToSpare } from '../../shop/router.js';
import { recessWall } from '../../shop/walls.js';
import { cureLength } from '../kit/report.js';
import type { Board } from './board.js';
import type { Cutter } from './rack-top.js';
import type { Say } from './report.js';

/** The widest cutter that goes into `width` with half a millimetre to spare on each side, mm; none where it would be thinner than any. */
export const cutterInto = (width: number): number | undefined => {
  const most = width - 2 * radiusToSpare;
  return most >= leastCutter ? most : undefined;
};

/** A thinner cutter as a field, where no bushing is made for the one given. */
export const cutterCure = (most: number | undefined, { bushing }: Cutter, say: Say): readonly Cure[] =>
  (bushing !== undefined || most === undefined ? [] : [cureLength('cutter.diameter', say.down(most))]);

/** A recess less deep is none that anyone would cut, mm. */
export const shallowest = 1;

/** The deepest recess that leaves a sound floor, mm; none where that is no recess. */
export const deepestRecess = ({ thickness }: Board): number | undefined => {
  const depth = thickness - recessWall.sound;
  return depth >= shallowest ? depth : undefined;
};

/** That depth as a field of recess `number`. */
export const depthCure = (number: number, depth: number | undefined, say: Say): readonly Cure[] =>
  (depth === undefined ? [] : [cureLength(`recesses.${number - 1}.depth`, say.down(depth))]);
