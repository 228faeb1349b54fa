import type { Path, Segment } from '../../geometry/path.js';
import { point, type Point } from '../../geometry/point.js';
import { transformPath, type Transform } from '../../geometry/transform.js';
import type { Board } from './board.js';
import type { Slot } from './slot.js';

/** Straight from the corner to the wall where the radius is used up, else the arc that eases it. Own frame: s along the edge, v into the board. */
const easedCorner = (corner: Point, radius: number, turn: number): { readonly start: Point; readonly arc: Segment; readonly end: Point } => {
  const reach = radius * Math.tan(turn / 2);
  const centre = point(corner.x - reach, corner.y + radius);
  return {
    start: point(corner.x - reach, corner.y),
    arc: { kind: 'arc', centre, u: point(0, -radius), v: point(radius, 0), t0: 0, t1: turn },
    end: point(centre.x + radius * Math.sin(turn), centre.y - radius * Math.cos(turn)),
  };
};

const to = (p: Point): Segment => ({ kind: 'line', to: p });
const mirrored = (p: Point): Point => point(-p.x, p.y);

/**
 * One slot's edge in its own frame (s along the edge, v into the board; edge at v = 0), from the mouth's left end round the seat to its
 * right end, `inset` mm into the wood: the seat's radius grows by it, an eased corner's shrinks and is sharp once used up. Exact.
 */
export const slotEdge = ({ radius, depth, mouth: { ease, flare, run } }: Slot, inset: number): Path => {
  const half = radius + inset;
  // The flared wall moved square to itself, met with the moved edge.
  const edgeHalf = flare === 0 ? half : radius + (run - inset) * Math.tan(flare) + inset / Math.cos(flare);
  const turn = Math.PI / 2 - flare;
  const left = easedCorner(point(-edgeHalf, inset), Math.max(ease - inset, 0), turn);
  const eased = ease > inset;
  const bend = flare === 0 ? [] : [point(-half, run + inset * Math.tan(flare / 2))];
  const { arc } = left;
  const mirroredArc: Segment = arc.kind === 'arc' ? { ...arc, centre: mirrored(arc.centre), v: mirrored(arc.v), t0: turn, t1: 0 } : arc;
  return {
    start: left.start,
    segments: [
      ...(eased ? [arc] : []), ...bend.map(to), to(point(-half, depth)),
      { kind: 'arc', centre: point(0, depth), u: point(-half, 0), v: point(0, half), t0: 0, t1: Math.PI },
      ...bend.map(mirrored).map(to), to(mirrored(left.end)), ...(eased ? [mirroredArc] : []),
    ],
    closed: false,
  };
};

/** From a slot's own frame onto the paper. */
export const slotPlace = (board: Board, slot: Slot): Transform => slot.edge === 'front'
  ? { a: 1, b: 0, c: 0, d: -1, e: slot.at, f: board.width }
  : { a: -1, b: 0, c: 0, d: 1, e: slot.at, f: 0 };

/** A slot's edge on paper, run in the sense of `boardPieces`. Exact. */
export const slotPath = (board: Board, slot: Slot, inset = 0): Path => transformPath(slotPlace(board, slot), slotEdge(slot, inset));
