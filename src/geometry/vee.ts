import { GeometryError } from '../errors/geometry-error.js';

/** A V-groove: the angle between its flanks (radians, below 180°), how deep it is cut, and how wide its flat bottom is, mm. */
export interface Vee {
  readonly includedAngle: number;
  readonly depth: number;
  readonly flat: number;
}

/** How a round lies in a V: heights from the V's virtual apex, mm. */
export interface VeeContact {
  /** r ÷ sin h, h half the included angle. */
  readonly axisHeight: number;
  /** r·cos²h ÷ sin h. */
  readonly contactHeight: number;
  /** r·cos h, from the V's middle to where the round touches. */
  readonly contactHalfWidth: number;
  /** r ÷ tan h, along the flank from the apex. */
  readonly flankLength: number;
}

const requireAngle = (includedAngle: number): void => {
  if (!(includedAngle > 0 && includedAngle < Math.PI)) {
    throw new GeometryError('v-angle', 'A V needs an included angle above 0° and below 180°.', { includedAngle });
  }
};

/** Where a round of `radius` touches the flanks of a V and how high it lies; exact. */
export const veeContact = (includedAngle: number, radius: number): VeeContact => {
  requireAngle(includedAngle);
  const [sin, cos] = [Math.sin(includedAngle / 2), Math.cos(includedAngle / 2)];
  return {
    axisHeight: radius / sin,
    contactHeight: (radius * cos * cos) / sin,
    contactHalfWidth: radius * cos,
    flankLength: (radius * cos) / sin,
  };
};

/** How far the virtual apex lies below the groove's top, mm: the depth and what the flat cuts off. Exact. */
export const apexDepth = ({ includedAngle, depth, flat }: Vee): number => {
  requireAngle(includedAngle);
  return depth + flat / 2 / Math.tan(includedAngle / 2);
};

/** How wide the groove is at the top, mm: 2·depth·tan h and the flat. Exact. */
export const grooveWidth = ({ includedAngle, depth, flat }: Vee): number => {
  requireAngle(includedAngle);
  return 2 * depth * Math.tan(includedAngle / 2) + flat;
};

/** How far a round stands above the groove's top, mm; negative where it lies below. Exact. */
export const proudOf = (vee: Vee, radius: number): number =>
  veeContact(vee.includedAngle, radius).axisHeight + radius - apexDepth(vee);

/** The gap between a round and the flat bottom, mm; zero or less where the round would rest on the flat. Exact. */
export const gapOverFlat = (vee: Vee, radius: number): number =>
  veeContact(vee.includedAngle, radius).axisHeight - radius - (apexDepth(vee) - vee.depth);
