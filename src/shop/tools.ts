import { radians } from '../units/units.js';

/* What shops have and do where the spec's own shop does not say. Common practice; mm, radians. */

/** Most tables and blades tilt, and most saws turn, this far: beyond it a maker without a described shop measures first. */
export const usualReach = radians(45);
/** Kerf assumed where the shop names none: 1/8 in. */
export const usualKerf = 3.175;
/** Hands from a saw's blade. */
export const handsFromBlade = 150;
/** Hands from a router's cutter. */
export const handsFromCutter = 100;
/** Shortest blank in which a V or a sole is cut at a saw before it is cut to length. */
export const leastSawBlank = 300;
/** Waste left at the wings by a first saw cut, for the saw's own error. */
export const sawAllowance = 1;
/** Error of a saw's or a table's setting that sheets reckon with. */
export const settingError = radians(0.5);
/** Below this angle to a round's axis a bit rides along the surface and does not enter. */
export const leastDrillAngle = radians(15);
/** Whether a bit at this angle to a round's axis rides along it, radians. */
export const isTooFlatToDrill = (angle: number): boolean => angle < leastDrillAngle - 1e-12;
/** Cut of a saw carrier that is turned less than this is all edge: no carrier is needed, or the saw's reading is lowered. */
export const leastCarrierTurn = radians(3);
/** A carrier longer than this does not lie on a saw's stand or bench. */
export const longestCarrier = 1500;
