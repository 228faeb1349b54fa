import { veeContact } from '../../geometry/vee.js';
import { nextSize } from '../../shop/sizes.js';
import { usualKerf } from '../../shop/tools.js';
import { usualBlockFloor, usualBlockWall } from '../../shop/walls.js';
import type { Round } from '../../spec/spec.js';
import { lengthOf, words } from '../../units/quantity.js';
import type { Context, Outcome } from '../jig.js';
import { cureLength, findingsFrom, remediesIn, type Report } from '../kit/report.js';
import type { Carrier } from './carrier.js';
import { solveCarrier } from './solve-carrier.js';
import { type Groove, grooveOf, type HeldRound, heldRound } from './held-round.js';
import { bearingDiameters, flatFor, leastBearing, leastGap, soundPart } from './limits.js';
import { type Sawing, sawingOf } from './sawing.js';
import type { VCradleFields } from './schema.js';

/** The block as it is made, mm. */
export interface Block {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Wood left under the groove. */
  readonly floor: number;
  /** Wood left beside the groove at the block's top, each side. */
  readonly wall: number;
  /** Length of V left for the round: the block less what lies behind the stop. */
  readonly bearing: number;
}

/** Everything solved for a V-cradle. mm, radians. */
export interface VCradleSolution {
  readonly groove: Groove;
  readonly block: Block;
  /** Whether the block itself is made; the carrier has its height and groove in either case. */
  readonly makesBlock: boolean;
  /** From the block's left end to the stop's face. */
  readonly stop?: number;
  /** Thickest first. */
  readonly held: readonly HeldRound[];
  readonly sawing: Sawing;
  readonly carrier?: Carrier;
  readonly carrierSawing?: Sawing;
}

/** Rounds from the thickest to the thinnest. */
const byThickness = (rounds: readonly Round[]): Round[] => [...rounds].sort((a, b) => b.diameter - a.diameter);

/** The depth of cut at which the thickest round touches no higher than is sound; not positive where the flat forbids it. */
const soundDepth = (thickest: Round, halfAngle: number, flat: number): number =>
  veeContact(2 * halfAngle, thickest.diameter / 2).contactHeight / soundPart - flat / (2 * Math.tan(halfAngle));

const solveBlock = (fields: VCradleFields, groove: Groove, thickest: Round, context: Context): Block => {
  const stop = fields.stop ?? 0;
  const needed = Math.max(leastBearing, bearingDiameters * thickest.diameter);
  const length = fields.block.length ?? nextSize(stop + needed, 'sawn', context.units);
  const width = fields.block.width ?? nextSize(groove.width + 2 * usualBlockWall, 'sawn', context.units);
  const height = fields.block.height ?? nextSize(groove.depth + usualBlockFloor, 'sawn', context.units);
  return { length, width, height, floor: height - groove.depth, wall: (width - groove.width) / 2, bearing: length - stop };
};

/** A flat that leaves even the thickest round no flank. */
const flatTooWide = (fields: VCradleFields, thickest: Round, { units }: Context): Report => {
  const limit = 2 * (thickest.diameter / 2) * Math.cos(fields.includedAngle / 2);
  const sound = Math.max(0, remediesIn(units).atMost(flatFor(thickest.diameter / 2, fields.includedAngle / 2, leastGap)));
  return {
    code: 'contacts-leave-flanks', severity: 'stop', measured: fields.flat, limit, about: { operation: 'saw-v', round: thickest.name },
    message: words`The flat of ${lengthOf(fields.flat)} is so wide that even the thickest round, ${thickest.name}, has no flank to rest on.`,
    remedy: words`A flat of ${lengthOf(sound)} or less; it must be less than ${lengthOf(limit)}.`, would: [cureLength('flat', sound)],
  };
};

/**
 * Solves groove, block, rounds, saw settings and carrier in closed form. Refuses only what has no numbers or cannot be made: a
 * flat that leaves no flank, a carrier without a turn, one longer than a bench, one for a round that is not held. All else is
 * for the checks.
 */
export const solve = (fields: VCradleFields, context: Context): Outcome<VCradleSolution> => {
  const rounds = byThickness(fields.holds);
  const thickest = rounds[0]!;
  const halfAngle = fields.includedAngle / 2;
  const depth = fields.depth ?? nextSize(soundDepth(thickest, halfAngle, fields.flat), 'depth', context.units);
  if (depth <= 0) return { refused: findingsFrom([flatTooWide(fields, thickest, context)], context) };
  const groove = grooveOf(halfAngle, fields.flat, depth);
  const block = solveBlock(fields, groove, thickest, context);
  const wantsCarrier = fields.make?.includes('carrier') ?? true;
  const solved = wantsCarrier ? solveCarrier(fields, rounds, groove, context) : {};
  if ('refused' in solved) return { refused: findingsFrom(solved.refused, context) };
  const { carrier } = solved;
  const kerf = { width: context.shop.saw?.kerf ?? usualKerf, assumed: context.shop.saw?.kerf === undefined };
  return { solution: {
    groove, block, makesBlock: fields.make?.includes('block') ?? true,
    ...(fields.stop === undefined ? {} : { stop: fields.stop }),
    held: rounds.map((r) => heldRound(r, groove)),
    sawing: sawingOf(groove, { a: block.width / 2, b: block.width / 2 }, kerf),
    ...(carrier === undefined ? {} : { carrier, carrierSawing: sawingOf(groove, { a: carrier.seatSide, b: carrier.bladeSide }, kerf) }),
  } };
};
