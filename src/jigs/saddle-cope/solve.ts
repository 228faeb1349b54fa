import type { Finding } from '../../errors/finding.js';
import { saddleHeight, type SaddleJoint } from '../../geometry/saddle.js';
import { saddleHeights, wingAngle } from '../../geometry/saddle-heights.js';
import { hollowDepth, sawCutHeight } from '../../geometry/saw-cut.js';
import type { Round } from '../../spec/spec.js';
import type { Context, Outcome } from '../jig.js';
import { solvePin, type Pin } from './pin.js';
import { reachRefusals } from './reach.js';
import type { SaddleCopeFields } from './schema.js';

/** One end of the branch. Heights are mm along the branch from the crossing of the axes, growing away from the main. */
export interface SaddleEnd {
  readonly name: 'near' | 'far';
  readonly main: Round;
  readonly joint: SaddleJoint;
  /** φ of this end's throat on the strip: 0 at the near end. */
  readonly twist: number;
  readonly throat: number;
  readonly longPoint: number;
  /** The wing that reaches furthest round the main. */
  readonly wing: number;
  /** The lowest point of the whole edge: where the finished branch ends. */
  readonly horn: number;
  /** The highest point of the whole edge. */
  readonly crest: number;
  /** Depth of the hollow, square to the main, from the first saw cut. */
  readonly saddleDepth: number;
  /** Wood angle left at the wing, radians. */
  readonly wingAngle: number;
  /** What a saw reads from square for the first cut, radians. */
  readonly sawAngle: number;
  readonly formRadius: number;
  /** Heights at 0°, 15°, … 345° of this end's own clock. */
  readonly ordinates: readonly number[];
  readonly pin?: Pin;
}

/** A saddle cope with its numbers: mm and radians. */
export interface SaddleCopeSolution {
  readonly branch: Round;
  readonly paperThickness: number;
  readonly abrasive: number;
  /** Round the branch on the paper's mid-plane: π(d + t). */
  readonly wrapLength: number;
  readonly near: SaddleEnd;
  readonly far?: SaddleEnd;
  readonly centres?: number;
  /** Both along the branch's axis. */
  readonly lengths?: { readonly hornToHorn: number; readonly throatToThroat: number };
}

/** Ordinates stand this far apart round the branch: 15°. */
export const step = Math.PI / 12;

/** Whether an end is cut square: then neither side is the acute one. */
export const isSquare = ({ joint }: SaddleEnd): boolean => Math.abs(Math.PI / 2 - joint.angle) < 1e-9;

const solveEnd = (name: SaddleEnd['name'], main: Round, joint: SaddleJoint, twist: number, abrasive: number): SaddleEnd => {
  const { throat, longPoint, least, greatest } = saddleHeights(joint);
  return {
    name, main, joint, twist, throat, longPoint,
    // The plane first cut touches the edge at the wing that reaches furthest.
    wing: sawCutHeight(joint, Math.PI / 2),
    horn: least,
    crest: greatest,
    saddleDepth: hollowDepth(joint),
    wingAngle: wingAngle(joint),
    sawAngle: Math.PI / 2 - joint.angle,
    formRadius: joint.main - abrasive,
    ordinates: Array.from({ length: 24 }, (_, i) => saddleHeight(joint, i * step)),
  };
};

/** The numbers of a saddle cope, or why no cut all round exists. */
export const solve = (fields: SaddleCopeFields, context: Context): Outcome<SaddleCopeSolution> => {
  const branch = fields.branch.diameter / 2;
  const ends = [
    { name: 'near' as const, twist: 0, main: fields.main, angle: fields.angle, offset: fields.offset },
    ...(fields.farEnd === undefined ? [] : [{ name: 'far' as const, ...fields.farEnd }]),
  ].map((end) => ({ ...end, joint: { main: end.main.diameter / 2, branch, angle: end.angle, offset: end.offset } }));
  const refused: readonly Finding[] = ends.flatMap((end) => reachRefusals(end, fields, context));
  if (refused.length > 0) return { refused };
  const [near, far] = ends.map((end): SaddleEnd => {
    const solved = solveEnd(end.name, end.main, end.joint, end.twist, fields.abrasive);
    const pin = solvePin(fields.pin, end.joint, context);
    return pin === undefined ? solved : { ...solved, pin };
  });
  const shared = {
    branch: fields.branch, paperThickness: fields.paperThickness, abrasive: fields.abrasive,
    wrapLength: Math.PI * (fields.branch.diameter + fields.paperThickness), near: near!,
  };
  if (fields.centres === undefined) return { solution: shared };
  if (far === undefined) return { solution: { ...shared, centres: fields.centres } };
  return {
    solution: {
      ...shared, far, centres: fields.centres,
      lengths: {
        hornToHorn: fields.centres - near!.horn - far.horn,
        throatToThroat: fields.centres - near!.throat - far.throat,
      },
    },
  };
};
