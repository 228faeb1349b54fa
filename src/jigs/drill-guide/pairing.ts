import type { Context } from '../jig.js';
import type { Report } from '../kit/report.js';
import type { SaddleCopeSolution, SaddleEnd } from '../saddle-cope/solve.js';
import { holeAllowance } from '../../shop/bit-length.js';
import type { DrillGuideFields } from './schema.js';
import { refuseAngle } from './refusals.js';
import type { Work } from './work.js';

/** What the guide drills: asked for in the spec, or taken from a saddle cope. mm, radians. */
export interface Task {
  readonly drill: number;
  readonly angle: number;
  readonly work: Work;
  /** Absent: right through. */
  readonly depth?: number;
}

/** The joint that a guide is paired with. */
export interface Pairing {
  readonly jig: string;
  readonly end: SaddleEnd['name'];
  readonly branch: string;
  /** Into the branch and into the main, mm. */
  readonly pin: { readonly diameter: number; readonly intoBranch: number; readonly intoMain: number };
  /** Along the main from where the bit enters, on to where the throat stands and back to where the horn does, mm. */
  readonly toThroat: number;
  readonly toHorn: number;
}

type Paired = { readonly task: Task; readonly pairing: Pairing };

const refused = (from: string): { readonly refused: readonly Report[] } => ({
  refused: [{
    code: 'pair-refused', severity: 'stop', measured: 0, limit: 1, about: { operation: 'drill' },
    message: [`The saddle-cope ${from} is refused, so there is no hole to meet.`], remedy: ['Mend that one first.'],
  }],
});

/**
 * Angle, offset, round, drill and depth from a saddle cope, so that the hole in the main lies on the branch's axis and meets
 * the pin's hole in its end. A name that is no saddle cope, an end that it has not, and one without a pin are mistakes at
 * their fields.
 */
export const pairWith = (fields: DrillGuideFields & { readonly from: string }, context: Context): Paired | { readonly refused: readonly Report[] } => {
  const { from, end: name } = fields;
  const saddle = context.jig({ name: from, field: 'from', kind: 'saddle-cope' }) as SaddleCopeSolution | undefined;
  if (saddle === undefined) return refused(from);
  const end = saddle[name];
  if (end === undefined) {
    return context.mistaken('end', { code: 'pair-has-no-far-end', message: 'names an end that the saddle-cope has not', got: name, allowed: 'near; or give that jig a farEnd' });
  }
  if (end.noPin === 'too-flat') return { refused: refuseAngle(end.joint, { paired: true }) };
  if (end.pin === undefined) {
    return context.mistaken('from', {
      code: 'pair-has-no-pin', message: 'names a saddle-cope without a pin, so there is no hole to meet', got: from,
      allowed: 'a pin with a diameter above 0 there; or drill, angle and onto here in place of from',
    });
  }
  const { joint, main, pin, entry } = end;
  // A saddle counts right with its far end up, a guide with the work under it: at the far end the one stands on the other's head.
  return {
    task: {
      drill: pin.diameter, angle: joint.angle, depth: fields.depth ?? pin.intoMain + holeAllowance,
      work: { kind: 'round', round: main, radius: joint.main, offset: name === 'near' ? joint.offset : -joint.offset },
    },
    pairing: { jig: from, end: name, branch: saddle.branch.name, pin, toThroat: entry.toThroat, toHorn: entry.toHorn },
  };
};
