import type { Figure } from '../../drawing/set-up.js';
import { angleOf, slopeOf, words } from '../../units/quantity.js';

/** Angles this near to square are square, radians: then neither side is the acute one. */
const squareness = 1e-9;

/** Whether a joint or a hole, 90° at most, stands square, so that nothing may be said of a throat, an acute side or uphill. */
export function isSquareAngle(angle: number): boolean {
  return angle > Math.PI / 2 - squareness;
}

/**
 * One angle in the three ways in which shops read it: between the axes (which a gauge set from the fence reads too) and off
 * square, with the rise over the run. `what` names the two things between which it lies. Radians.
 */
export function angleFigures(angle: number, what: string): readonly Figure[] {
  if (isSquareAngle(angle)) return [{ code: 'angle', label: [what], value: words`${angleOf(angle)}, square` }];
  return [
    { code: 'angle', label: [`${what}; a gauge that reads 90 when square`], value: [slopeOf(angle)] },
    { code: 'off-square', label: ['Off square; a gauge that reads 0 when square'], value: [slopeOf(Math.PI / 2 - angle)] },
  ];
}
