import type { Path } from '../../geometry/path.js';
import { point } from '../../geometry/point.js';
import { polyline } from '../../geometry/shapes.js';
import type { Groove } from './held-round.js';
import type { BySide } from './sawing.js';

/*
 * Frame of all end views: x = 0 in the middle of the groove, y = 0 at the block's top, y down; the virtual apex at y = apexDepth. mm, exact.
 */

/** The groove: down one flank, across the flat, up the other. */
export const groovePath = ({ width, depth, flat }: Groove): Path => polyline([
  point(-width / 2, 0), point(-flat / 2, depth), ...(flat === 0 ? [] : [point(flat / 2, depth)]), point(width / 2, 0),
]);

/** The piece's other edges, from one edge of the groove round to the other: side A on the left, side B on the right. */
export const blockPath = (groove: Groove, { a, b }: BySide, height: number): Path => polyline([
  point(groove.width / 2, 0), point(b, 0), point(b, height), point(-a, height), point(-a, 0), point(-groove.width / 2, 0),
]);
