import { apexDepth, gapOverFlat, grooveWidth, proudOf, veeContact, type VeeContact } from '../../geometry/vee.js';
import type { Round } from '../../spec/spec.js';

/** The V as cut: half its included angle, flat, depth from the block's top down to the virtual apex. mm, radians. */
export interface Groove {
  readonly halfAngle: number;
  readonly flat: number;
  /** What the saw cuts: block's top to the flat (to the apex where the flat is 0). */
  readonly depth: number;
  /** Height of the flat above the virtual apex: flat / (2·tan h). */
  readonly flatHeight: number;
  /** Block's top to the virtual apex: depth + flatHeight. */
  readonly apexDepth: number;
  /** At the block's top: 2·depth·tan h + flat. */
  readonly width: number;
}

/** A round lying in the groove. mm; heights from the virtual apex. Exact. */
export interface HeldRound extends VeeContact {
  readonly round: Round;
  readonly radius: number;
  /** How far its top stands above the block's top; negative where it lies below. */
  readonly proud: number;
  /** Air between the round and the flat; not positive where it rides on the flat. */
  readonly gap: number;
}

/** The groove from the angle, flat and depth of cut. Exact. */
export const grooveOf = (halfAngle: number, flat: number, depth: number): Groove => {
  const vee = { includedAngle: 2 * halfAngle, depth, flat };
  return { halfAngle, flat, depth, flatHeight: apexDepth(vee) - depth, apexDepth: apexDepth(vee), width: grooveWidth(vee) };
};

/** A round in the groove, taken as touching both flanks; whether it does is for the checks. */
export const heldRound = (round: Round, { halfAngle, depth, flat }: Groove): HeldRound => {
  const radius = round.diameter / 2;
  const vee = { includedAngle: 2 * halfAngle, depth, flat };
  return { round, radius, ...veeContact(vee.includedAngle, radius), proud: proudOf(vee, radius), gap: gapOverFlat(vee, radius) };
};
