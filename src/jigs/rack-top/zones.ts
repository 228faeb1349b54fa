import type { Zone } from '../../drawing/drawing.js';
import { boxOf, growBox, uniteBoxes } from '../../geometry/box.js';
import { pathBounds } from '../../geometry/bounds.js';
import { circle } from '../../geometry/shapes.js';
import type { Board } from './board.js';
import { arrowTip, openingPath } from './draw-holes.js';
import type { LegHole } from './hole.js';
import type { Recess } from './recess.js';
import { seatCentre, type Slot } from './slot.js';
import { recessBounds } from './solve-recesses.js';

/** Bare paper kept between a seam and what it should not cut, mm. */
const clear = 2;

/** The seat of a slot, which no seam should cut; on paper, seen from above. */
export const seatZone = (board: Board, slot: Slot): Zone =>
  ({ box: pathBounds(circle(seatCentre(board, slot), slot.radius + clear)), why: `seat of slot ${slot.number}` });

/** Both openings of a hole and its arrow, which no seam should cut; on paper, seen from above. */
export const holeZone = (hole: LegHole): Zone => ({
  box: growBox(uniteBoxes([pathBounds(openingPath(hole, hole.top)), pathBounds(openingPath(hole, hole.under)), ...(hole.lean === 0 ? [] : [boxOf([arrowTip(hole)])])]), clear),
  why: `hole ${hole.number}`,
});

/** A recess, which no seam should cut; on paper, seen from above. */
export const recessZone = (recess: Recess): Zone => ({ box: growBox(recessBounds(recess), clear), why: `recess ${recess.number}` });
