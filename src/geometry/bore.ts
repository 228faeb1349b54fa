import { GeometryError } from '../errors/geometry-error.js';
import { saddleHeights } from './saddle-heights.js';

/** A hole bored at an angle: the bit's diameter, mm, and the angle between bit and the work's face or axis, radians, 0…90°. */
export interface Bore {
  readonly bit: number;
  readonly angle: number;
}

const requireAngle = (angle: number): void => {
  if (!(angle > 0 && angle <= Math.PI / 2)) throw new GeometryError('hole-angle', 'A hole needs an angle above 0° and at most 90°.', { angle });
};

/** Length of the opening on a flat face, b ÷ sin θ, mm; its width is b. Exact. */
export const openingLength = ({ bit, angle }: Bore): number => {
  requireAngle(angle);
  return bit / Math.sin(angle);
};

/** Length of a hole through a thickness, T ÷ sin θ, mm; exact. */
export const throughLength = (thickness: number, angle: number): number => {
  requireAngle(angle);
  return thickness / Math.sin(angle);
};

/** How far apart the axis' marks stand on the two faces of a thickness, T ÷ tan θ, mm; exact. */
export const markShift = (thickness: number, angle: number): number => {
  requireAngle(angle);
  return angle === Math.PI / 2 ? 0 : thickness / Math.tan(angle);
};

/** Height of a round over a chord as wide as the bit, r − √(r² − (b/2)²), mm; exact. Refuses a bit wider than the round. */
export const sagitta = (radius: number, bit: number): number => {
  if (!(bit <= 2 * radius)) throw new GeometryError('bit-over-round', 'The bit is wider than the round.', { radius, bit });
  return radius - Math.sqrt((radius - bit / 2) * (radius + bit / 2));
};

/** How far a bit runs on a flat face from first touch until its whole edge is in the wood, b ÷ tan θ, mm; exact. */
export const runOnFlat = ({ bit, angle }: Bore): number => markShift(bit, angle);

/**
 * The same on a round, along the bit, mm: the whole height of the opening's edge, to 1e-9 mm. The shop's sum of `runOnFlat`
 * and `sagitta` is a safe bound above it, equal to it at 90° only.
 */
export const runOnRound = ({ bit, angle }: Bore, radius: number, offset = 0): number => {
  const { least, greatest } = saddleHeights({ main: radius, branch: bit / 2, angle, offset });
  return greatest - least;
};

/** The greatest tilt from square at which a point standing out by `point` mm touches before the rim: atan(2p/b). Exact. */
export const pointLeadsLimit = (bit: number, point: number): number => Math.atan((2 * point) / bit);
