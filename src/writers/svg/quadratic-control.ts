import type { Cubic } from '../../geometry/path.js';
import { distance, type Point } from '../../geometry/point.js';

/** The control point where a cubic is a quadratic raised (all lettering is): shorter to write, the same curve. `slack` in the cubic's unit. */
export const quadraticControl = (from: Point, { c1, c2, to }: Cubic, slack: number): Point | undefined => {
  const early = { x: from.x + 1.5 * (c1.x - from.x), y: from.y + 1.5 * (c1.y - from.y) };
  const late = { x: to.x + 1.5 * (c2.x - to.x), y: to.y + 1.5 * (c2.y - to.y) };
  return distance(early, late) < slack ? early : undefined;
};
