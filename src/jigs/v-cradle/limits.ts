/*
 * Shop practice, not standards: every one is a `warn` or a `stop` with its reason, and every default it makes can be
 * overridden in the spec. mm.
 */

/**
 * Contacts at most this part of the way up the flanks: a 90° V touches a round of 2.828 × its depth at its very edges and
 * holds one of 2.25 × its depth soundly. Common practice.
 */
export const soundPart = 2.25 / (2 * Math.SQRT2);
/** Wood under the groove of a cradle that is drilled into. Common practice. */
export const leastFloor = 10;
/** Wood beside the groove at the block's top. Common practice. */
export const leastWall = 6;
/** Floor and walls that a block gets where the spec does not size it. */
export const usualFloor = 12;
/** Wood beside the groove where the spec does not size the block, mm. */
export const usualWall = 12;
/** Length of V that a round needs: this, and four times its diameter. Common practice. */
export const leastBearing = 150;
/** Length of V that a round needs, in its diameters. */
export const bearingDiameters = 4;
/** Air under a round below which dust lifts it. */
export const leastGap = 0.5;
/** Hands from the blade in a steep cut. Common practice. */
export const handsFromBlade = 150;
/** Carrier's end against the fence, left of the blade, below which it rocks. */
export const leastSeat = 25;
/** The same where the spec does not say, mm. */
export const usualSeat = 50;
/** Turn of a carrier below which its own end is so oblique that it is all edge, degrees. */
export const leastTurn = 20;
/** Toe of the finished cut from the fence, so that the blade has left the wood before it meets the fence. */
export const toeToFence = 10;
/** Kerf assumed where the shop names none: 1/8 in. */
export const usualKerf = 3.175;
/** Angle error that the toe shift is given for, degrees. */
export const toeShiftError = 0.5;
