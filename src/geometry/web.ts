import { segmentDistance, type Segment3 } from './segment-distance.js';
import { dot3, subtract3, add3, scale3, type Vector3 } from './vector3.js';

/** A drilled hole: its axis as a run within the wood, and the bit's diameter, mm. */
export interface Bore3 {
  readonly axis: Segment3;
  readonly diameter: number;
}

/** The least wood between two holes within their runs, mm: the axes' least distance less both radii; negative where the holes meet. Where canted holes come out of a face their openings may be nearer still. */
export const webBetween = (one: Bore3, other: Bore3): number =>
  segmentDistance(one.axis, other.axis).distance - (one.diameter + other.diameter) / 2;

/** The least wood beside a hole across a round, mm: R − |offset| − b/2; negative where the hole breaks out at the side. */
export const skinBeside = ({ radius, offset, bit }: { readonly radius: number; readonly offset: number; readonly bit: number }): number =>
  radius - Math.abs(offset) - bit / 2;

/**
 * The part of a line through `point` along `direction` that lies within a round about the z axis; undefined where the line
 * misses the round or runs along it without end. Exact.
 */
export const lineInRound = (point: Vector3, direction: Vector3, radius: number): Segment3 | undefined => {
  const flat = { ...direction, z: 0 };
  const a = dot3(flat, flat);
  if (a === 0) return undefined;
  const foot = -(point.x * direction.x + point.y * direction.y) / a;
  const nearest = add3(point, scale3(direction, foot));
  const square = radius * radius - nearest.x * nearest.x - nearest.y * nearest.y;
  if (square < 0) return undefined;
  const half = scale3(direction, Math.sqrt(square / a));
  return { a: subtract3(nearest, half), b: add3(nearest, half) };
};
