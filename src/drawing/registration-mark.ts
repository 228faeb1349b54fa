import type { Point } from '../geometry/point.js';
import { circle } from '../geometry/shapes.js';
import type { Shape } from './drawing.js';
import { openCross } from './hole-cross.js';
import { shape } from './items.js';

/** From a registration mark's centre to the ends of its arms, mm. */
export const registrationReach = 4;

/**
 * A mark that stands at one place of the drawing on both sheets of a seam: ring and open cross, so that a pin through the
 * bare centre or two rings over each other show a misfit on any side. The ring carries `part`; its centre is the place.
 */
export const registrationMark = (at: Point, part: string): Shape[] =>
  [shape('mark', circle(at, 2), part), ...openCross(at, { reach: registrationReach, gap: 0.6 })];
