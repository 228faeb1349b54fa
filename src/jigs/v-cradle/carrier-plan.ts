import { add, point, polar, scale, type Point } from '../../geometry/point.js';
import type { Carrier } from './carrier.js';

/**
 * The carrier on the saw's table, from above. Origin where the blade's line meets the fence; fence along y = 0, the maker on the
 * y > 0 side; the round leads to the left. mm, exact.
 */
export interface CarrierPlan {
  /** Unit vector along the groove, away from the fence. */
  readonly away: Point;
  /** Unit vector square to the groove, towards the blade's side. */
  readonly across: Point;
  /** Unit vector along the blade's line, away from the fence. */
  readonly blade: Point;
  /** Where the blade's line crosses the round's axis. */
  readonly crossing: Point;
  /** The acute and the obtuse end of the finished cut, where the blade crosses the round's outline. */
  readonly toe: Point;
  readonly heel: Point;
  /** The point of the line `off` from the groove's middle (towards the blade's side positive) that stands on the fence. */
  readonly onFence: (off: number) => Point;
  /** The point of that line `along` it from abreast of the crossing. */
  readonly at: (along: number, off: number) => Point;
}

/** Where everything of the carrier stands on the saw. */
export const carrierPlan = (c: Carrier): CarrierPlan => {
  const away = polar(Math.PI - c.turn);
  const across = polar(Math.PI / 2 - c.turn);
  const blade = polar(Math.PI / 2 + c.sawReading);
  const crossing = scale(blade, c.bladeToAxis);
  const half = c.faceLength / 2;
  const at = (along: number, off: number): Point => add(crossing, add(scale(away, along), scale(across, off)));
  return {
    away, across, blade, crossing, at,
    toe: scale(blade, c.bladeToAxis - half),
    heel: scale(blade, c.bladeToAxis + half),
    onFence: (off) => {
      const foot = at(0, off);
      return point(foot.x - (foot.y / away.y) * away.x, 0);
    },
  };
};
