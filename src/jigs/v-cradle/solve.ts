import type { Finding } from '../../errors/finding.js';
import { veeContact } from '../../geometry/vee.js';
import type { Round } from '../../spec/spec.js';
import { lengthLabel, angleLabel } from '../../units/format.js';
import { degrees } from '../../units/units.js';
import type { Context, Outcome } from '../jig.js';
import { type Carrier, carrierOf } from './carrier.js';
import { type Groove, grooveOf, type HeldRound, heldRound } from './held-round.js';
import { bearingDiameters, leastBearing, soundPart, usualFloor, usualKerf, usualWall } from './limits.js';
import { roundUp } from './round-up.js';
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
  const length = fields.block.length ?? roundUp(stop + needed, 'block', context.units);
  const width = fields.block.width ?? roundUp(groove.width + 2 * usualWall, 'block', context.units);
  const height = fields.block.height ?? roundUp(groove.depth + usualFloor, 'block', context.units);
  return { length, width, height, floor: height - groove.depth, wall: (width - groove.width) / 2, bearing: length - stop };
};

const flatTooWide = (fields: VCradleFields, thickest: Round, context: Context): Finding => {
  const limit = 2 * (thickest.diameter / 2) * Math.cos(fields.includedAngle / 2);
  return {
    jig: context.name, code: 'contacts-leave-flanks', severity: 'stop', measured: fields.flat, limit,
    message: `The flat of ${lengthLabel(fields.flat, context.units)} is so wide that even the thickest round, ${thickest.name}, has no flank to rest on.`,
    remedy: `Make the flat less than ${lengthLabel(limit, context.units)}, far less for thinner rounds.`,
  };
};

const refuseCarrier = (fields: VCradleFields, rounds: readonly Round[], context: Context): Finding | undefined => {
  const { carrier } = fields;
  if (carrier === undefined) return undefined;
  const limit = Math.PI / 2 - carrier.sharpAngle;
  const head = { jig: context.name, severity: 'stop' } as const;
  if (carrier.sawReading >= limit) return {
    ...head, code: 'reading-past-angle', measured: degrees(carrier.sawReading), limit: degrees(limit),
    message: `With the saw at ${angleLabel(carrier.sawReading)} a round lying along the fence is cut at ${angleLabel(Math.PI / 2 - carrier.sawReading)} to its axis already: no turn of the carrier is left for ${angleLabel(carrier.sharpAngle)}.`,
    remedy: `Set the saw to less than ${angleLabel(limit)} from square, or cut without a carrier at exactly ${angleLabel(limit)}.`,
  };
  const { round } = carrier;
  if (round !== undefined && !rounds.some((r) => r.name === round.name && r.diameter === round.diameter)) return {
    ...head, code: 'carrier-round-not-held', measured: round.diameter, limit: rounds[0]!.diameter,
    message: `The carrier is to hold ${round.name} (${lengthLabel(round.diameter, context.units)}), which is not among the rounds that the groove is made for.`,
    remedy: `Add ${round.name} to holds, or name one of ${rounds.map((r) => r.name).join(', ')}.`,
  };
  return undefined;
};

const solveCarrier = (fields: VCradleFields, groove: Groove, thickest: Round, context: Context): Carrier | undefined =>
  fields.carrier && carrierOf({ ...fields.carrier, round: fields.carrier.round ?? thickest }, groove.width, context.units);

/**
 * Solves groove, block, rounds, saw settings and carrier in closed form. Refuses only what has no numbers: a flat that leaves no
 * flank, a saw reading that leaves no turn, a carrier for a round that is not held. All else is for the checks.
 */
export const solve = (fields: VCradleFields, context: Context): Outcome<VCradleSolution> => {
  const rounds = byThickness(fields.holds);
  const thickest = rounds[0]!;
  const halfAngle = fields.includedAngle / 2;
  const depth = fields.depth ?? roundUp(soundDepth(thickest, halfAngle, fields.flat), 'depth', context.units);
  const refused = [depth <= 0 ? flatTooWide(fields, thickest, context) : undefined, refuseCarrier(fields, rounds, context)]
    .filter((f) => f !== undefined);
  if (refused.length > 0) return { refused };
  const groove = grooveOf(halfAngle, fields.flat, depth);
  const block = solveBlock(fields, groove, thickest, context);
  const carrier = solveCarrier(fields, groove, thickest, context);
  const kerf = { width: context.shop.saw?.kerf ?? usualKerf, assumed: context.shop.saw?.kerf === undefined };
  return { solution: {
    groove, block,
    ...(fields.stop === undefined ? {} : { stop: fields.stop }),
    held: rounds.map((r) => heldRound(r, groove)),
    sawing: sawingOf(groove, { a: block.width / 2, b: block.width / 2 }, kerf),
    ...(carrier === undefined ? {} : { carrier, carrierSawing: sawingOf(groove, { a: carrier.seatSide, b: carrier.bladeSide }, kerf) }),
  } };
};
