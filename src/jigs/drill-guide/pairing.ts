import type { Finding } from '../../errors/finding.js';
import type { Context } from '../jig.js';
import type { SaddleCopeSolution, SaddleEnd } from '../saddle-cope/solve.js';
import type { DrillGuideFields } from './schema.js';
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
}

/** A hole is drilled this much deeper than its pin, for glue and air: common practice, mm. */
export const holeExtra = 1.5;

type Paired = { readonly task: Task; readonly pairing: Pairing };

const refusal = (jig: string, code: string, message: string, remedy: string): { readonly refused: readonly Finding[] } =>
  ({ refused: [{ jig, code, severity: 'stop', measured: 0, limit: 1, message, remedy }] });

/**
 * Angle, offset, round, drill and depth from a saddle cope, so that the hole in the main lies on the branch's axis and meets
 * the pin's hole in its end. Refuses a name that is no saddle cope of the piece, an end that it has not, and one without a pin.
 */
export const pairWith = (fields: DrillGuideFields & { readonly from: string }, context: Context): Paired | { readonly refused: readonly Finding[] } => {
  const { from, end: name } = fields;
  const other = context.jig(from);
  if (other === undefined) {
    return refusal(context.name, 'pair-not-found', `There is no jig "${from}" that could be drawn.`,
      'Write the name of a saddle-cope of this piece; where it was refused, mend that one first.');
  }
  if (other.kind !== 'saddle-cope') {
    return refusal(context.name, 'pair-not-a-saddle', `The jig "${from}" is a ${other.kind}.`, 'Write the name of a saddle-cope.');
  }
  const saddle = other.solution as SaddleCopeSolution;
  const end = saddle[name];
  if (end === undefined) {
    return refusal(context.name, 'pair-has-no-far-end', `The saddle-cope "${from}" has no far end.`, 'Leave out end, or give that jig a farEnd.');
  }
  if (end.pin === undefined) {
    return refusal(context.name, 'pair-has-no-pin', `The saddle-cope "${from}" has no pin, so there is no hole to meet.`,
      'Give that jig a pin with a diameter above 0, or write drill, angle and onto here in place of from.');
  }
  const { joint, main, pin } = end;
  // A saddle counts right with its far end up, a guide with the work under it: at the far end the one stands on the other's head.
  return {
    task: {
      drill: pin.diameter, angle: joint.angle, depth: fields.depth ?? pin.intoMain + holeExtra,
      work: { kind: 'round', round: main, radius: joint.main, offset: name === 'near' ? joint.offset : -joint.offset },
    },
    pairing: { jig: from, end: name, branch: saddle.branch.name, pin },
  };
};
