import { markShift, openingLength } from '../../geometry/bore.js';
import type { SaddleJoint } from '../../geometry/saddle.js';
import type { Context, Outcome } from '../jig.js';
import { findingsFrom } from '../kit/report.js';
import { bitOf, type GuideBit } from './bit.js';
import { type Block, blockOf } from './block.js';
import { type Budget, budgetOf } from './budget.js';
import { type Drilling, farWall, skinOf, thicknessUnder, throughLength } from './hole.js';
import { openingLengthOnRound } from './opening.js';
import { pairWith, type Pairing, type Task } from './pairing.js';
import { refuseBlock, refuseTask, refuseTilts } from './refusals.js';
import type { DrillGuideFields } from './schema.js';
import { type Sole, soleOf } from './sole.js';
import { type Resultant, resultantOf } from './tilt.js';
import { offsetOf, surfaceHeight, type RoundWork, type Work } from './work.js';

/** The hole, mm. Depths along the bit, from where its axis enters the work. */
export interface Hole {
  readonly through: boolean;
  /** To the corners of the lips; of a through hole, where the axis comes out. */
  readonly depth: number;
  /** Extent of the opening along the work. */
  readonly openingLength: number;
  /** Along the work, from the mark where the axis enters to where it comes out (of flat work of unknown thickness: to the hole's end). */
  readonly markShift: number;
  /** Along the round from where the bit's axis crosses (or passes) the round's own to where it enters, towards the acute side. */
  readonly station?: number;
  /** Wood beyond the end of a blind hole; absent where there is none to know. */
  readonly farWall?: number;
  /** Wood beside the hole, in a round. */
  readonly skin?: number;
}

/** A drill guide with its numbers: mm and radians, frames as in work.ts. */
export interface DrillGuideSolution extends Task {
  readonly tilts?: Resultant;
  readonly pairing?: Pairing;
  readonly sole: Sole;
  readonly block: Block;
  readonly hole: Hole;
  readonly bit: GuideBit;
  /** Whether the spec itself says how long the bit is. */
  readonly bitGiven: boolean;
  readonly budget: Budget;
  readonly paperThickness: number;
}

const tiltsOf = ({ angle, rake, splay }: DrillGuideFields): Resultant | undefined => {
  if (typeof angle === 'object') return resultantOf(angle.rake, angle.splay);
  return rake === undefined || splay === undefined ? undefined : resultantOf(rake, splay);
};

/** The task as written, where no saddle cope gives it. The schema has seen to it that what is needed is there. */
const taskOf = (fields: DrillGuideFields, tilts: Resultant | undefined): Task => {
  const angle = tilts === undefined ? fields.angle as number : Math.PI / 2 - tilts.resultant;
  const onto = fields.onto!;
  const work: Work = onto === 'flat'
    ? { kind: 'flat', ...(fields.thickness === undefined ? {} : { thickness: fields.thickness }) }
    : { kind: 'round', round: onto, radius: onto.diameter / 2, offset: fields.offset ?? 0 };
  return { drill: fields.drill!, angle, work, ...(fields.depth === undefined ? {} : { depth: fields.depth }) };
};

/** The saddle that the hole's edge is, on a round. */
export const jointOf = (work: RoundWork, drill: number, angle: number): SaddleJoint =>
  ({ main: work.radius, branch: drill / 2, angle, offset: work.offset });

const holeOf = (task: Task, drilling: Drilling): Hole => {
  const { work, angle, drill } = task;
  const depth = task.depth ?? throughLength(work, angle)!;
  const wall = task.depth === undefined ? undefined : farWall(drilling, depth);
  const skin = skinOf(drilling);
  return {
    through: task.depth === undefined, depth,
    openingLength: work.kind === 'flat' ? openingLength({ bit: drill, angle }) : openingLengthOnRound(jointOf(work, drill, angle)),
    markShift: markShift(thicknessUnder(work) ?? depth * Math.sin(angle), angle),
    ...(work.kind === 'flat' ? {} : { station: angle === Math.PI / 2 ? 0 : surfaceHeight(work, work.offset) / Math.tan(angle) }),
    ...(wall === undefined ? {} : { farWall: wall }), ...(skin === undefined ? {} : { skin }),
  };
};

/** Solves a drill guide in closed form but for the round's opening, wall and overrun (to 1e-6 mm), or says why there can be none. */
export const solve = (fields: DrillGuideFields, context: Context): Outcome<DrillGuideSolution> => {
  const tilts = tiltsOf(fields);
  const { from } = fields;
  const paired = from === undefined ? { task: taskOf(fields, tilts), pairing: undefined } : pairWith({ ...fields, from }, context);
  if ('refused' in paired) return { refused: findingsFrom(paired.refused, context) };
  const { task, pairing } = paired;
  const { drill, angle, work } = task;
  const sole = soleOf(work, fields);
  const refusedTask = [...refuseTilts(tilts, work), ...refuseTask(task, sole, { context, paired: pairing !== undefined })];
  if (refusedTask.length > 0) return { refused: findingsFrom(refusedTask, context) };
  const block = blockOf({ drill, angle, offset: offsetOf(work), sole, wanted: fields.block, units: context.units });
  const refusedBlock = refuseBlock(block, task, sole, context);
  if (refusedBlock.length > 0) return { refused: findingsFrom(refusedBlock, context) };
  const bit = bitOf(fields, drill, context);
  const drilling: Drilling = { work, angle, radius: drill / 2, point: bit.point };
  const hole = holeOf(task, drilling);
  return { solution: {
    ...task, ...(tilts === undefined ? {} : { tilts }), ...(pairing === undefined ? {} : { pairing }),
    sole, block, hole, bit, bitGiven: fields.bit.usableLength !== undefined, budget: budgetOf(drilling, hole, block, sole), paperThickness: fields.paperThickness,
  } };
};
