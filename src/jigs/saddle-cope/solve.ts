import { saddleHeight, type SaddleJoint } from '../../geometry/saddle.js';
import { saddleHeights, wingAngle } from '../../geometry/saddle-heights.js';
import { hollowDepth, sawCutHeight } from '../../geometry/saw-cut.js';
import { isSquareAngle } from '../kit/angle-figures.js';
import { findingsFrom } from '../kit/report.js';
import type { Round } from '../../spec/spec.js';
import type { Context, Outcome } from '../jig.js';
import { entryOf, type Entry } from './entry.js';
import { firstCutOf, type FirstCut } from './first-cut.js';
import { solvePin, type NoPin, type Pin } from './pin.js';
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
  readonly firstCut: FirstCut;
  readonly entry: Entry;
  /** One of the two. */
  readonly pin?: Pin;
  readonly noPin?: NoPin;
}

/** A saddle cope with its numbers: mm and radians. */
export interface SaddleCopeSolution {
  readonly branch: Round;
  readonly paperThickness: number;
  readonly abrasive: number;
  /** The tables of ordinates are printed whatever paper they take. */
  readonly printOrdinates: boolean;
  /** Round the branch on the paper's mid-plane: π(d + t). */
  readonly wrapLength: number;
  readonly near: SaddleEnd;
  readonly far?: SaddleEnd;
  readonly centres?: number;
  /** Along the branch's axis; toe to toe of the first cuts, the least that a blank is long. */
  readonly lengths?: { readonly hornToHorn: number; readonly throatToThroat: number; readonly toeToToe: number };
}

/** Ordinates stand this far apart round the branch: 15°. */
export const step = Math.PI / 12;

/** Whether an end is cut square: then neither side is the acute one. */
export const isSquare = ({ joint }: SaddleEnd): boolean => isSquareAngle(joint.angle);

type Asked = Pick<SaddleEnd, 'name' | 'main' | 'joint' | 'twist'>;

const solveEnd = ({ name, main, joint, twist }: Asked, { abrasive, wingAllowance, pin }: SaddleCopeFields, context: Context): SaddleEnd => {
  const { throat, longPoint, least, greatest } = saddleHeights(joint);
  const solved = solvePin(pin, joint, context);
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
    firstCut: firstCutOf(joint, least, wingAllowance),
    entry: entryOf(joint),
    ...(typeof solved === 'string' ? { noPin: solved } : { pin: solved }),
  };
};

const lengthsOf = (centres: number, near: SaddleEnd, far: SaddleEnd): NonNullable<SaddleCopeSolution['lengths']> => {
  const hornToHorn = centres - near.horn - far.horn;
  return {
    hornToHorn, throatToThroat: centres - near.throat - far.throat,
    toeToToe: hornToHorn + near.firstCut.toeBeyondHorn + far.firstCut.toeBeyondHorn,
  };
};

/** The numbers of a saddle cope, or why no cut all round exists. */
export const solve = (fields: SaddleCopeFields, context: Context): Outcome<SaddleCopeSolution> => {
  const branch = fields.branch.diameter / 2;
  const ends = [
    { name: 'near' as const, twist: 0, main: fields.main, angle: fields.angle, offset: fields.offset },
    ...(fields.farEnd === undefined ? [] : [{ name: 'far' as const, ...fields.farEnd }]),
  ].map((end) => ({ ...end, joint: { main: end.main.diameter / 2, branch, angle: end.angle, offset: end.offset } }));
  const refused = ends.flatMap((end) => reachRefusals(end, fields, context));
  if (refused.length > 0) return { refused: findingsFrom(refused, context) };
  const [near, far] = ends.map((end) => solveEnd(end, fields, context));
  const shared = {
    branch: fields.branch, paperThickness: fields.paperThickness, abrasive: fields.abrasive, printOrdinates: fields.ordinates,
    wrapLength: Math.PI * (fields.branch.diameter + fields.paperThickness), near: near!,
  };
  if (fields.centres === undefined) return { solution: shared };
  if (far === undefined) return { solution: { ...shared, centres: fields.centres } };
  return { solution: { ...shared, far, centres: fields.centres, lengths: lengthsOf(fields.centres, near!, far) } };
};
