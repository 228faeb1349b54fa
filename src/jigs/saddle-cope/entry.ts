import { entryHeight } from '../../geometry/far-wall.js';
import { minimiseRound } from '../../geometry/minimise-round.js';
import { saddleHeight, type SaddleJoint } from '../../geometry/saddle.js';

/** Where the branch's axis, and the bit on it, enters the main; mm along and round the main. */
export interface Entry {
  /** From the crossing of the axes along the main, towards the throat: √(R² − e²) ÷ tan θ. */
  readonly station: number;
  /** Along the main from there on to where the throat stands, and back to where the horn does; never below 0. */
  readonly toThroat: number;
  readonly toHorn: number;
  /** Round the main's surface from the line that faces the branch. */
  readonly girth: number;
}

/** Along the main from the crossing, towards the throat, of the branch's edge at φ. Exact. */
const alongMain = (joint: SaddleJoint, phi: number): number =>
  saddleHeight(joint, phi) * Math.cos(joint.angle) + joint.branch * Math.cos(phi) * Math.sin(joint.angle);

/** The entry of a joint. Exact, but for the horn's place: to 1e-6 mm. */
export function entryOf(joint: SaddleJoint): Entry {
  const { main, offset, angle } = joint;
  const horn = minimiseRound((phi) => saddleHeight(joint, phi), 2 * Math.PI, 720);
  const station = angle === Math.PI / 2 ? 0 : entryHeight(main, offset) / Math.tan(angle);
  return {
    station, toThroat: alongMain(joint, 0) - station, toHorn: Math.max(0, station - alongMain(joint, horn)),
    girth: main * Math.asin(Math.abs(offset) / main),
  };
}
