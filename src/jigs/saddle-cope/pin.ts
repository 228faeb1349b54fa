import { entryHeight, farWallInRound, type BlindHole } from '../../geometry/far-wall.js';
import type { SaddleJoint } from '../../geometry/saddle.js';
import { saddleHeights } from '../../geometry/saddle-heights.js';
import { holeAllowance } from '../../shop/bit-length.js';
import { nearestBit, ownedBits, usualPoint } from '../../shop/bits.js';
import { isTooFlatToDrill } from '../../shop/tools.js';
import type { Context } from '../jig.js';
import type { PinFields } from './schema.js';

/** The pin or loose tenon of one end: it lies on the branch's axis. mm. */
export interface Pin {
  readonly diameter: number;
  readonly intoBranch: number;
  /** Along the axis from the finished tip, the horn, to the bottom of the hollow: on top of the hole in the branch, drilled while the end is whole. */
  readonly hornToHollow: number;
  /** Along the pin from where the axis enters the main. */
  readonly intoMain: number;
  /** How far the bit's point stands out beyond its lips. */
  readonly point: number;
  /** Hole in the branch from its finished tip, and in the main from where the axis enters; both with the allowance for glue. */
  readonly holeInBranch: number;
  readonly holeInMain: number;
  /** Along the bit from where its rim first touches the main to the bottom of the hole. */
  readonly travelInMain: number;
  /** Wood left in the main beyond the end of the hole and the bit's point, square to its surface; below 0 it comes out. */
  readonly wall: number;
  /** Wood left in the main beside the hole where it passes closest to the surface. */
  readonly skin: number;
}

const leastIntoBranch = 30;

/** 2/5 of the branch, to the nearest owned bit between 1/3 and 1/2 of it, else to 1/16 in or 1 mm. Common practice. */
const defaultDiameter = (branch: number, { shop, units }: Context): number => {
  const wanted = 0.4 * branch;
  const rounding = units === 'inch' ? 25.4 / 16 : 1;
  return nearestBit(shop, wanted, branch / 3, branch / 2) ?? Math.max(rounding, Math.round(wanted / rounding) * rounding);
};

/** Least length of a pin in the branch's end grain: three diameters, and 30 mm. Common practice. */
export function leastInBranch(diameter: number): number {
  return Math.max(3 * diameter, leastIntoBranch);
}

/** The pin's hole in the main, as a blind hole in a round. */
export function holeOf({ main, angle, offset }: SaddleJoint, pin: Pick<Pin, 'diameter' | 'point'>): BlindHole {
  return { round: main, offset, angle, bit: pin.diameter / 2, point: pin.point };
}

/** Why an end has no pin: the spec asks for none, or no bit enters the main at so flat an angle. */
export type NoPin = 'not-asked' | 'too-flat';

/** The pin of a joint with what the spec leaves out filled in, or why it has none. */
export const solvePin = (fields: PinFields, joint: SaddleJoint, context: Context): Pin | NoPin => {
  if (fields.diameter === 0) return 'not-asked';
  if (isTooFlatToDrill(joint.angle)) return 'too-flat';
  const diameter = fields.diameter ?? defaultDiameter(2 * joint.branch, context);
  const intoMain = fields.intoMain ?? (2 / 3) * 2 * joint.main;
  const intoBranch = fields.intoBranch ?? leastInBranch(diameter);
  const entry = entryHeight(joint.main, joint.offset) / Math.sin(joint.angle);
  const hornToHollow = entry - saddleHeights(joint).least;
  const point = ownedBits(context.shop, diameter)[0]?.point ?? usualPoint;
  const holeInMain = intoMain + holeAllowance;
  const reach = Math.abs(joint.offset) + diameter / 2;
  // A pin that overhangs the main has no rim all round; it is refused or warned of, and its axis is what counts.
  const rim = reach <= joint.main ? saddleHeights({ ...joint, branch: diameter / 2 }).greatest : entry;
  return {
    diameter, intoBranch, hornToHollow, intoMain, point, holeInMain,
    holeInBranch: hornToHollow + intoBranch + holeAllowance,
    travelInMain: holeInMain + rim - entry,
    wall: farWallInRound(holeOf(joint, { diameter, point }), holeInMain),
    skin: joint.main - reach,
  };
};
