/** A cut across a round steeper than the saw turns, made on a carrier: diameter, mm, and angles, radians. */
export interface SteepCut {
  readonly diameter: number;
  /** α, the sharp angle between the cut face and the round's axis, 0 < α ≤ 90°. */
  readonly sharpAngle: number;
  /** μ, the saw's own reading from square. */
  readonly sawReading: number;
}

/** The carrier's turn κ away from lying along the fence, radians, same sense as the saw's reading: α = 90° − (μ + κ). Exact. */
export const carrierTurn = ({ sharpAngle, sawReading }: SteepCut): number => Math.PI / 2 - sharpAngle - sawReading;

/** Length of the cut face, d ÷ sin α, mm; exact. */
export const faceLength = ({ diameter, sharpAngle }: SteepCut): number => diameter / Math.sin(sharpAngle);

/** From heel to toe along the round, d ÷ tan α, mm; exact. */
export const heelToToe = ({ diameter, sharpAngle }: SteepCut): number => diameter / Math.tan(sharpAngle);

/** How far the toe moves for an angle error of `error` radians, mm: d·δ ÷ sin²α; exact to first order in the error. */
export const toeShift = ({ diameter, sharpAngle }: SteepCut, error: number): number =>
  (diameter * Math.abs(error)) / (Math.sin(sharpAngle) * Math.sin(sharpAngle));
