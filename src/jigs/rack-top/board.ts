import { point, type Point } from '../../geometry/point.js';
import { land, type TwoLimits } from '../../shop/walls.js';

/** A board may be as long as a row of them in a hall, mm. */
export const longestBoard = 50_000;

/** A board seen from above, mm. Paper frame: x along from the left end, y down, so the rear edge is y = 0 and the front edge y = width. */
export interface Board {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Rounded ends: arcs of this radius from edge to edge. */
  readonly endRadius: number | undefined;
  readonly cornerRadius: number;
}

/** The paper point of [along, across], which a spec measures from the left front corner. Exact. */
export const boardPoint = (board: Board, along: number, across: number): Point => point(along, board.width - across);

/** How far the straight edges start in from the ends, mm: the sagitta of a rounded end, or the corner's radius. */
export const edgeStart = ({ width, endRadius, cornerRadius }: Board): number =>
  endRadius === undefined ? cornerRadius : endRadius - Math.sqrt(Math.max(0, endRadius ** 2 - (width / 2) ** 2));

/** How far the outline stands in from the end at a height y, mm: 0 at a square end. Exact. */
export const endInset = (board: Board, y: number): number => {
  const { width, endRadius, cornerRadius } = board;
  if (endRadius !== undefined) return endRadius - Math.sqrt(Math.max(0, endRadius ** 2 - (y - width / 2) ** 2));
  const rise = Math.max(cornerRadius - Math.min(y, width - y), 0);
  return cornerRadius - Math.sqrt(cornerRadius ** 2 - rise ** 2);
};

/** Distance from a point in the board to its nearer end, along the outline's own normal there; negative outside. Exact. */
export const endDistance = (board: Board, p: Point): number => {
  const { length, width, endRadius, cornerRadius } = board;
  const x = Math.min(p.x, length - p.x);
  if (endRadius !== undefined) return x >= endRadius ? x : endRadius - Math.hypot(endRadius - x, p.y - width / 2);
  const y = Math.min(p.y, width - p.y);
  if (x >= cornerRadius || y >= cornerRadius) return x;
  return cornerRadius - Math.hypot(cornerRadius - x, cornerRadius - y);
};

/** Distance from a point in the board to the nearer long edge; negative outside. Exact. */
export const edgeDistance = ({ width }: Board, p: Point): number => Math.min(p.y, width - p.y);

/** Narrowest land that is sound and that is just enough, mm. */
export const landLimits = (board: Board): TwoLimits => land(board.thickness);
