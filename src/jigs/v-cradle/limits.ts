import { radians } from '../../units/units.js';

/*
 * What is particular to holding rounds in a V, mm unless said otherwise: common practice, not standards; what every kind
 * shares stands in src/shop.
 */

/**
 * Contacts at most this part of the way up the flanks: a 90° V touches a round of 2.828 × its depth at its very edges and
 * holds one of 2.25 × its depth soundly.
 */
export const soundPart = 2.25 / (2 * Math.SQRT2);
/** Length of V that a round needs: this, and four times its diameter. */
export const leastBearing = 150;
/** Length of V that a round needs, in its diameters. */
export const bearingDiameters = 4;
/** Air under a round below which dust lifts it. */
export const leastGap = 0.5;
/** Flat at which a round of radius r is `gap` clear of it, 2·tan h·(r/sin h − r − gap), or 0; the contacts stay on the flanks then too. Exact. */
export const flatFor = (radius: number, halfAngle: number, gap: number): number =>
  Math.max(0, 2 * Math.tan(halfAngle) * (radius / Math.sin(halfAngle) - radius - gap));
/** Carrier's end against the fence, left of the blade, below which it rocks. */
export const leastSeat = 25;
/** The same where the spec does not say. */
export const usualSeat = 50;
/** Turn of a carrier below which its own end is so oblique that it is all edge, radians. */
export const leastTurn = radians(20);
/** Length of a carrier's side A, the short one beside its oblique end, at least. */
export const leastSideA = 50;
/** Toe of the finished cut from the fence along the blade's line, at least, so that the blade has left the wood before it meets the fence. */
export const leastToeToFence = 10;
/** Room along the round between toe and fence for the waste beyond the toe, so that the off-cut is not jammed. */
export const wasteRoom = 30;
/** Waste beyond the toe, at least: less splinters away. */
export const leastWaste = 10;
