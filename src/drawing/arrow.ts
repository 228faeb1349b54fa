import { polyline } from '../geometry/shapes.js';
import { add, point, polar, type Point } from '../geometry/point.js';
import type { Shape } from './drawing.js';
import { filled } from './items.js';

/** Length of a dimension's arrowhead, mm: the height of the figures beside it. */
export const arrowLength = 2.5;

/** Half the breadth for a closed head of 20° (ISO 129-1 allows 15° to 90°), as a ratio of the length. */
const halfBreadth = Math.tan(Math.PI / 18);

/** A filled arrowhead whose point is at `tip`, flying along `heading` (radians from +x towards +y). */
export const arrow = (tip: Point, heading: number, length = arrowLength): Shape => {
  const back = add(tip, polar(heading, -length));
  const side = polar(heading + Math.PI / 2, length * halfBreadth);
  return filled('dimension', polyline([tip, add(back, side), add(back, point(-side.x, -side.y))], true));
};
