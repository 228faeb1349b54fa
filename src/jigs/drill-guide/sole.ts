import { veeContact } from '../../geometry/vee.js';
import type { DrillGuideFields } from './schema.js';
import type { Work } from './work.js';

/** What seats on the work. Heights in the frame of the work, mm. */
export interface Sole {
  readonly form: 'flat' | 'v' | 'cove';
  /** Height of the flat of the sole, in which the groove runs. */
  readonly plane: number;
  /** Depth of the groove from the flat of the sole: to the point of a V, to the crown of a cove; 0 for a flat sole. */
  readonly depth: number;
  /** Half the width of the groove at the flat of the sole. */
  readonly mouth: number;
  /** Half the included angle of a V. */
  readonly halfAngle: number;
  /** Half the distance between the lines on which a V touches the round, and how far below its point they lie. */
  readonly contact?: { readonly halfWidth: number; readonly depth: number };
}

/** A V this much deeper than its contacts holds soundly: for 90°, a round of 2.25 × the depth. Common practice. */
export const soundPart = (4 * Math.SQRT2) / 4.5;

const vSole = (radius: number, halfAngle: number, wanted: number | undefined): Sole => {
  const { contactHalfWidth, contactHeight } = veeContact(2 * halfAngle, radius);
  const contact = { halfWidth: contactHalfWidth, depth: contactHeight };
  const depth = wanted ?? soundPart * contact.depth;
  return { form: 'v', plane: radius / Math.sin(halfAngle) - depth, depth, mouth: depth * Math.tan(halfAngle), halfAngle, contact };
};

/** A cove of half the radius takes hold of the round through 120°. */
const coveSole = (radius: number, wanted: number | undefined): Sole => {
  const depth = wanted ?? radius / 2;
  return { form: 'cove', plane: radius - depth, depth, mouth: Math.sqrt(depth * (2 * radius - depth)), halfAngle: Math.PI / 4 };
};

/** The sole that a spec asks for; exact. A cove deeper than the radius of the round is refused by the solver. */
export const soleOf = (work: Work, fields: Pick<DrillGuideFields, 'sole' | 'groove'>): Sole => {
  const halfAngle = fields.groove.includedAngle / 2;
  const form = fields.sole ?? (work.kind === 'flat' ? 'flat' : 'v');
  if (work.kind === 'flat' || form === 'flat') {
    return { form: 'flat', plane: work.kind === 'flat' ? 0 : work.radius, depth: 0, mouth: 0, halfAngle };
  }
  return form === 'v' ? vSole(work.radius, halfAngle, fields.groove.depth) : coveSole(work.radius, fields.groove.depth);
};

/** Height of the sole over y = `across`, mm; exact. */
export const soleHeight = ({ form, plane, depth, mouth, halfAngle }: Sole, across: number): number => {
  const beside = Math.abs(across);
  if (beside >= mouth) return plane;
  if (form === 'v') return plane + depth - beside / Math.tan(halfAngle);
  const radius = (depth * depth + mouth * mouth) / (2 * depth);
  return plane + depth - radius + Math.sqrt((radius - beside) * (radius + beside));
};
