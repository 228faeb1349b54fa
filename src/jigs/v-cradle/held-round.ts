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
export interface HeldRound {
  readonly round: Round;
  readonly radius: number;
  readonly axisHeight: number;
  readonly contactHeight: number;
  readonly contactHalfWidth: number;
  /** Along the flank, from the virtual apex to the contact. */
  readonly flankLength: number;
  /** How far its top stands above the block's top; negative where it lies below. */
  readonly proud: number;
  /** Air between the round and the flat; not positive where it rides on the flat. */
  readonly gap: number;
}

/** The groove from the angle, flat and depth of cut. Exact. */
export const grooveOf = (halfAngle: number, flat: number, depth: number): Groove => {
  const flatHeight = flat / (2 * Math.tan(halfAngle));
  return { halfAngle, flat, depth, flatHeight, apexDepth: depth + flatHeight, width: 2 * depth * Math.tan(halfAngle) + flat };
};

/** Height of the contacts of a round of `radius` above the virtual apex: r·cos²h / sin h. Exact. */
export const contactHeightOf = (radius: number, halfAngle: number): number =>
  (radius * Math.cos(halfAngle) ** 2) / Math.sin(halfAngle);

/**
 * A round in the groove, taken as touching both flanks: axis r / sin h above the virtual apex, contacts r·cos h either side
 * of the middle. Whether it does touch them is for the checks.
 */
export const heldRound = (round: Round, groove: Groove): HeldRound => {
  const radius = round.diameter / 2;
  const { halfAngle } = groove;
  const axisHeight = radius / Math.sin(halfAngle);
  return {
    round, radius, axisHeight,
    contactHeight: contactHeightOf(radius, halfAngle),
    contactHalfWidth: radius * Math.cos(halfAngle),
    flankLength: radius / Math.tan(halfAngle),
    proud: axisHeight + radius - groove.apexDepth,
    gap: axisHeight - radius - groove.flatHeight,
  };
};
