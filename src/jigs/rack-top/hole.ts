import { point, scale, type Point } from '../../geometry/point.js';
import { boardPoint, type Board } from './board.js';
import { ellipseRun, type Convex } from './convex.js';
import type { HoleFields } from './schema.js';

/** A hole for a leg, as drilled. mm, radians; points on paper, seen from above. */
export interface LegHole {
  readonly number: number;
  readonly round: string;
  /** Whether the leg is only a written diameter. */
  readonly unnamed: boolean;
  /** Diameter of the leg, and of the bit. */
  readonly leg: number;
  readonly bit: number;
  readonly clearance: number;
  /** As written: on the top face. */
  readonly along: number;
  readonly across: number;
  readonly lean: number;
  /** 0 … 2π, counter-clockwise seen from above. */
  readonly toward: number;
  /** Unit vector on paper towards which the leg goes up. */
  readonly way: Point;
  readonly top: Point;
  readonly under: Point;
  /** Half the long axis of the opening, along `way`; the short one is half the bit. */
  readonly halfLong: number;
  readonly boreLength: number;
  readonly above: number;
  readonly below: number;
}

/** The bearing 0 … 2π of an angle. */
const bearing = (angle: number): number => angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI));

/** A hole b leaning by λ through a thickness T opens b × b/cos λ on both faces, T·tan λ apart; its bore is T/cos λ long. Exact. */
export const solveHole = (fields: HoleFields, board: Board, number: number): LegHole => {
  const { lean, round, clearance, at: [along, across] } = fields;
  const toward = bearing(fields.toward);
  // Seen from above the compass turns counter-clockwise; paper has y down.
  const way = point(Math.cos(toward), -Math.sin(toward));
  const top = boardPoint(board, along, across);
  const shift = board.thickness * Math.tan(lean);
  const bit = round.diameter + clearance;
  return {
    number, round: round.name, unnamed: round.unnamed === true, leg: round.diameter, bit, clearance, along, across, lean, toward, way, top,
    under: point(top.x - way.x * shift, top.y - way.y * shift),
    halfLong: bit / 2 / Math.cos(lean), boreLength: board.thickness / Math.cos(lean), above: fields.above, below: fields.below,
  };
};

const across = (way: Point): Point => point(-way.y, way.x);

/** Everything that the hole takes out of the board, seen from above: the opening's run from the top to the underside. Exact. */
export const holeRegion = (hole: LegHole): Convex =>
  ellipseRun(hole.top, hole.under, scale(hole.way, hole.halfLong), scale(across(hole.way), hole.bit / 2));

/** The opening on one face as a region. Exact. */
export const openingRegion = (hole: LegHole, face: 'top' | 'under'): Convex =>
  ellipseRun(hole[face], hole[face], scale(hole.way, hole.halfLong), scale(across(hole.way), hole.bit / 2));

/** The leg seen from above as far as it could be in the way, `above` and `below` the board. Exact. */
export const legRegion = (hole: LegHole): Convex => {
  const slope = Math.tan(hole.lean);
  const at = (from: Point, by: number): Point => point(from.x + hole.way.x * by, from.y + hole.way.y * by);
  const long = scale(hole.way, hole.leg / 2 / Math.cos(hole.lean));
  return ellipseRun(at(hole.top, hole.above * slope), at(hole.under, -hole.below * slope), long, scale(across(hole.way), hole.leg / 2));
};

/** How a hole is called in words. */
export const holeName = (hole: LegHole): string => `hole ${hole.number} (${hole.round})`;
