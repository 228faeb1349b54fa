import type { Point } from '../../geometry/point.js';
import { point } from '../../geometry/point.js';
import type { Block } from './block.js';
import type { DrillGuideSolution } from './solve.js';
import { soleHeight } from './sole.js';
import { offsetOf, surfaceHeight } from './work.js';

/** How high the flat of the sole stands over the blank's bottom at `u` from the bore's axis (towards the acute end), mm; exact. */
export const planeOverBottom = ({ length }: Block, angle: number, u: number): number =>
  angle === Math.PI / 2 ? 0 : (u + length / 2) / Math.tan(angle);

/** A point of the block's left side as the paper shows it: x from the obtuse end, y down from the block's top; `u` from the bore's axis, `up` from the blank's bottom. */
export const onSide = ({ length, height }: Block, u: number, up: number): Point => point(u + length / 2, height - up);

/**
 * Where, at the edge of the sole on the block's sides, the station of the axis' entry stands: `u` from the bore's axis. Square
 * to the sole from there the bit's axis enters the work.
 */
export const stationAt = ({ work, sole, angle }: DrillGuideSolution): number =>
  (surfaceHeight(work, offsetOf(work)) - sole.plane) * Math.cos(angle);

/** Over the blank's bottom, where a line along the bore at (u, across) leaves the sole, mm; exact. */
export const soleOverBottom = ({ block, sole, angle }: DrillGuideSolution, u: number, across: number): number =>
  planeOverBottom(block, angle, u) + (soleHeight(sole, across) - sole.plane) / Math.sin(angle);
