import { clipPath } from '../geometry/clip-path.js';
import { boxesMeet, type Box } from '../geometry/box.js';
import { distance, point, type Point } from '../geometry/point.js';
import { pieceBounds, workedStrokes } from './piece-bounds.js';
import type { TilePlan } from './plan-tiles.js';
import { strokeCorners } from './stroke-corners.js';

/** A place that one finds again on the taped-up drawing, mm as printed. */
export interface NamedPoint {
  readonly name: string;
  readonly at: Point;
}

/** An outline passes a place when it comes this near, mm. */
const near = 0.05;

const around = ({ x, y }: Point): Box => ({ x0: x - near, y0: y - near, x1: x + near, y1: y + near });

/** Corners of the piece's box in which its outline really has a corner (a rounded end has none). */
export const boxCorners = (plan: TilePlan): NamedPoint[] => {
  const { x0, y0, x1, y1 } = pieceBounds(plan);
  const corners = workedStrokes(plan).flatMap(strokeCorners);
  return [
    { name: 'upper left corner', at: point(x0, y0) }, { name: 'upper right corner', at: point(x1, y0) },
    { name: 'lower left corner', at: point(x0, y1) }, { name: 'lower right corner', at: point(x1, y1) },
  ].filter(({ at }) => corners.some((c) => distance(c, at) < near));
};

/** The corners of what is cut that lie furthest out each way. */
export const outermostCorners = (plan: TilePlan): NamedPoint[] => {
  const corners = workedStrokes(plan).flatMap(strokeCorners);
  const ways = [['leftmost', -1, 0], ['rightmost', 1, 0], ['uppermost', 0, -1], ['lowest', 0, 1]] as const;
  return corners.length === 0 ? [] : ways.map(([way, x, y]) => ({
    name: `${way} corner`, at: corners.reduce((a, b) => (x * b.x + y * b.y > x * a.x + y * a.y + near ? b : a)),
  }));
};

/** Where the spine meets the two ends of the piece, if its outline ends there: else none. */
export const endPoints = (plan: TilePlan): [NamedPoint, NamedPoint] | undefined => {
  if (!plan.drawing.spine) return undefined;
  const { x0, x1 } = pieceBounds(plan);
  const strokes = workedStrokes(plan);
  const [left, right] = [point(x0, plan.datum.y), point(x1, plan.datum.y)];
  const isEnd = (at: Point): boolean => strokes.some((ink) => boxesMeet(ink.box, around(at)) && clipPath(ink.item.path, around(at)).length > 0);
  return isEnd(left) && isEnd(right) ? [{ name: 'left end', at: left }, { name: 'right end', at: right }] : undefined;
};
