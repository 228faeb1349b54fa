import { arrow } from '../../drawing/arrow.js';
import type { Item } from '../../drawing/drawing.js';
import { holeCross } from '../../drawing/hole-cross.js';
import { shape } from '../../drawing/items.js';
import type { Path } from '../../geometry/path.js';
import { point, type Point } from '../../geometry/point.js';
import { ellipse, line } from '../../geometry/shapes.js';
import type { LegHole } from './hole.js';

/** Turn of the way uphill on paper, clockwise on the page. */
export const uphillTurn = (hole: LegHole): number => Math.atan2(hole.way.y, hole.way.x);

/** The opening of a hole about a point; exact. */
export const openingPath = (hole: LegHole, centre: Point): Path => ellipse(centre, hole.halfLong, hole.bit / 2, uphillTurn(hole));

const along = (hole: LegHole, from: Point, by: number): Point => point(from.x + hole.way.x * by, from.y + hole.way.y * by);

/** How far the arrow uphill reaches beyond the opening, mm. */
const arrowReach = 16;

/** Where the arrow uphill ends; labels about the lean stand near it. */
export const arrowTip = (hole: LegHole): Point => along(hole, hole.top, hole.halfLong + arrowReach);

/** An arrow from the opening's edge in the direction in which the leg goes up; none for a square hole. */
export const uphillArrow = (hole: LegHole): Item[] => hole.lean === 0 ? [] : [
  shape('dimension', line(along(hole, hole.top, hole.halfLong + 3), along(hole, hole.top, hole.halfLong + arrowReach - 1.2))),
  arrow(arrowTip(hole), uphillTurn(hole)),
];

/** A hole seen from above: its opening on the top, the one underneath in dashes where it is another, its centre and its direction. */
export const drawHole = (hole: LegHole): Item[] => [
  shape('bore', openingPath(hole, hole.top), `hole-${hole.number}-top`),
  ...(hole.lean === 0 ? [] : [shape('hidden', openingPath(hole, hole.under), `hole-${hole.number}-under`)]),
  ...holeCross(hole.top, 2 * hole.halfLong, uphillTurn(hole)),
  ...uphillArrow(hole),
];
